package loamline.yard;

import java.util.List;

/** How the depth of water falls off from a head to the rim of its throw. */
public sealed interface Profile {
    /** A shape with a name. */
    enum Named implements Profile {
        CONE,
        UNIFORM,
        PARABOLA,
        ELLIPSE,
        RING
    }

    /**
     * Depths measured along a leg.
     *
     * @param depths relative depths at equal steps, the first at the head and the last at the rim; at least
     *     two, none negative, not all 0
     */
    record Measured(List<Double> depths) implements Profile {
        /** @throws IllegalArgumentException if the depths are not as described */
        public Measured {
            depths = List.copyOf(depths);
            boolean sound = depths.size() >= 2
                    && depths.stream().allMatch(d -> d >= 0 && Double.isFinite(d))
                    && depths.stream().anyMatch(d -> d > 0);
            if (!sound) {
                throw new IllegalArgumentException(
                        "a measured profile needs two or more depths, none negative, not all 0: " + depths);
            }
        }
    }
}
