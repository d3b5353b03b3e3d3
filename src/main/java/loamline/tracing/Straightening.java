package loamline.tracing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;

/**
 * From a ring of cell sides to straight edges with few corners, in parts of a cell.
 *
 * <p>What: the ring is cut at {@link Vertices}; each stretch between two is replaced by the line that fits it
 * best, corners are where neighbouring lines meet. Where nearly all edges run along two directions at right
 * angles, they are set exactly so. At last all edges move out or in together by as much as it takes to enclose
 * exactly the area of the cells, so that thinning vertices never changes an area.
 */
final class Straightening {
    /** A corner stays within this many tolerances of the ring's own vertex. */
    private static final double MOST_SHIFT = 2;

    /** An edge of fewer tolerances may be a corner cut off. */
    private static final double MOST_CUT = 5;

    /** A corner nearer than this share of the tolerance to the line past it is left out. */
    private static final double FLAT = 0.4;

    /** Edges within 10° of the main directions may be squared, ... */
    private static final double NEARLY_SQUARE = Math.toRadians(10);

    /** ... where they are at least this share of the border. */
    private static final double SQUARE_SHARE = 0.85;

    /** A ring of fewer cell sides is kept as it is: there is nothing to thin. */
    private static final int LEAST_SIDES = 24;

    private final double tolerance;

    /** The edges in turn, and the ring's vertices at which they begin. */
    private final List<Line> lines = new ArrayList<>();

    private final List<Point> vertices = new ArrayList<>();

    private Straightening(Ring ring, double tolerance) {
        this.tolerance = tolerance;
        int[] at = Vertices.of(ring, tolerance);
        for (int k = 0; k < at.length; k++) {
            int end = k + 1 < at.length ? at[k + 1] : at[0] + ring.length();
            lines.add(Line.along(ring, at[k], end));
            vertices.add(new Point(ring.middleX(at[k]), ring.middleY(at[k])));
        }
    }

    /**
     * Corners of a ring.
     *
     * @param tolerance cells that the border may be moved by
     */
    static List<Point> corners(Ring ring, double tolerance) {
        if (ring.length() < LEAST_SIDES) {
            return ring.corners();
        }
        Straightening straightening = new Straightening(ring, tolerance);
        straightening.sharpen();
        return AreaFit.of(straightening.withoutFlat(straightening.corners()), ring.area());
    }

    /** Takes out short edges that cut a corner in which their longer neighbours meet. */
    private void sharpen() {
        for (int k = lines.size() - 1; k >= 0 && lines.size() > 3; k--) {
            int next = (k + 1) % lines.size();
            Line cut = lines.get(k);
            Line before = lines.get((k + lines.size() - 1) % lines.size());
            Line after = lines.get(next);
            double shorter = Math.min(before.length(), after.length());
            Optional<Point> corner =
                    before.meets(after).filter(p -> p.distanceTo(cut.through()) <= MOST_SHIFT * tolerance);
            if (corner.isPresent() && cut.length() < Math.min(MOST_CUT * tolerance, shorter)) {
                vertices.set(next, corner.get());
                vertices.remove(k);
                lines.remove(k);
            }
        }
    }

    /** Where the edges meet: squared, if that moves no corner by more than the tolerance. */
    private List<Point> corners() {
        List<Point> free = corners(lines);
        List<Point> squared = corners(squared());
        for (int k = 0; k < free.size(); k++) {
            if (free.get(k).distanceTo(squared.get(k)) > tolerance) {
                return free;
            }
        }
        return squared;
    }

    private List<Point> corners(List<Line> edges) {
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < edges.size(); k++) {
            Line before = edges.get((k + edges.size() - 1) % edges.size());
            Line after = edges.get(k);
            Point vertex = vertices.get(k);
            Point between = before.nearest(vertex).towards(after.nearest(vertex), 0.5);
            corners.add(before.meets(after)
                    .filter(p -> p.distanceTo(vertex) <= MOST_SHIFT * tolerance)
                    .orElse(between));
        }
        return corners;
    }

    /** The edges with those that are nearly square to each other made so, if they are most of the border. */
    private List<Line> squared() {
        double sine = 0;
        double cosine = 0;
        double whole = 0;
        for (Line line : lines) {
            sine += line.length() * Math.sin(4 * line.angle());
            cosine += line.length() * Math.cos(4 * line.angle());
            whole += line.length();
        }
        double main = Math.atan2(sine, cosine) / 4;
        double square = 0;
        List<Line> turned = new ArrayList<>();
        for (Line line : lines) {
            double quarters = Math.rint((line.angle() - main) / (Math.PI / 2));
            double angle = main + quarters * Math.PI / 2;
            boolean near = Math.abs(angle - line.angle()) <= NEARLY_SQUARE;
            square += near ? line.length() : 0;
            turned.add(near ? line.turned(angle) : line);
        }
        return square >= SQUARE_SHARE * whole ? turned : lines;
    }

    private List<Point> withoutFlat(List<Point> corners) {
        List<Point> kept = new ArrayList<>(corners);
        for (int k = kept.size() - 1; k >= 0 && kept.size() > 3; k--) {
            Point before = kept.get((k + kept.size() - 1) % kept.size());
            Point after = kept.get((k + 1) % kept.size());
            if (distance(kept.get(k), before, after) < FLAT * tolerance) {
                kept.remove(k);
            }
        }
        return kept;
    }

    /** Distance of a point from the line through two others; 0 if these are one. */
    private static double distance(Point p, Point a, Point b) {
        double base = a.distanceTo(b);
        double twice = (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
        return base == 0 ? 0 : Math.abs(twice) / base;
    }
}
