package loamline.sampling;

import java.util.OptionalInt;

/**
 * What the person decides about a core plan.
 *
 * @param kits how many lab samples may be sent; empty to follow the zones' own bags, or else two
 * @param coresPerComposite cores in each composite
 * @param edgeBufferM how far cores stay from paving, fences, beds and all other borders of the turf, m
 * @param trunkBufferM how far from tree trunks, m
 * @param headBufferM how far from sprinkler heads, m
 * @param place where in its stratum a core goes
 * @param sparesPerStratum 0 to 2
 * @param seed the same seed gives the same plan
 * @param walk one round a bag, or one for all bags
 * @param keep leave the yard's own cores where they are and plan the walk only
 * @param probe the tool
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
        boolean keep,
        Probe probe) {

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
            false,
            Probe.USUAL);

    /** The same options, but the yard's own cores stay where they are. */
    public PlanOptions kept() {
        return new PlanOptions(
                kits,
                coresPerComposite,
                edgeBufferM,
                trunkBufferM,
                headBufferM,
                place,
                sparesPerStratum,
                seed,
                walk,
                true,
                probe);
    }
}
