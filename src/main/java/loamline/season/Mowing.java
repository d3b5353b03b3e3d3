package loamline.season;

import java.util.List;
import java.util.Optional;
import loamline.reference.NamedRow;
import loamline.reference.Origin;
import loamline.reference.TurfTables;
import loamline.reference.TurfTables.Grass;
import loamline.units.Factors;

/**
 * How high a zone's grass is mown: the published range of its region, else of the first region that has one.
 *
 * @param lowM least height to set the mower to, m
 * @param highM greatest, m
 * @param shaded whether it is left longer for shade
 * @param region where the figures are from
 * @param words what the source adds; may be empty
 */
public record Mowing(double lowM, double highM, boolean shaded, String region, String words, Origin origin) {
    /** A cut takes no more than a third of what stands, so it is due at 3/2 of the height set. */
    private static final double STANDING_PER_SET = 1.5;
    /** In shade turf is left longer by so much: Purdue University, AY-8. */
    private static final double SHADE_LOW_M = 0.5 * Factors.M_PER_IN;

    private static final double SHADE_HIGH_M = 1.0 * Factors.M_PER_IN;

    /** Empty if no height is held for the zone's grass. */
    public static Optional<Mowing> of(ZoneSeason zone, SeasonInputs inputs) {
        SeasonOptions options = inputs.options();
        boolean shaded = inputs.shade(zone.target(), zone.name()).isShaded();
        return zone.grass()
                .flatMap(grass -> of(grass, NitrogenNeed.region(zone.target(), options), options.tables()))
                .map(mowing -> shaded ? mowing.inShade() : mowing);
    }

    static Optional<Mowing> of(Grass grass, String region, TurfTables tables) {
        List<NamedRow> there = tables.rows("turf-mowing.csv", grass, region);
        return there.stream()
                .findFirst()
                .or(() -> tables.rows("turf-mowing.csv").stream()
                        .filter(row -> row.text("grass").equalsIgnoreCase(grass.name()))
                        .findFirst())
                .map(row -> new Mowing(
                        row.number("low_in") * Factors.M_PER_IN,
                        row.number("high_in") * Factors.M_PER_IN,
                        false,
                        row.text("region"),
                        row.text("words"),
                        tables.origin(row)));
    }

    Mowing inShade() {
        return new Mowing(lowM + SHADE_LOW_M, highM + SHADE_HIGH_M, true, region, words, origin);
    }

    /** Height at which grass is cut, that the mower is set to a height, m. */
    public static double standingM(double setM) {
        return STANDING_PER_SET * setM;
    }
}
