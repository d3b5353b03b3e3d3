package loamline.tracing;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;

/**
 * Gives a ring of corners an exact area: all edges move along their normals by the same distance.
 *
 * <p>Units: cells. Areas are signed, positive where the ring runs clockwise on screen. Accuracy: {@link #ACCURACY}
 * for a ring whose area is off by less than a tenth, as thinning leaves it.
 */
final class AreaFit {
    /** The most that an area can be off, as a share of it. */
    static final double ACCURACY = 1e-6;

    /** Rounds of moving the edges: each leaves the square of what the one before left. */
    private static final int ROUNDS = 4;

    /** A sharp corner moves at most by this many times the distance of its edges. */
    private static final double MOST_MITRE = 4;

    private AreaFit() {}

    static List<Point> of(List<Point> corners, double area) {
        List<Point> moved = corners;
        for (int round = 0; round < ROUNDS; round++) {
            double around = 0;
            for (int k = 0; k < moved.size(); k++) {
                around += moved.get(k).distanceTo(moved.get((k + 1) % moved.size()));
            }
            if (around > 0) {
                moved = offset(moved, (area - area(moved)) / around);
            }
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
            // The sum of both unit normals n: the corner moves by 2 n / |n|² for each unit of distance.
            double nx = (p.y() - a.y()) / before + (b.y() - p.y()) / after;
            double ny = (a.x() - p.x()) / before + (p.x() - b.x()) / after;
            double size = Math.hypot(nx, ny);
            double mitre = size == 0 ? 0 : Math.min(MOST_MITRE, 2 / size) / size;
            moved.add(p.plus(distance * mitre * nx, distance * mitre * ny));
        }
        return moved;
    }

    private static double area(List<Point> corners) {
        double twice = 0;
        for (int k = 0; k < corners.size(); k++) {
            Point a = corners.get(k);
            Point b = corners.get((k + 1) % corners.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }
}
