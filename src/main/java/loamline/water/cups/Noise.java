package loamline.water.cups;

import java.util.Arrays;
import java.util.List;

/**
 * How far readings of a sound valve lie from the truth: by a share of the rate, and by a floor where it is small.
 *
 * <p>The share is learnt from the readings themselves, starting from {@link #USUAL}.
 */
final class Noise {
    /** Standard deviation of a reading as a share of the rate: common practice, no source. */
    static final double USUAL = 0.10;

    /** As many readings as the usual share counts for against those that were taken. */
    static final double USUAL_COUNTS = 6;

    /** Natural spread of the output of sound heads on one valve, standard deviation: common practice, no source. */
    static final double HEADS = 0.05;

    /** The floor as a share of the mean rate: drift and splash where no water is meant to fall. */
    private static final double FLOOR = 0.03;

    /** How finely a cup is read, ml: half a mark of a scale in millilitres. */
    private static final double READING_ML = 0.5;

    private Noise() {}

    /**
     * For each cup the rate below which noise no longer grows with the rate, mm/h: the standard deviation is share ·
     * √(rate² + quiet²).
     */
    static double[] quietMmH(List<Cup> cups) {
        double meanMmH = cups.stream().mapToDouble(Cup::rateMmH).average().orElse(0);
        return cups.stream()
                .mapToDouble(cup -> Math.hypot(FLOOR * meanMmH, cup.rateMmH(READING_ML)) / USUAL)
                .toArray();
    }

    /** The share as the readings have it, from the sum of squared misfits over rate² + quiet². */
    static double share(double squares, int n) {
        return Math.sqrt((USUAL_COUNTS * USUAL * USUAL + squares) / (USUAL_COUNTS + n));
    }

    /** The values of some cups but for one. */
    static double[] without(double[] values, int cup) {
        double[] rest = Arrays.copyOf(values, values.length - 1);
        System.arraycopy(values, cup + 1, rest, cup, rest.length - cup);
        return rest;
    }
}
