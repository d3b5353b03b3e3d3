package loamline.reference;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The classes into which a guideline puts the values of one test.
 *
 * @param guideline its short name
 * @param test what the value must have been made with: an extractant, or the method of pH and EC
 * @param element what is measured, as labs name it
 * @param textures the soils it is for; none means all
 * @param unit the unit of the limits
 * @param step values are rounded to this before they are classed, since classes are printed with gaps between them
 *     (10–20, 21–30); halves go up
 * @param bands in rising order, without gaps in steps
 */
public record SoilRange(
        String guideline,
        String test,
        String element,
        List<String> textures,
        String unit,
        double step,
        List<Band> bands,
        Origin origin) {

    /**
     * A class.
     *
     * @param low least value in it
     * @param high largest value in it; empty for the last
     * @param level 0 for what the guideline aims at, below 0 for less, above 0 for more
     */
    public record Band(String name, double low, OptionalDouble high, int level) {}

    /** @throws IllegalArgumentException if the bands leave a gap or overlap */
    public SoilRange {
        textures = List.copyOf(textures);
        bands = List.copyOf(bands);
        for (int i = 1; i < bands.size(); i++) {
            double end = bands.get(i - 1).high().orElse(Double.NaN);
            if (!(Math.abs(end + step - bands.get(i).low()) < step / 2)) {
                throw new IllegalArgumentException(guideline + " " + test + " " + element + ": “"
                        + bands.get(i).name() + "” begins at " + bands.get(i).low()
                        + ", which leaves a gap or overlaps");
            }
        }
    }

    /** The class of a value in the table's unit, 0 or more. */
    public Band bandOf(double value) {
        double rounded = rounded(value);
        Band found = bands.get(0);
        for (Band band : bands) {
            if (rounded >= band.low() - step / 2) {
                found = band;
            }
        }
        return found;
    }

    private double rounded(double value) {
        BigDecimal unitStep = BigDecimal.valueOf(step);
        return BigDecimal.valueOf(value)
                .divide(unitStep, 0, RoundingMode.HALF_UP)
                .multiply(unitStep)
                .doubleValue();
    }

    /** Whether it is for a soil of this texture. */
    public boolean isFor(String texture) {
        return textures.isEmpty() || textures.contains(texture);
    }
}
