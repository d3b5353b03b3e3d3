package loamline.soil;

import java.util.OptionalDouble;
import loamline.reference.NamedRow;
import loamline.units.Factors;

/**
 * How a guideline comes from a test to an amount: a + b − c, never below 0.
 *
 * <p>a is what the plants use, b what is to stay in the soil, c what is there. Woods, 16 July 2015, lecture slides.
 *
 * @param keepPpm b; empty where the guideline only says whether, not how much
 * @param usePerN a for each gram of nitrogen
 * @param useGM2 a that does not depend on nitrogen, g/m²
 * @param noneFromPpm from here on nothing is needed
 */
record NeedRule(OptionalDouble keepPpm, double usePerN, double useGM2, OptionalDouble noneFromPpm) {
    static NeedRule of(NamedRow row) {
        return new NeedRule(
                row.numberOrNone("keep_ppm"),
                row.numberOrNone("use_per_n").orElse(0),
                row.numberOrNone("use_lb_1000ft2").orElse(0) * Factors.G_M2_PER_LB_1000FT2,
                row.numberOrNone("none_from_ppm"));
    }

    /** What the plants use, g/m². */
    double useGM2(double nitrogenGM2) {
        return usePerN * nitrogenGM2 + useGM2;
    }

    boolean isNone(double ppm) {
        return noneFromPpm.isPresent() && ppm >= noneFromPpm.getAsDouble();
    }

    /**
     * The element to add, g/m²; empty where the guideline gives no amount.
     *
     * @param gM2PerPpm grams on a square metre for each ppm, to the depth sampled
     */
    OptionalDouble elementGM2(double ppm, double nitrogenGM2, double gM2PerPpm) {
        if (isNone(ppm)) {
            return OptionalDouble.of(0);
        }
        return keepPpm.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, useGM2(nitrogenGM2) + (keepPpm.getAsDouble() - ppm) * gM2PerPpm));
    }
}
