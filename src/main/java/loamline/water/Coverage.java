package loamline.water;

import java.util.List;
import loamline.geometry.Region;

/**
 * How often turf is reached and where all water goes; from outlines, not from cells.
 *
 * @param turfM2 net turf of the yard
 * @param reachedBy the turf that 0, 1, 2, and 3 or more heads reach, of whatever valve
 * @param destinations where the water falls, turf first; together all of it
 */
public record Coverage(double turfM2, List<Region> reachedBy, List<Destination> destinations) {
    /** From so many heads on, more are not told apart. */
    static final int MOST = 3;

    public Coverage {
        reachedBy = List.copyOf(reachedBy);
        destinations = List.copyOf(destinations);
    }

    /**
     * A sort of ground that water falls on.
     *
     * @param ground {@link #TURF}, the word of a kind of cover such as {@code paving} or {@code building}, {@link #OTHER}
     *     for ground that nothing is drawn on, {@link #OUTSIDE} the property line, or {@link #OBSTACLES} for water
     *     stopped by them
     * @param share of all water when all valves run equally long, 0 to 1
     * @param litresAYear when every valve runs until its turf has the year's depth in the mean; a valve without turf does not
     */
    public record Destination(String ground, double share, double litresAYear) {
        public static final String TURF = "turf";
        public static final String OUTSIDE = "outside";
        public static final String OTHER = "other";
        public static final String OBSTACLES = "obstacles";
    }

    /** The share of all water that does not fall on turf, 0 to 1. */
    public double offTurfShare() {
        return destinations.stream()
                .filter(d -> !d.ground().equals(Destination.TURF))
                .mapToDouble(Destination::share)
                .sum();
    }
}
