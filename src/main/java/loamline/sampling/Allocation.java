package loamline.sampling;

import java.util.Arrays;
import loamline.account.Source;

/**
 * Shares a number of cores among zones in proportion to area.
 *
 * <p>Largest remainder: every zone first takes the whole part of its quota, the rest goes to the largest
 * fractions (ties to the zone listed first). Then a zone left without a core takes one from the zone with the
 * most; so with fewer cores than zones, every zone still has one and the total grows to the number of zones.
 */
final class Allocation {
    static final Source LARGEST_REMAINDER =
            new Source("largest-remainder", "Largest-remainder apportionment (Hamilton); common practice, no source");

    private Allocation() {}

    /**
     * @param cores how many to share, at least 1
     * @param areasM2 areas above 0; none gives none
     * @return cores by zone, each at least 1
     */
    static int[] shares(int cores, double[] areasM2) {
        double total = Arrays.stream(areasM2).sum();
        int[] shares = new int[areasM2.length];
        double[] fraction = new double[areasM2.length];
        int left = cores;
        for (int i = 0; i < shares.length; i++) {
            double quota = cores * areasM2[i] / total;
            shares[i] = (int) Math.floor(quota);
            fraction[i] = quota - shares[i];
            left -= shares[i];
        }
        for (; left > 0 && shares.length > 0; left--) {
            int next = largest(fraction);
            shares[next]++;
            fraction[next] = -1;
        }
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] == 0) {
                int most = largest(Arrays.stream(shares).asDoubleStream().toArray());
                shares[most] -= shares[most] > 1 ? 1 : 0;
                shares[i] = 1;
            }
        }
        return shares;
    }

    private static int largest(double[] values) {
        int best = 0;
        for (int i = 1; i < values.length; i++) {
            if (values[i] > values[best]) {
                best = i;
            }
        }
        return best;
    }
}
