package loamline.tracing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.Repair;

/** From rings of cells to an outline of the picture with few vertices. */
final class Outlines {
    /** Cells that the border may be moved by to straighten it. */
    static final double STRAIGHTENING = 2.0;

    /** Attempts at a straight outline that is sound and holds the clicks, each half as straight as the last. */
    private static final int ATTEMPTS = 4;

    private Outlines() {}

    /**
     * The outline round some rings.
     *
     * @param inside pixels that must lie inside
     */
    static Outline of(List<Ring> rings, Picture picture, int scale, List<Pixel> inside) {
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            double tolerance = STRAIGHTENING / (1 << attempt);
            Outline outline =
                    parts(rings, ring -> Straightening.corners(ring, tolerance)).map(p -> pixels(p, picture, scale));
            if (isSound(outline, inside)) {
                return outline;
            }
        }
        return parts(rings, Ring::corners).map(p -> pixels(p, picture, scale));
    }

    private static Point pixels(Point cell, Picture picture, int scale) {
        return new Point(
                Math.max(0, Math.min(picture.width(), scale * cell.x())),
                Math.max(0, Math.min(picture.height(), scale * cell.y())));
    }

    private static boolean isSound(Outline outline, List<Pixel> inside) {
        Repair.Result result = Repair.of(outline);
        Region region = result.region();
        return result.notes().isEmpty()
                && inside.stream().allMatch(pixel -> region.covers(new Point(pixel.x() + 0.5, pixel.y() + 0.5)));
    }

    /** Shells with the holes that lie in them. */
    private static Outline parts(List<Ring> rings, Function<Ring, List<Point>> corners) {
        List<Outline.Part> parts = new ArrayList<>();
        for (Ring shell : rings) {
            if (!shell.isHole()) {
                List<List<Point>> holes = rings.stream()
                        .filter(ring -> ring.isHole() && shell.encloses(ring.firstX(), ring.firstY()))
                        .map(corners)
                        .toList();
                parts.add(new Outline.Part(corners.apply(shell), holes));
            }
        }
        return new Outline(parts);
    }
}
