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

    /** Moving the edges is repeated until the area agrees; each time leaves about a thousandth of what was. */
    private static final int AREA_ROUNDS = 4;

    /** An edge moves at most by this many times its distance at a sharp corner. */
    private static final double MOST_MITRE = 4;

    /** A ring of fewer cell sides is kept as it is: there is nothing to thin. */
    private static final int LEAST_SIDES = 24;

    private Straightening() {}

    /**
     * Corners of a ring.
     *
     * @param tolerance cells that the border may be moved by
     */
    static List<Point> corners(Ring ring, double tolerance) {
        if (ring.length() < LEAST_SIDES) {
            return ring.corners();
        }
        int[] at = Vertices.of(ring, tolerance);
        List<Line> lines = new ArrayList<>();
        List<Point> vertices = new ArrayList<>();
        for (int k = 0; k < at.length; k++) {
            int end = k + 1 < at.length ? at[k + 1] : at[0] + ring.length();
            lines.add(Line.along(ring, at[k], end));
            vertices.add(new Point(ring.middleX(at[k]), ring.middleY(at[k])));
        }
        sharpen(lines, vertices, tolerance);
        List<Point> free = corners(lines, vertices, tolerance);
        List<Point> squared = corners(squared(lines), vertices, tolerance);
        boolean near = true;
        for (int k = 0; k < free.size(); k++) {
            near &= free.get(k).distanceTo(squared.get(k)) <= tolerance;
        }
        return withArea(withoutFlat(near ? squared : free, FLAT * tolerance), ring.area());
    }

    /** Takes out short edges that cut a corner in which their longer neighbours meet. */
    private static void sharpen(List<Line> lines, List<Point> vertices, double tolerance) {
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

    private static List<Point> corners(List<Line> lines, List<Point> vertices, double tolerance) {
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < lines.size(); k++) {
            Line before = lines.get((k + lines.size() - 1) % lines.size());
            Line after = lines.get(k);
            Point vertex = vertices.get(k);
            Point between = before.nearest(vertex).towards(after.nearest(vertex), 0.5);
            corners.add(before.meets(after)
                    .filter(p -> p.distanceTo(vertex) <= MOST_SHIFT * tolerance)
                    .orElse(between));
        }
        return corners;
    }

    /** The lines with those that are nearly square to each other made so, if they are most of the border. */
    private static List<Line> squared(List<Line> lines) {
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

    private static List<Point> withoutFlat(List<Point> corners, double tolerance) {
        List<Point> kept = new ArrayList<>(corners);
        for (int k = kept.size() - 1; k >= 0 && kept.size() > 3; k--) {
            Point a = kept.get((k + kept.size() - 1) % kept.size());
            Point p = kept.get(k);
            Point b = kept.get((k + 1) % kept.size());
            double base = a.distanceTo(b);
            double off = base == 0
                    ? 0
                    : Math.abs((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x())) / base;
            if (off < tolerance) {
                kept.remove(k);
            }
        }
        return kept;
    }

    /** Moves all edges along their normals until the corners enclose a signed area. */
    private static List<Point> withArea(List<Point> corners, double area) {
        List<Point> moved = corners;
        for (int round = 0; round < AREA_ROUNDS; round++) {
            double around = 0;
            for (int k = 0; k < moved.size(); k++) {
                around += moved.get(k).distanceTo(moved.get((k + 1) % moved.size()));
            }
            moved = around == 0 ? moved : offset(moved, (area - area(moved)) / around);
        }
        return moved;
    }

    /** Moves every edge to its left as the ring runs, which is outward where the area is positive. */
    private static List<Point> offset(List<Point> corners, double distance) {
        List<Point> moved = new ArrayList<>();
        for (int k = 0; k < corners.size(); k++) {
            Point a = corners.get((k + corners.size() - 1) % corners.size());
            Point p = corners.get(k);
            Point b = corners.get((k + 1) % corners.size());
            double before = Math.max(Double.MIN_NORMAL, a.distanceTo(p));
            double after = Math.max(Double.MIN_NORMAL, p.distanceTo(b));
            double nx = (p.y() - a.y()) / before + (b.y() - p.y()) / after;
            double ny = -(p.x() - a.x()) / before - (b.x() - p.x()) / after;
            double square = nx * nx + ny * ny;
            double mitre = square == 0 ? 0 : Math.min(MOST_MITRE / Math.sqrt(square), 2 / square);
            moved.add(p.plus(distance * mitre * nx, distance * mitre * ny));
        }
        return moved;
    }

    /** Signed area, positive where the ring runs clockwise on screen. */
    static double area(List<Point> corners) {
        double twice = 0;
        for (int k = 0; k < corners.size(); k++) {
            Point a = corners.get(k);
            Point b = corners.get((k + 1) % corners.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }
}
