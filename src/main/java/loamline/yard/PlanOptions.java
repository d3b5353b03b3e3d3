package loamline.yard;

import java.util.OptionalInt;

/**
 * What the person decides about a core plan.
 *
 * @param kits how many lab samples may be sent, 1 or more; empty to follow the zones' own bags, or else two
 * @param coresPerComposite cores in each composite, 1 to {@link #MOST_CORES}
 * @param edgeBufferM how far cores stay from paving, fences, beds and all other borders of the turf, m, 0 or more
 * @param trunkBufferM how far from tree trunks, m, 0 or more
 * @param headBufferM how far from sprinkler heads, m, 0 or more
 * @param place where in its stratum a core goes
 * @param sparesPerStratum 0 to {@link #MOST_SPARES}
 * @param seed the same seed gives the same plan
 * @param walk one round a bag, or one for all bags
 * @param probe the tool
 * @param extras what a file said beyond this
 */
public record PlanOptions(
        OptionalInt kits,
        int coresPerComposite,
        double edgeBufferM,
        double trunkBufferM,
        double headBufferM,
        Place place,
        int sparesPerStratum,
        long seed,
        Rounds walk,
        Probe probe,
        Extras extras) {
    /** More cores than anyone takes for one composite. */
    public static final int MOST_CORES = 200;

    public static final int MOST_SPARES = 2;

    private static final double FOOT_M = 0.3048;

    /** Where a core goes in its stratum. */
    public enum Place {
        CENTRE,
        RANDOM
    }

    /** How the bags are walked. */
    public enum Rounds {
        ONE,
        ALL
    }

    /** Twelve cores a composite, 3 ft from edges and trunks, 2 ft from heads, one spare each, bag by bag. */
    public static final PlanOptions USUAL = new PlanOptions(
            OptionalInt.empty(),
            12,
            3 * FOOT_M,
            3 * FOOT_M,
            2 * FOOT_M,
            Place.CENTRE,
            1,
            1,
            Rounds.ONE,
            Probe.USUAL,
            Extras.NONE);

    /** @throws IllegalArgumentException if a number is out of its range */
    public PlanOptions {
        require("kits", kits.orElse(1), 1, Integer.MAX_VALUE);
        require("coresPerComposite", coresPerComposite, 1, MOST_CORES);
        require("edgeBufferM", edgeBufferM, 0, Double.MAX_VALUE);
        require("trunkBufferM", trunkBufferM, 0, Double.MAX_VALUE);
        require("headBufferM", headBufferM, 0, Double.MAX_VALUE);
        require("sparesPerStratum", sparesPerStratum, 0, MOST_SPARES);
    }

    private static void require(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " = " + value + " must be " + least + " to " + most);
        }
    }
}
