package loamline.sampling.walk;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A closed round through all stops, with a length that no round can undercut.
 *
 * <p>Made by {@link TourSolver}, which says what it costs.
 *
 * @param order the stops in the order of the walk, each once, from stop 0; the way back to stop 0 is not listed
 * @param lengthM sum of the legs in this order, the leg back to stop 0 included, m
 * @param lowerBoundM no round through these stops is shorter, m; at most {@code lengthM}. From exhaustive dynamic
 *     programming, or from 1-trees, right to rounding either way
 */
public record Tour(List<Integer> order, double lengthM, double lowerBoundM) {
    /**
     * A tour counts as proven shortest if it is above its bound by no more than this share: far above the rounding of
     * the bound, and less than a micrometre in any yard.
     */
    public static final double PROOF = 1e-9;

    /**
     * Copies the order.
     *
     * @throws IllegalArgumentException if the order does not start at 0 or is no permutation of 0 … n − 1, the length
     *     is negative or not finite, or the bound is not within 0 … length
     */
    public Tour {
        order = List.copyOf(order);
        if (order.isEmpty() || order.get(0) != 0) {
            throw new IllegalArgumentException("order is " + order + ", must start at stop 0");
        }
        if (!order.stream()
                .sorted()
                .toList()
                .equals(IntStream.range(0, order.size()).boxed().toList())) {
            throw new IllegalArgumentException("order is " + order + ", must hold each stop once");
        }
        if (!(lengthM >= 0 && Double.isFinite(lengthM))) {
            throw new IllegalArgumentException("lengthM is " + lengthM + ", must be finite and 0 or more");
        }
        if (!(lowerBoundM >= 0 && lowerBoundM <= lengthM)) {
            throw new IllegalArgumentException("lowerBoundM is " + lowerBoundM + ", must be within 0 … " + lengthM);
        }
    }

    /** Whether this is a shortest round: its length is its lower bound, to {@link #PROOF}. */
    public boolean proven() {
        return lengthM <= lowerBoundM * (1 + PROOF);
    }

    /**
     * The tour along a cycle that starts anywhere and runs either way.
     *
     * @param lowerBoundM capped at the tour's length, above which it could come by rounding only
     */
    static Tour along(DistanceMatrix distances, int[] cycle, double lowerBoundM) {
        int n = cycle.length;
        int start = IntStream.range(0, n).filter(i -> cycle[i] == 0).findFirst().orElseThrow();
        int step = cycle[(start + 1) % n] <= cycle[(start + n - 1) % n] ? 1 : n - 1;
        List<Integer> order = IntStream.range(0, n)
                .map(i -> cycle[(start + i * step) % n])
                .boxed()
                .toList();
        double length = lengthM(distances, order.stream().mapToInt(i -> i).toArray());
        return new Tour(order, length, Math.min(lowerBoundM, length));
    }

    /** Length of a closed cycle, m, summed leg by leg from its first stop. */
    static double lengthM(DistanceMatrix distances, int[] cycle) {
        double sum = 0;
        for (int i = 0; i < cycle.length; i++) {
            sum += distances.betweenM(cycle[i], cycle[(i + 1) % cycle.length]);
        }
        return sum;
    }
}
