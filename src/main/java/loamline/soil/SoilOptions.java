package loamline.soil;

import java.util.Optional;
import loamline.reference.SoilTables;
import loamline.units.Factors;

/**
 * What is decided by a person, not by a laboratory.
 *
 * @param guideline short name of the guideline to rate by; empty for the usual ones
 * @param nitrogenGM2 nitrogen that the turf gets in the season, from which its use of P and K follows; 0 or more
 * @param newLawn whether it is seeded or sodded, so that lime and phosphorus are worked in
 * @param state two letters, for the law on phosphorus; empty if none is to be shown
 * @param tables published tables, with the user's own in them
 */
public record SoilOptions(
        Optional<String> guideline,
        double nitrogenGM2,
        boolean newLawn,
        Optional<String> state,
        Lime lime,
        SoilTables tables) {

    /**
     * Choices about lime.
     *
     * @param targetPh in water, 4 to 8
     * @param material what is spread
     * @param cap name of the rule that limits a dressing, a row of {@code lime-caps.csv}
     * @param toSampledDepth whether rates made for a depth are brought to the depth sampled, which is what lime on the
     *     surface of turf can reach; else they are taken as they are
     */
    public record Lime(double targetPh, LimeMaterial material, String cap, boolean toSampledDepth) {
        public Lime {
            if (!(targetPh >= 4 && targetPh <= 8)) {
                throw new IllegalArgumentException("targetPh must be 4 to 8, not " + targetPh);
            }
        }
    }

    /** A season of 3 lb N on 1,000 ft², pH 6.5, pure lime under Penn State's cap for lawns; common practice, no source. */
    public static final SoilOptions USUAL = new SoilOptions(
            Optional.empty(),
            3 * Factors.G_M2_PER_LB_1000FT2,
            false,
            Optional.empty(),
            new Lime(6.5, LimeMaterial.PURE, "lawn", true),
            SoilTables.published());

    /** @throws IllegalArgumentException if the guideline, the cap or the state is in no table, or nitrogen is below 0 */
    public SoilOptions {
        if (!(nitrogenGM2 >= 0 && Double.isFinite(nitrogenGM2))) {
            throw new IllegalArgumentException("nitrogenGM2 must be 0 or more, not " + nitrogenGM2);
        }
        guideline.filter(name -> tables.guideline(name).isEmpty()).ifPresent(name -> {
            throw new IllegalArgumentException("there is no guideline “" + name + "”: take one of "
                    + String.join(
                            ", ",
                            tables.guidelines().stream().map(g -> g.name()).toList()));
        });
        requireRow(tables, "lime-caps.csv", "cap", lime.cap());
        state.ifPresent(s -> requireRow(tables, "phosphorus-laws.csv", "state", s));
    }

    private static void requireRow(SoilTables tables, String table, String column, String wanted) {
        if (tables.rows(table).stream().noneMatch(row -> row.text(column).equalsIgnoreCase(wanted))) {
            throw new IllegalArgumentException("there is no " + column + " “" + wanted + "”: take one of "
                    + String.join(
                            ", ",
                            tables.rows(table).stream()
                                    .map(row -> row.text(column))
                                    .toList()));
        }
    }

    public SoilOptions withGuideline(String name) {
        return new SoilOptions(Optional.of(name), nitrogenGM2, newLawn, state, lime, tables);
    }

    public SoilOptions withNitrogen(double gM2) {
        return new SoilOptions(guideline, gM2, newLawn, state, lime, tables);
    }

    public SoilOptions with(Lime changed) {
        return new SoilOptions(guideline, nitrogenGM2, newLawn, state, changed, tables);
    }

    public SoilOptions with(SoilTables others) {
        return new SoilOptions(guideline, nitrogenGM2, newLawn, state, lime, others);
    }

    public SoilOptions onNewLawn() {
        return new SoilOptions(guideline, nitrogenGM2, true, state, lime, tables);
    }

    public SoilOptions inState(String letters) {
        return new SoilOptions(guideline, nitrogenGM2, newLawn, Optional.of(letters), lime, tables);
    }
}
