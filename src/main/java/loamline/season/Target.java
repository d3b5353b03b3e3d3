package loamline.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a zone is to become.
 *
 * @param zone its name
 * @param grass empty to take what the yard says
 * @param region whose calendar counts; empty if not told
 * @param use low, medium or high
 * @param nGM2 nitrogen of the year, g/m², if it is decided
 * @param seed empty if nothing is sown
 * @param topdressMm depth of compost, mm; 0 for none
 * @param keeping clippings, age, shade
 * @param compost what is known of the compost
 * @param line of the file
 */
public record Target(
        String zone,
        String grass,
        String region,
        String use,
        OptionalDouble nGM2,
        Seed seed,
        double topdressMm,
        Keeping keeping,
        Compost compost,
        int line) {
    /**
     * Sowing.
     *
     * @param mix parts by weight; empty for the zone's own grass
     * @param bareShare of the ground; 1 for a new lawn; empty if nothing is sown
     * @param purityPct of the tag; empty if not told
     * @param germinationPct of the tag; empty if not told
     */
    public record Seed(
            List<Part> mix, OptionalDouble bareShare, OptionalDouble purityPct, OptionalDouble germinationPct) {
        public static final Seed NONE =
                new Seed(List.of(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

        public Seed {
            mix = List.copyOf(mix);
        }
    }

    /** A grass and its share of the weight, per cent. */
    public record Part(String grass, double pct) {}

    /**
     * How the lawn is kept.
     *
     * @param clippingsStay whether they are left lying
     * @param ageYears empty if not told
     * @param shaded whether it stands in shade; empty to take what the sun study says
     * @param wettingAgent name of the product to use; empty for none
     */
    public record Keeping(
            boolean clippingsStay,
            OptionalDouble ageYears,
            Optional<Boolean> shaded,
            boolean core,
            String wettingAgent) {
        public static final Keeping USUAL = new Keeping(false, OptionalDouble.empty(), Optional.empty(), false, "");
    }

    /** Analysis of a compost: elemental P of the dry weight, per cent; dry share, per cent; weight, kg/m³. */
    public record Compost(OptionalDouble pPct, OptionalDouble dryPct, OptionalDouble kgM3) {
        public static final Compost UNKNOWN =
                new Compost(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** A zone of which nothing is said. */
    public static Target of(String zone) {
        return new Target(
                zone, "", "", "medium", OptionalDouble.empty(), Seed.NONE, 0, Keeping.USUAL, Compost.UNKNOWN, 0);
    }
}
