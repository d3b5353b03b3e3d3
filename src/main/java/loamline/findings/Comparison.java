package loamline.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A quantity in an area against the rest of the lawn.
 *
 * @param areaN cores of the area that have it
 * @param restN cores of the rest that have it
 * @param areaMean in the quantity's unit
 * @param restMean in the quantity's unit
 * @param effect Cliff's delta, −1 to 1: how much likelier a core of the area has the larger value than the smaller
 * @param p exact two-sided permutation p-value of the difference of means
 * @param holmP the same, corrected for all quantities compared for this area
 */
public record Comparison(
        Quantity quantity,
        int areaN,
        int restN,
        double areaMean,
        double restMean,
        double effect,
        double p,
        double holmP) {
    /** With fewer on a side there is nothing to compare. */
    private static final int LEAST = 2;

    /** At or below, a difference is told as one. */
    public static final double CLEAR_P = 0.05;

    public boolean isClear() {
        return holmP <= CLEAR_P;
    }

    /** All quantities of which both sides have two cores or more, in the order of {@link Quantity}. */
    static List<Comparison> of(List<LoggedCore> area, List<LoggedCore> rest) {
        List<Comparison> raw = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            double[] here = values(area, quantity);
            double[] there = values(rest, quantity);
            if (here.length >= LEAST && there.length >= LEAST) {
                double p = PermutationTest.twoSided(here, there);
                raw.add(new Comparison(
                        quantity, here.length, there.length, mean(here), mean(there), cliff(here, there), p, p));
            }
        }
        double[] holm = Holm.corrected(raw.stream().map(Comparison::p).toList());
        List<Comparison> corrected = new ArrayList<>();
        for (int i = 0; i < holm.length; i++) {
            corrected.add(raw.get(i).with(holm[i]));
        }
        return List.copyOf(corrected);
    }

    private Comparison with(double corrected) {
        return new Comparison(quantity, areaN, restN, areaMean, restMean, effect, p, corrected);
    }

    static double[] values(List<LoggedCore> cores, Quantity quantity) {
        return cores.stream()
                .map(core -> core.value(quantity))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(Double.NaN);
    }

    /** Cliff 1993, Psychological Bulletin 114:494-509. */
    static double cliff(double[] here, double[] there) {
        double sum = 0;
        for (double a : here) {
            for (double b : there) {
                sum += Math.signum(a - b);
            }
        }
        return here.length == 0 || there.length == 0 ? 0 : sum / ((double) here.length * there.length);
    }
}
