package loamline.water.need;

import java.util.OptionalDouble;
import loamline.reference.SoilWater;

/**
 * The soil that a valve waters.
 *
 * @param water how its texture holds and takes in water
 * @param rootDepthMm how deep the roots reach: measured with a probe, mown lawns often have 100 to 200 mm
 * @param depletion share of the available water that may be used before watering, above 0 and at most 1
 * @param slopePct rise over run, per cent, 0 or more
 * @param runoffMin minutes until water was seen to run off, if somebody watched; they overrule texture and slope
 */
public record LawnSoil(
        SoilWater water, double rootDepthMm, double depletion, double slopePct, OptionalDouble runoffMin) {
    /**
     * Usual share of the available water that turf may use: from memory of Irrigation Association, Landscape Irrigation
     * Scheduling and Water Management, 2005.
     */
    public static final double USUAL_DEPLETION = 0.5;

    /** Roots of a mown lawn where nobody probed: the middle of 100 to 200 mm, common practice, no source. */
    public static final double USUAL_ROOT_DEPTH_MM = 150;

    /** Longest time between waterings that is told: a year. */
    private static final int MOST_DAYS = 365;

    /**
     * Least pause between cycles whose length somebody watched, minutes: the next start is 30 to 60 minutes after the
     * last station has stopped (Texas A&amp;M AgriLife, Water University, Cycle and soak).
     */
    private static final double LEAST_SOAK_MIN = 30;

    public LawnSoil {
        requirePositive("rootDepthMm", rootDepthMm);
        requirePositive("depletion", depletion);
        if (depletion > 1) {
            throw new IllegalArgumentException("depletion = " + depletion + " must be at most 1");
        }
        if (!(slopePct >= 0 && Double.isFinite(slopePct))) {
            throw new IllegalArgumentException("slopePct = " + slopePct + " must be 0 or more");
        }
        runoffMin.ifPresent(minutes -> requirePositive("runoffMin", minutes));
    }

    private static void requirePositive(String name, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " = " + value + " must be above 0");
        }
    }

    /** Level soil with usual roots. */
    public static LawnSoil usual(SoilWater water) {
        return new LawnSoil(water, USUAL_ROOT_DEPTH_MM, USUAL_DEPLETION, 0, OptionalDouble.empty());
    }

    /** Water between field capacity and wilting point within the roots, mm. */
    public double availableMm() {
        return water.availableShare() * rootDepthMm;
    }

    /** Water that may be used before the next watering, mm. */
    public double allowedMm() {
        return availableMm() * depletion;
    }

    /** Whole days that the allowed water lasts; 0 if less than one. */
    public int days(double turfMmDay) {
        return turfMmDay > 0 ? (int) Math.min(MOST_DAYS, Math.floor(allowedMm() / turfMmDay)) : MOST_DAYS;
    }

    /**
     * Longest run before water stands or runs off, minutes; empty if the soil takes in all that falls.
     *
     * @param rateMmH application rate, mm/h
     */
    public OptionalDouble longestRunMin(double rateMmH) {
        if (runoffMin.isPresent()) {
            return runoffMin;
        }
        double surplus = rateMmH - water.intakeMmH();
        return surplus > 0 ? OptionalDouble.of(60 * water.accumulationMm(slopePct) / surplus) : OptionalDouble.empty();
    }

    /** Minutes in which the soil takes in what a run left standing; half an hour at least where run-off was watched. */
    public double soakMin(double rateMmH, double runMin) {
        double least = runoffMin.isPresent() ? LEAST_SOAK_MIN : 0;
        return Math.max(least, (rateMmH - water.intakeMmH()) * runMin / water.intakeMmH());
    }
}
