package loamline.findings;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Whether two groups differ by more than chance would make them.
 *
 * <p><b>What:</b> the share of all ways to deal the values into groups of these sizes that give a difference of means at
 * least as large, either way (two-sided).
 *
 * <p><b>Units and shape:</b> two arrays in one unit; the result is above 0 and at most 1.
 *
 * <p><b>NaN:</b> must not occur.
 *
 * <p><b>Ties and borders:</b> sums within {@link #TIE} of the observed one count as equal to it. 1 if a group is empty.
 *
 * <p><b>Accuracy:</b> exact up to {@link #MOST_DEALS} deals, counted one by one. Beyond, values are first rounded to a
 * {@link #STEPS}th of their range, finer than people read a ruler, and the deals of the rounded values are counted all.
 *
 * <p><b>Cost:</b> deals; beyond, values · group · group · steps.
 *
 * <p><b>Reference:</b> Fisher 1935, The Design of Experiments, section 21; the counting of sums is the shift algorithm
 * of Streitberg &amp; Röhmel 1986, Statistical Software Newsletter 12:10-17.
 */
final class PermutationTest {
    /** Deals that are counted one by one. */
    static final long MOST_DEALS = 2_000_000;

    /** Steps of the range, beyond that. */
    static final int STEPS = 400;

    /** Relative to the range of the values. */
    static final double TIE = 1e-9;

    private PermutationTest() {}

    /** The two-sided p-value. */
    static double twoSided(double[] group, double[] rest) {
        double[] all =
                DoubleStream.concat(Arrays.stream(group), Arrays.stream(rest)).toArray();
        double least = Arrays.stream(all).min().orElse(0);
        double range = Arrays.stream(all).max().orElse(0) - least;
        if (group.length == 0 || rest.length == 0 || range == 0) {
            return 1;
        }
        double[] shares = Arrays.stream(all).map(v -> (v - least) / range).toArray();
        int small = Math.min(group.length, rest.length);
        double[] smaller = group.length <= rest.length
                ? Arrays.copyOfRange(shares, 0, small)
                : Arrays.copyOfRange(shares, group.length, all.length);
        return deals(all.length, small) <= MOST_DEALS ? counted(shares, smaller) : shifted(shares, smaller);
    }

    /** How many ways there are to choose k of n, or more than can be counted. */
    static double deals(int n, int k) {
        double deals = 1;
        for (int i = 1; i <= k; i++) {
            deals = deals * (n - k + i) / i;
        }
        return Math.rint(deals);
    }

    private static double counted(double[] all, double[] group) {
        int k = group.length;
        double mean = Arrays.stream(all).sum() * k / all.length;
        double limit = Math.abs(Arrays.stream(group).sum() - mean) - TIE * k;
        int[] chosen = new int[k];
        Arrays.setAll(chosen, i -> i);
        long extreme = 0;
        long deals = 0;
        boolean more = true;
        while (more) {
            double sum = 0;
            for (int index : chosen) {
                sum += all[index];
            }
            extreme += Math.abs(sum - mean) >= limit ? 1 : 0;
            deals++;
            more = next(chosen, all.length);
        }
        return (double) extreme / deals;
    }

    /** The next choice in order; false after the last. */
    private static boolean next(int[] chosen, int n) {
        int k = chosen.length;
        int i = k - 1;
        while (i >= 0 && chosen[i] == n - k + i) {
            i--;
        }
        if (i < 0) {
            return false;
        }
        chosen[i]++;
        for (int j = i + 1; j < k; j++) {
            chosen[j] = chosen[j - 1] + 1;
        }
        return true;
    }

    private static double shifted(double[] all, double[] group) {
        int k = group.length;
        int[] steps =
                Arrays.stream(all).mapToInt(v -> (int) Math.rint(v * STEPS)).toArray();
        int observed =
                Arrays.stream(group).mapToInt(v -> (int) Math.rint(v * STEPS)).sum();
        int width = k * STEPS + 1;
        double[][] share = new double[k + 1][width];
        share[0][0] = 1;
        for (int i = 0; i < steps.length; i++) {
            for (int taken = Math.min(k, i + 1); taken >= 1; taken--) {
                double[] with = share[taken];
                double[] without = share[taken - 1];
                for (int sum = width - 1; sum >= steps[i]; sum--) {
                    with[sum] += without[sum - steps[i]];
                }
            }
        }
        double mean = (double) Arrays.stream(steps).sum() * k / steps.length;
        double limit = Math.abs(observed - mean) - TIE * k * STEPS;
        double extreme = 0;
        double deals = 0;
        for (int sum = 0; sum < width; sum++) {
            deals += share[k][sum];
            extreme += Math.abs(sum - mean) >= limit ? share[k][sum] : 0;
        }
        return Math.min(1, extreme / deals);
    }
}
