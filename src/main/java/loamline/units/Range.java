package loamline.units;

import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * What a value of a measure may be, bounds included.
 *
 * @param least in the measure's stored unit; negative infinity for no bound
 * @param most in the measure's stored unit, no less than {@code least}; infinity for no bound
 */
public record Range(Measure measure, double least, double most) {
    /** By what share of itself a bound may be missed: more than a conversion blurs, less than anyone types. */
    static final double SLACK = 1e-12;

    /** Significant digits of a bound in a sentence. */
    private static final int BOUND_DIGITS = 4;

    /** @throws IllegalArgumentException if a bound is NaN or the bounds are in the wrong order */
    public Range {
        if (!(least <= most)) {
            throw new IllegalArgumentException("least must be no more than most: " + least + ", " + most);
        }
    }

    /** A range without upper bound. */
    public static Range atLeast(Measure measure, double least) {
        return new Range(measure, least, Double.POSITIVE_INFINITY);
    }

    /** Whether the value lies within, to one part in 1e12 of a bound; false for NaN. */
    public boolean contains(double stored) {
        return stored >= least - SLACK * Math.abs(finite(least)) && stored <= most + SLACK * Math.abs(finite(most));
    }

    /**
     * A sentence that says what would be accepted, such as {@code Write a length from 1 ft to 50 ft.}; empty if the value
     * lies within. Bounds are rounded inward, so that a bound typed as it is shown is accepted.
     */
    public Optional<String> complaint(double stored, UnitSystem system) {
        return contains(stored)
                ? Optional.empty()
                : Optional.of("Write %s %s.".formatted(measure.noun(), bounds(system)));
    }

    private String bounds(UnitSystem system) {
        if (Double.isInfinite(most)) {
            return "of " + bound(least, system, RoundingMode.CEILING) + " or more";
        }
        String upper = bound(most, system, RoundingMode.FLOOR);
        return Double.isInfinite(least)
                ? "of " + upper + " or less"
                : "from " + bound(least, system, RoundingMode.CEILING) + " to " + upper;
    }

    private String bound(double stored, UnitSystem system, RoundingMode inward) {
        return Formatting.shortest(measure, stored, system, new MathContext(BOUND_DIGITS, inward))
                .text();
    }

    private static double finite(double bound) {
        return Double.isInfinite(bound) ? 0 : bound;
    }
}
