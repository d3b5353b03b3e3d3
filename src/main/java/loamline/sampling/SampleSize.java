package loamline.sampling;

import loamline.account.Source;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/** How many cores are enough, and how wrong a composite of n cores may be. */
public final class SampleSize {
    /** The formulas. */
    public static final Source SOURCE = new Source(
            "petersen-calvin",
            "From memory of Petersen & Calvin, Sampling, in Methods of Soil Analysis Part 1 (SSSA): n = (t·CV/E)²");

    /** Two-sided confidence that plans quote: common practice, no source. */
    public static final double USUAL_CONFIDENCE = 0.90;

    /** More cores than anyone takes: the search stops here. */
    private static final int MOST = 100_000;

    private SampleSize() {}

    /**
     * The smallest number of cores whose mean lies within ±error of the truth: the smallest n with
     * n ≥ (t(n − 1) · CV / E)².
     *
     * @param cvPct standard deviation between cores over their mean, per cent, above 0
     * @param errorPct half-width wanted, per cent of the mean, above 0
     * @param confidence two-sided, above 0 and below 1
     * @return at least 2, at most 100,000
     */
    public static int coresFor(double cvPct, double errorPct, double confidence) {
        requirePositive("cvPct", cvPct);
        requirePositive("errorPct", errorPct);
        int n = Math.max(2, (int) Math.ceil(coresByNormal(cvPct, errorPct, confidence)));
        while (n < MOST && n < square(t(n - 1, confidence) * cvPct / errorPct)) {
            n++;
        }
        return Math.min(n, MOST);
    }

    /** The same with the normal distribution, which the search starts from: (z · CV / E)², too few where it is small. */
    static double coresByNormal(double cvPct, double errorPct, double confidence) {
        return square(z(confidence) * cvPct / errorPct);
    }

    /** Standard error of the mean of n cores, per cent of the mean: CV / √n. */
    public static double standardErrorPct(double cvPct, int cores) {
        requirePositive("cores", cores);
        return cvPct / Math.sqrt(cores);
    }

    /**
     * Half-width of the interval for the mean of n cores, per cent of the mean: t(n − 1) · CV / √n.
     *
     * @param cores at least 2
     */
    public static double halfWidthPct(double cvPct, int cores, double confidence) {
        if (cores < 2) {
            throw new IllegalArgumentException("cores = " + cores + ": an interval needs at least 2");
        }
        return t(cores - 1, confidence) * standardErrorPct(cvPct, cores);
    }

    private static double t(int degreesOfFreedom, double confidence) {
        return new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability(1 - (1 - confidence) / 2);
    }

    private static double z(double confidence) {
        return new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - (1 - confidence) / 2);
    }

    private static double square(double x) {
        return x * x;
    }

    private static void requirePositive(String name, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " = " + value + " must be above 0");
        }
    }
}
