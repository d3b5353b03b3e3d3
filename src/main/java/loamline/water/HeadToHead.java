package loamline.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a head throws as far as the next heads stand.
 *
 * @param head its id
 * @param key the feature in the yard
 * @param nearestM distance to the nearest neighbour on any side; empty if it has none
 * @param reach radius of throw / that distance, 1 or more if it gets there; empty if it has no neighbour
 * @param sides the parts of its arc, clockwise
 */
public record HeadToHead(String head, String key, OptionalDouble nearestM, OptionalDouble reach, List<Side> sides) {
    public HeadToHead {
        sides = List.copyOf(sides);
    }

    /** Whether it has a neighbour and reaches the nearest one on every side that has one. */
    public boolean ok() {
        return nearestM.isPresent() && sides.stream().allMatch(Side::ok);
    }

    /**
     * A part of an arc, a quarter turn at most.
     *
     * @param startDeg azimuth of its first edge
     * @param sweepDeg clockwise from there
     * @param nearest id of the nearest head on this side; empty if there is none
     * @param nearestM distance to it
     * @param ok whether the throw gets there; true if there is no head to get to
     */
    public record Side(
            double startDeg, double sweepDeg, Optional<String> nearest, OptionalDouble nearestM, boolean ok) {}
}
