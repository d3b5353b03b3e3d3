package loamline.yard;

import java.util.Optional;

/**
 * What a number of a feature can be, in the unit of its property.
 *
 * @param least below this it cannot be; {@link Double#MIN_VALUE} for anything above 0
 * @param likely above this it is hardly meant
 * @param most above this it cannot be
 */
public record Bounds(double least, double likely, double most) {
    /** The bounds of a property of a feature's sort, by its name in files; empty if there are none. */
    public static Optional<Bounds> of(Class<? extends Feature> type, String property) {
        return Limit.bounds(type, property);
    }

    /** Whether every number above 0 is allowed, and 0 is not. */
    public boolean isAboveZero() {
        return least == Double.MIN_VALUE;
    }
}
