package loamline.season.blend;

/**
 * Limits of an amount, g/m².
 *
 * @param least 0 or more
 * @param most at least as much; may be infinite
 */
public record Range(double least, double most) {
    /** @throws IllegalArgumentException if the limits are below 0 or in the wrong order */
    public Range {
        if (!(least >= 0 && most >= least)) {
            throw new IllegalArgumentException("no range from " + least + " to " + most);
        }
    }

    public static Range atMost(double most) {
        return new Range(0, most);
    }

    public static Range atLeast(double least) {
        return new Range(least, Double.POSITIVE_INFINITY);
    }
}
