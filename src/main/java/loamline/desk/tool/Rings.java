package loamline.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.Repair;
import loamline.geometry.StraightLine;
import loamline.geometry.Turn;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;

/** Rings of places as they are being drawn. */
final class Rings {
    /** Sides of a circle: their corners lie off the true circle by at most 0.15 % of its radius. */
    static final int CIRCLE_SIDES = 48;

    private Rings() {}

    /** A circle as an outline of the same area, to rounding; its first corner lies north of the centre. */
    static List<Point> circle(Point centre, double radiusM) {
        double step = 2 * Math.PI / CIRCLE_SIDES;
        double cornerM = radiusM * Math.sqrt(step / Math.sin(step));
        return IntStream.range(0, CIRCLE_SIDES)
                .mapToObj(i -> StraightLine.at(centre, i * Azimuth.FULL_DEG / CIRCLE_SIDES)
                        .at(cornerM))
                .toList();
    }

    /** A ring's line and, in its middle, its area. */
    static List<Guide> guides(List<Point> ring, UnitSystem units) {
        List<Guide> guides = new ArrayList<>();
        guides.add(new Guide.Line(ring, true, Guide.Style.DRAWN));
        Region ground = Region.of(Outline.of(ring));
        ground.innerPoint().ifPresent(at -> guides.add(new Guide.Words(at, area(ground, units))));
        return guides;
    }

    private static String area(Region ground, UnitSystem units) {
        return Formatting.format(Measure.AREA, ground.areaM2(), units).text();
    }

    /** Whether the last side crosses one before it; touching is no crossing. */
    static boolean lastSideCrosses(List<Point> path) {
        int last = path.size() - 1;
        return IntStream.range(1, Math.max(1, last))
                .anyMatch(i -> cross(path.get(i - 1), path.get(i), path.get(last - 1), path.get(last)));
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return Turn.of(a, b, c) * Turn.of(a, b, d) < 0 && Turn.of(c, d, a) * Turn.of(c, d, b) < 0;
    }

    /** Whether a closed ring crosses itself. */
    static boolean crosses(List<Point> ring) {
        return Repair.of(Outline.of(ring)).notes().stream().anyMatch(note -> note.kind() == Repair.Kind.SELF_CROSSING);
    }

    /** What keeps a ring from enclosing ground. */
    static Optional<String> lacksGround(List<Point> ring) {
        return Region.of(Outline.of(ring)).isEmpty()
                ? Optional.of("This encloses no ground yet: set a point beside the line.")
                : Optional.empty();
    }
}
