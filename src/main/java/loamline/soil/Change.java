package loamline.soil;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A value against the test before, made in the same way.
 *
 * @param before the earlier value, in the unit of the newer one
 * @param difference newer less earlier
 * @param beyondError whether the difference is larger than sampling and analysis make it in 95 of 100 cases; empty where
 *     no error is published
 */
public record Change(LocalDate since, double before, double difference, Optional<Boolean> beyondError) {
    /** Standard deviation of sampling and analysis, share of P, K and Mg. Ferrari & Vermeulen. */
    private static final double NUTRIENT_SD = 0.10;
    /** The same for pH, units. */
    private static final double PH_SD = 0.1;
    /** Two-sided 95 % of the normal distribution. */
    private static final double Z95 = 1.96;

    static Change of(Element element, LocalDate since, double before, double now) {
        double difference = now - before;
        OptionalDouble sd = switch (element) {
            case P, K, MG -> OptionalDouble.of(NUTRIENT_SD * Math.hypot(before, now));
            case PH -> OptionalDouble.of(PH_SD * Math.sqrt(2));
            default -> OptionalDouble.empty();
        };
        Optional<Boolean> beyond =
                sd.stream().mapToObj(s -> Math.abs(difference) > Z95 * s).findFirst();
        return new Change(since, before, difference, beyond);
    }
}
