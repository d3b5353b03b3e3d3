package loamline.water;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How even some depths or rates are; all ratios from 0 up, 1 the best.
 *
 * <p>The lowest quarter of n readings is n/4 of them rounded to the nearest whole number, halves up, at least one; the
 * lowest half goes by the same rule. No source fixes this where n is not a multiple of 4, so {@link #RULE} stands
 * beside the result. Readings count alike: each stands for the same ground.
 *
 * @param n how many, 1 or more
 * @param mean above 0
 * @param min the smallest, 0 or more
 * @param duLq mean of the lowest quarter / mean (Merriam & Keller 1978, Farm Irrigation System Evaluation, from memory)
 * @param duLh mean of the lowest half / mean (Irrigation Association 2005, from memory)
 * @param cu 1 − mean absolute deviation / mean; below 0 where readings lie very far apart (Christiansen 1942,
 *     California Agr. Exp. Stn. Bulletin 670)
 * @param cv standard deviation (n − 1) / mean; 0 for a single reading
 */
public record Uniformity(int n, double mean, double min, double duLq, double duLh, double cu, double cv) {
    /** How the lowest quarter is cut, in words. */
    public static final String RULE =
            "lowest quarter: n/4 readings rounded to the nearest whole number, halves up, at least one";

    /**
     * Measures readings.
     *
     * @param depths all in the same unit, in any order; not changed
     * @return empty if there are none, or all are 0: nothing is even or uneven about a dry lawn
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public static Optional<Uniformity> of(double... depths) {
        return ofOwned(depths.clone());
    }

    /** The same for an array that nobody needs any more: it is sorted in place. */
    static Optional<Uniformity> ofOwned(double[] depths) {
        Arrays.sort(depths); // NaN goes to the end, so both ends show every value that is none
        int n = depths.length;
        double mean = n == 0 ? 0 : meanOfLowest(depths, n);
        if (n > 0 && !(depths[0] >= 0 && mean < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "depths must be 0 or more and finite, not " + depths[0] + " to " + depths[n - 1]);
        }
        if (mean == 0) {
            return Optional.empty();
        }
        double away = 0;
        double squares = 0;
        for (double depth : depths) {
            away += Math.abs(depth - mean);
            squares += (depth - mean) * (depth - mean);
        }
        double cv = n == 1 ? 0 : Math.sqrt(squares / (n - 1)) / mean;
        double lowQuarter = meanOfLowest(depths, lowest(n, 4)) / mean;
        double lowHalf = meanOfLowest(depths, lowest(n, 2)) / mean;
        return Optional.of(new Uniformity(n, mean, depths[0], lowQuarter, lowHalf, 1 - away / n / mean, cv));
    }

    /** How many readings the lowest of so many equal parts has. */
    static int lowest(int n, int parts) {
        return Math.max(1, (2 * n + parts) / (2 * parts));
    }

    private static double meanOfLowest(double[] sorted, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += sorted[i];
        }
        return sum / count;
    }

    /** The smallest reading as a share of the mean, 0 to 1. */
    public double minRatio() {
        return min / mean;
    }

    /**
     * The scheduling coefficient where every reading is a window of its own: how many times as long one must water for
     * the driest spot to get the mean (CATI Irrigation Notes 880802, California State University Fresno). Empty if the
     * driest spot gets nothing: no time is long enough.
     */
    public OptionalDouble schedulingCoefficient() {
        return min > 0 ? OptionalDouble.of(mean / min) : OptionalDouble.empty();
    }
}
