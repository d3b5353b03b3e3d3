package loamline.water;

import java.util.List;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;

/**
 * How much of a head's water falls on a piece of ground that it reaches, without sampling it.
 *
 * <p>By Green's theorem the water on a region is a sum over its edges. With P(ρ) = ∫ f r dr from the head to ρ, an edge
 * at distance d from the head gives ∫ P(ρ) d/ρ² ds along it, ρ the distance of its points. Gauss-Legendre of four
 * points on pieces of at most a sixteenth of the radius: {@link #ACCURACY}.
 */
final class ThrownWater {
    /**
     * Share of the flow that may be missing. Nearly all of it is water on the strips of up to a two-thousandth of the
     * radius between the circle and the drawn rim, where a profile does not thin out.
     */
    static final double ACCURACY = 2.5e-4;

    private static final double LONGEST_PIECE = 1 / 16.0;

    /** Gauss-Legendre, four points on −1 to 1 (Abramowitz & Stegun 1964, table 25.4). */
    private static final double[] NODES = {0.339981043584856, 0.861136311594053};

    private static final double[] WEIGHTS = {0.652145154862546, 0.347854845137454};

    private final HeadPattern head;

    private ThrownWater(HeadPattern head) {
        this.head = head;
    }

    /** The share of a head's water that falls on ground within its reach, 0 to 1. */
    static double share(HeadPattern head, Region ground) {
        ThrownWater water = new ThrownWater(head);
        double sum = 0;
        for (Outline.Part part : ground.outline().parts()) {
            sum += Math.abs(water.around(part.shell()));
            for (List<Point> hole : part.holes()) {
                sum -= Math.abs(water.around(hole));
            }
        }
        double all = Math.toRadians(head.arc().sweepDeg()) * head.profile().within(1);
        return Math.max(0, Math.min(1, sum / all));
    }

    /** The integral inside a ring in units of the radius, its sign by the way round. */
    private double around(List<Point> ring) {
        double sum = 0;
        Point from = ring.get(ring.size() - 1);
        for (Point to : ring) {
            sum += along(
                    (from.x() - head.at().x()) / head.radiusM(),
                    (from.y() - head.at().y()) / head.radiusM(),
                    (to.x() - head.at().x()) / head.radiusM(),
                    (to.y() - head.at().y()) / head.radiusM());
            from = to;
        }
        return sum;
    }

    private double along(double x0, double y0, double x1, double y1) {
        double cross = x0 * y1 - y0 * x1; // distance of the edge's line times its length
        double length = Math.hypot(x1 - x0, y1 - y0);
        if (cross == 0 || length == 0) {
            return 0;
        }
        int pieces = (int) Math.ceil(length / LONGEST_PIECE);
        double sum = 0;
        for (int piece = 0; piece < pieces; piece++) {
            for (int node = 0; node < NODES.length; node++) {
                double before = (piece + 0.5 - NODES[node] / 2) / pieces;
                double after = (piece + 0.5 + NODES[node] / 2) / pieces;
                sum += WEIGHTS[node]
                        / 2
                        * (density(x0 + before * (x1 - x0), y0 + before * (y1 - y0))
                                + density(x0 + after * (x1 - x0), y0 + after * (y1 - y0)));
            }
        }
        return cross * sum / pieces;
    }

    /** P(ρ)/ρ²; at the head itself half the profile there. */
    private double density(double x, double y) {
        double squared = x * x + y * y;
        return squared == 0
                ? head.profile().at(0) / 2
                : head.profile().within(Math.min(1, Math.sqrt(squared))) / squared;
    }
}
