package loamline.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/**
 * From an outline as drawn to the ground it encloses.
 *
 * <p>Case by case: points given twice in a row count once; a ring of fewer than three different points is left
 * out; a ring that crosses itself keeps all its lobes (a bow-tie of two unit triangles has their area, not
 * their difference); a part that crosses itself more than {@value #MAX_CROSSINGS} times is left out; a hole
 * that lies outside its shell is left out; parts that overlap count once.
 */
public final class Repair {
    private Repair() {}

    /** What had to be done. */
    public enum Kind {
        POINT_REPEATED,
        TOO_FEW_POINTS,
        SELF_CROSSING,
        TANGLED,
        HOLE_OUTSIDE,
        PARTS_OVERLAP,
        NO_AREA
    }

    /**
     * One thing that was mended.
     *
     * @param where a point at the fault
     * @param count how many times it was met
     */
    public record Note(Kind kind, Point where, int count) {}

    /**
     * The ground and how it was reached.
     *
     * @param notes in the order met, none if the outline was sound
     */
    public record Result(Region region, List<Note> notes) {
        public Result {
            notes = List.copyOf(notes);
        }
    }

    /** The ground an outline encloses; empty, with a note, where it encloses nothing. */
    public static Result of(Outline outline) {
        List<Note> notes = new ArrayList<>();
        List<Geometry> pieces = new ArrayList<>();
        for (Outline.Part part : outline.parts()) {
            Geometry piece = piece(part, notes);
            if (!piece.isEmpty()) {
                pieces.add(piece);
            }
        }
        Region region = pieces.isEmpty() ? Region.EMPTY : Region.of(merged(pieces, notes));
        if (region.isEmpty() && outline.vertices().findAny().isPresent()) {
            notes.add(new Note(Kind.NO_AREA, outline.vertices().findFirst().orElseThrow(), 1));
        }
        return new Result(region, notes);
    }

    private static Geometry merged(List<Geometry> pieces, List<Note> notes) {
        if (pieces.size() == 1) {
            return pieces.get(0);
        }
        Geometry all = Jts.FACTORY.buildGeometry(pieces);
        Geometry union = OverlayNGRobust.union(all);
        if (union.getArea() < all.getArea() * (1 - OVERLAP_SHARE)) {
            notes.add(new Note(Kind.PARTS_OVERLAP, Jts.point(pieces.get(1).getCoordinate()), 1));
        }
        return union;
    }

    /** Parts that share less than this share of their area only touch; covers rounding of the union. */
    private static final double OVERLAP_SHARE = 1e-9;

    /** No hand draws as many; mending takes a time that grows with them, about 1 s for this many. */
    static final int MAX_CROSSINGS = 10_000;

    private static Geometry piece(Outline.Part part, List<Note> notes) {
        List<Point> shell = distinct(part.shell(), notes);
        if (shell.size() < 3) {
            return Jts.FACTORY.createPolygon();
        }
        List<LinearRing> holes = new ArrayList<>();
        for (List<Point> hole : part.holes()) {
            List<Point> ring = distinct(hole, notes);
            if (ring.size() >= 3) {
                holes.add(Jts.ring(ring));
            }
        }
        Polygon drawn = Jts.FACTORY.createPolygon(Jts.ring(shell), holes.toArray(LinearRing[]::new));
        TopologyValidationError error = new IsValidOp(drawn).getValidationError();
        if (error == null) {
            return drawn;
        }
        boolean isTangled = Crossings.isMoreThan(MAX_CROSSINGS, drawn);
        notes.add(new Note(isTangled ? Kind.TANGLED : kindOf(error), Jts.point(error.getCoordinate()), 1));
        if (isTangled) {
            return Jts.FACTORY.createPolygon();
        }
        return OverlayNGRobust.union(GeometryFixer.fix(drawn));
    }

    private static Kind kindOf(TopologyValidationError error) {
        return error.getErrorType() == TopologyValidationError.HOLE_OUTSIDE_SHELL
                ? Kind.HOLE_OUTSIDE
                : Kind.SELF_CROSSING;
    }

    /** A ring without points repeated in a row; notes repeats and rings left with too few points. */
    private static List<Point> distinct(List<Point> ring, List<Note> notes) {
        List<Point> kept = new ArrayList<>(ring.size());
        List<Point> repeats = new ArrayList<>();
        for (Point p : ring) {
            (kept.isEmpty() || !kept.get(kept.size() - 1).equals(p) ? kept : repeats).add(p);
        }
        while (kept.size() > 1 && kept.get(0).equals(kept.get(kept.size() - 1))) {
            repeats.add(kept.remove(kept.size() - 1));
        }
        if (!repeats.isEmpty()) {
            notes.add(new Note(Kind.POINT_REPEATED, repeats.get(0), repeats.size()));
        }
        if (kept.size() < 3 && !ring.isEmpty()) {
            notes.add(new Note(Kind.TOO_FEW_POINTS, ring.get(0), 1));
        }
        return kept;
    }
}
