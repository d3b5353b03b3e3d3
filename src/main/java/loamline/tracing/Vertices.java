package loamline.tracing;

import java.util.Arrays;

/**
 * Which places along a ring to keep as vertices.
 *
 * <p>What: the middles of the ring's cell sides, thinned until no dropped one is farther than a tolerance from
 * the line between its neighbours kept. Units and shape: cells; indexes into the ring, rising, at least two.
 * Ties: the first of equals. Cost: n · log n as a rule.
 *
 * <p>Reference: Douglas and Peucker 1973, Cartographica 10:112-122; started from two places far apart, so that
 * the result does not depend on where the ring begins.
 */
final class Vertices {
    private Vertices() {}

    static int[] of(Ring ring, double tolerance) {
        // Two places far apart to start from.
        int n = ring.length();
        double sumX = 0;
        double sumY = 0;
        for (int i = 0; i < n; i++) {
            sumX += ring.middleX(i) - ring.middleX(0);
            sumY += ring.middleY(i) - ring.middleY(0);
        }
        int first = farthest(ring, sumX / n, sumY / n);
        int second = farthest(ring, ring.middleX(first) - ring.middleX(0), ring.middleY(first) - ring.middleY(0));
        // Stretches to look at, as pairs of ends; the second of a pair may run past the ring's end.
        boolean[] kept = new boolean[n];
        kept[first] = true;
        kept[second] = true;
        int[] stack = new int[2 * n + 4];
        int depth = 0;
        stack[depth++] = first;
        stack[depth++] = second < first ? second + n : second;
        stack[depth++] = second;
        stack[depth++] = first < second ? first + n : first;
        // Each stretch is split where it strays most, until none strays.
        while (depth > 0) {
            int to = stack[--depth];
            int from = stack[--depth];
            int split = worst(ring, from, to, tolerance);
            if (split > from) {
                kept[split % n] = true;
                stack[depth++] = from;
                stack[depth++] = split;
                stack[depth++] = split;
                stack[depth++] = to;
            }
        }
        // What was kept, in order.
        int[] indexes = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (kept[i]) {
                indexes[count++] = i;
            }
        }
        return Arrays.copyOf(indexes, count);
    }

    /** The place farthest from one given as seen from the ring's first, so that rounding is the same everywhere. */
    private static int farthest(Ring ring, double x, double y) {
        int best = 0;
        double far = -1;
        for (int i = 0; i < ring.length(); i++) {
            double d = Math.hypot(ring.middleX(i) - ring.middleX(0) - x, ring.middleY(i) - ring.middleY(0) - y);
            if (d > far) {
                far = d;
                best = i;
            }
        }
        return best;
    }

    /** The place between two that is farthest from the segment between them, if beyond the tolerance; else -1. */
    private static int worst(Ring ring, int from, int to, double tolerance) {
        int n = ring.length();
        double x = ring.middleX(from % n);
        double y = ring.middleY(from % n);
        double dx = ring.middleX(to % n) - x;
        double dy = ring.middleY(to % n) - y;
        double square = dx * dx + dy * dy;
        double far = tolerance * tolerance;
        int worst = -1;
        for (int i = from + 1; i < to; i++) {
            double px = ring.middleX(i % n) - x;
            double py = ring.middleY(i % n) - y;
            double along = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
            double ox = px - along * dx;
            double oy = py - along * dy;
            if (ox * ox + oy * oy > far) {
                far = ox * ox + oy * oy;
                worst = i;
            }
        }
        return worst;
    }
}
