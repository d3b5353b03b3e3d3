package loamline.water.need;

import loamline.account.Account;
import loamline.account.Source;

/**
 * How much longer a valve runs because it waters unevenly: so that its drier half gets the need.
 *
 * <p>Watering by the drier half, not the driest quarter: dividing by the low-quarter uniformity asks far too much water
 * of a lawn (Mecham 2010, ASABE paper IRR10-10040).
 *
 * @param lowHalf low-half distribution uniformity, 0 to 1
 * @param account how it came about
 */
public record RunTimeMultiplier(double lowHalf, Account account) {
    private static final Source AUDITOR = new Source(
            "ia-rtm",
            "From memory of the Irrigation Association's auditor handbook: run time multiplier 1/(0.4 + 0.6 DULQ), which"
                    + " estimates the low-half uniformity");

    /**
     * The low-quarter uniformity 0.40 as a low half: below it the multiplier stays, since longer watering does not mend
     * a hole in the coverage. Common practice, no source.
     */
    static final double LEAST_LOW_HALF = 0.4 + 0.6 * 0.40;

    public RunTimeMultiplier {
        requireShare("lowHalf", lowHalf);
    }

    /** From the low-half uniformity as the cups have it, 0 to 1. */
    public static RunTimeMultiplier ofLowHalf(double lowHalf) {
        requireShare("lowHalf", lowHalf);
        return new RunTimeMultiplier(
                lowHalf, Account.of("M = 1 / DULH", "Measured.", AUDITOR).with("du_lh", lowHalf));
    }

    /** From the low-quarter uniformity, 0 to 1. */
    public static RunTimeMultiplier ofLowQuarter(double lowQuarter) {
        requireShare("lowQuarter", lowQuarter);
        return new RunTimeMultiplier(
                0.4 + 0.6 * lowQuarter,
                Account.of("M = 1 / (0.4 + 0.6 DULQ)", "", AUDITOR).with("du_lq", lowQuarter));
    }

    private static void requireShare(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " = " + value + " must be 0 to 1");
        }
    }

    /** Run time over that of a valve that waters evenly: 1 to 1/0.64, however uneven it is. */
    public double factor() {
        return 1 / Math.max(lowHalf, LEAST_LOW_HALF);
    }

    /** Whether running longer cannot make up for it. */
    public boolean isBeyondRunTime() {
        return lowHalf < LEAST_LOW_HALF;
    }
}
