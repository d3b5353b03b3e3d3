package loamline.sampling.walk;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;

/**
 * Leaves out vertices of a line as long as those left out stay within a sleeve round the straight piece that replaces
 * them: one pass, no vertex farther from the new line than the tolerance. It asks for more vertices than the best
 * choice would, but never for more than one look at each.
 */
final class Sleeve {
    /** How far left-out vertices may lie beside the new piece, and beyond its end: both at once give the tolerance. */
    private final double slackM;

    private final Point anchor;
    private double farthestM;
    private double dirX;
    private double dirY;
    private double low = Double.NEGATIVE_INFINITY;
    private double high = Double.POSITIVE_INFINITY;

    private Sleeve(Point anchor, double toleranceM) {
        this.anchor = anchor;
        this.slackM = toleranceM / Math.sqrt(2);
    }

    /** The vertices of a line that are kept; its ends always are. */
    static List<Point> thinned(List<Point> line, double toleranceM) {
        List<Point> kept = new ArrayList<>();
        kept.add(line.get(0));
        Sleeve sleeve = new Sleeve(line.get(0), toleranceM);
        for (int i = 1; i < line.size(); i++) {
            if (!sleeve.reaches(line.get(i))) {
                Point turn = line.get(i - 1);
                kept.add(turn);
                sleeve = new Sleeve(turn, toleranceM);
                sleeve.reaches(line.get(i));
            }
        }
        kept.add(line.get(line.size() - 1));
        return kept;
    }

    /** Whether the straight piece from the anchor may end here; if so, later ends must pass this point closely too. */
    private boolean reaches(Point p) {
        double distanceM = anchor.distanceTo(p);
        if (distanceM < farthestM - slackM) {
            return false;
        }
        farthestM = Math.max(farthestM, distanceM);
        if (farthestM <= slackM) {
            return true;
        }
        double angle = angleTo(p);
        if (angle < low || angle > high) {
            return false;
        }
        double half = Math.asin(Math.min(1, slackM / distanceM));
        low = Math.max(low, angle - half);
        high = Math.min(high, angle + half);
        return true;
    }

    /** Angle from the first direction that counted, rad, -π to π. */
    private double angleTo(Point p) {
        double dx = p.x() - anchor.x();
        double dy = p.y() - anchor.y();
        if (dirX == 0 && dirY == 0) {
            dirX = dx;
            dirY = dy;
        }
        return Math.atan2(dirX * dy - dirY * dx, dirX * dx + dirY * dy);
    }
}
