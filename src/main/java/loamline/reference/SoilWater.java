package loamline.reference;

import java.util.List;
import java.util.Optional;
import loamline.account.Source;

/**
 * How a soil under turf holds and takes in water.
 *
 * @param texture name of the class, in small letters
 * @param availableShare water between field capacity and wilting point over depth of soil, 0 to 1
 * @param intakeMmH basic intake rate, mm/h
 * @param accumulationMm depth that may stand on the surface before it runs off, mm, on slopes up to 3, 6, 12 per cent
 *     and steeper
 */
public record SoilWater(
        String texture, double availableShare, double intakeMmH, List<Double> accumulationMm, Source source) {
    private static final double[] SLOPE_LIMITS_PCT = {3, 6, 12};

    private static final List<String> ACCUMULATION =
            List.of("accumulation_0_3_mm", "accumulation_4_6_mm", "accumulation_7_12_mm", "accumulation_over_12_mm");

    public SoilWater {
        accumulationMm = List.copyOf(accumulationMm);
        if (accumulationMm.size() != SLOPE_LIMITS_PCT.length + 1) {
            throw new IllegalArgumentException("accumulationMm has " + accumulationMm.size() + " depths, not 4");
        }
        require("availableShare", availableShare, 1);
        require("intakeMmH", intakeMmH, Double.MAX_VALUE);
    }

    private static void require(String name, double value, double most) {
        if (!(value > 0 && value <= most)) {
            throw new IllegalArgumentException(name + " = " + value + " must be above 0 and at most " + most);
        }
    }

    /** The published rows, in the table's order, finest first. */
    public static List<SoilWater> published() {
        return PublishedTable.rows("soil-water.csv").stream()
                .map(row -> new SoilWater(
                        row.text("texture"),
                        row.number("available_share"),
                        row.number("intake_mm_h"),
                        ACCUMULATION.stream().map(row::number).toList(),
                        row.source()))
                .toList();
    }

    /** The published row of a texture, whatever its case; empty if the table has none of that name. */
    public static Optional<SoilWater> of(String texture) {
        return published().stream()
                .filter(row -> row.texture.equalsIgnoreCase(texture.strip()))
                .findFirst();
    }

    /**
     * Depth that may stand on the surface of a slope, mm. A slope on a limit belongs to the gentler class; the table's
     * gap between whole per cents (3 to 4, 6 to 7) belongs to the steeper.
     *
     * @param slopePct rise over run, per cent, 0 or more
     */
    public double accumulationMm(double slopePct) {
        int steeper = 0;
        while (steeper < SLOPE_LIMITS_PCT.length && slopePct > SLOPE_LIMITS_PCT[steeper]) {
            steeper++;
        }
        return accumulationMm.get(steeper);
    }
}
