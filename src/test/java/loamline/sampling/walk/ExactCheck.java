package loamline.sampling.walk;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.geometry.Edge;
import loamline.geometry.Edges;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;

/**
 * Whether a path is free, by arithmetic without rounding and none of the planner's means: places all along it are
 * inside no obstacle and not off the yard, and none of its pieces crosses a fence. Where obstacles overlap, their
 * corners are rounded, so what is less deep than a nanometre passes.
 */
final class ExactCheck {
    private static final double ROUNDING_M = 1e-9;

    /** Places looked at on each piece of a path; a power of two, so that they are exact. */
    private static final int PLACES = 32;

    private ExactCheck() {}

    /** What is wrong with a path; empty if nothing is. */
    static Optional<String> fault(Yards.Scene scene, Polyline path) {
        for (int i = 1; i < path.points().size(); i++) {
            Point a = path.points().get(i - 1);
            Point b = path.points().get(i);
            Optional<String> fault = faultOnPiece(scene, a, b);
            if (fault.isPresent()) {
                return fault.map(what -> what + " between " + a + " and " + b);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> faultOnPiece(Yards.Scene scene, Point a, Point b) {
        boolean crossesFence = scene.fences().stream()
                .flatMap(fence -> Edges.along(fence).stream())
                .anyMatch(edge -> crosses(edge, a, b));
        if (crossesFence) {
            return Optional.of("through a fence");
        }
        for (int k = 0; k <= PLACES; k++) {
            double share = k / (double) PLACES;
            Point near = a.towards(b, share);
            BigDecimal x = between(a.x(), b.x(), share);
            BigDecimal y = between(a.y(), b.y(), share);
            if (scene.solids().stream().anyMatch(s -> holds(s, x, y) && s.distanceToEdge(near) > ROUNDING_M)) {
                return Optional.of("inside an obstacle");
            }
            if (scene.boundary()
                    .filter(s -> !holds(s, x, y) && s.distanceToEdge(near) > ROUNDING_M)
                    .isPresent()) {
                return Optional.of("off the yard");
            }
        }
        return Optional.empty();
    }

    private static boolean crosses(Edge edge, Point a, Point b) {
        return side(edge.from(), edge.to(), a) * side(edge.from(), edge.to(), b) < 0
                && side(a, b, edge.from()) * side(a, b, edge.to()) < 0
                && edge.distanceTo(a) > ROUNDING_M
                && edge.distanceTo(b) > ROUNDING_M;
    }

    private static int side(Point a, Point b, Point p) {
        return side(a, b, new BigDecimal(p.x()), new BigDecimal(p.y()));
    }

    private static int side(Point a, Point b, BigDecimal x, BigDecimal y) {
        BigDecimal ax = new BigDecimal(a.x());
        BigDecimal ay = new BigDecimal(a.y());
        return new BigDecimal(b.x())
                .subtract(ax)
                .multiply(y.subtract(ay))
                .compareTo(new BigDecimal(b.y()).subtract(ay).multiply(x.subtract(ax)));
    }

    private static BigDecimal between(double a, double b, double share) {
        return new BigDecimal(a)
                .add(new BigDecimal(b).subtract(new BigDecimal(a)).multiply(new BigDecimal(share)));
    }

    /** Whether a ray to the east crosses the rings an odd number of times. */
    private static boolean holds(Region region, BigDecimal x, BigDecimal y) {
        return region.outline().rings().mapToLong(ring -> crossings(ring, x, y)).sum() % 2 == 1;
    }

    private static long crossings(List<Point> ring, BigDecimal x, BigDecimal y) {
        return Stream.iterate(0, i -> i < ring.size(), i -> i + 1)
                .filter(i -> {
                    Point a = ring.get(i);
                    Point b = ring.get((i + 1) % ring.size());
                    boolean upward = new BigDecimal(a.y()).compareTo(y) <= 0;
                    boolean ends = new BigDecimal(b.y()).compareTo(y) <= 0;
                    return upward != ends && side(a, b, x, y) * (upward ? 1 : -1) > 0;
                })
                .count();
    }
}
