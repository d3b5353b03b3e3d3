package loamline.season;

import java.util.ArrayList;
import java.util.List;

/**
 * How well grass can grow at a temperature, 0 to 1: exp(−½ ((t − best) / spread)²). Woods 2014, citing Gelernter & Stowell
 * 2005, Golf Course Management.
 */
public enum GrowthPotential {
    /** Cool-season grasses: best at 20 °C. */
    COOL(20, 5.5, false),
    /** Warm-season grasses: best at 31 °C, and no worse above it, as the authors later had it. */
    WARM(31, 7, true);

    /** Below this share grass hardly grows: the same authors' notes on the model (second-hand). */
    public static final double VERY_LITTLE = 0.1;

    private final double bestC;
    private final double spreadC;
    private final boolean plateau;

    GrowthPotential(double bestC, double spreadC, boolean plateau) {
        this.bestC = bestC;
        this.spreadC = spreadC;
        this.plateau = plateau;
    }

    static GrowthPotential of(String group) {
        return group.equals("warm") ? WARM : COOL;
    }

    /** @param meanC mean air temperature of a day or a month, °C */
    public double at(double meanC) {
        return plateau && meanC > bestC ? 1 : gaussian(meanC, bestC, spreadC);
    }

    /** The curve with figures of one's own, such as those in °F. */
    static double gaussian(double t, double best, double spread) {
        double off = (t - best) / spread;
        return Math.exp(-0.5 * off * off);
    }

    /** An amount shared among months in proportion to growth. */
    public List<Double> shared(double total, List<Double> meanC) {
        double sum = meanC.stream().mapToDouble(this::at).sum();
        List<Double> shares = new ArrayList<>();
        meanC.forEach(t -> shares.add(total * at(t) / sum));
        return shares;
    }
}
