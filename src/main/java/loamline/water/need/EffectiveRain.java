package loamline.water.need;

import loamline.account.Source;
import loamline.units.Factors;

/** How much of the rain the roots get; the rest runs off, drains or dries on the leaves. */
public enum EffectiveRain {
    /** P (125 − 0.2 P) / 125 up to 250 mm a month, then 125 + 0.1 P. */
    USDA_SCS("usda-scs", "From memory of USDA Soil Conservation Service, monthly effective rain, short form") {
        @Override
        public double ofMonthMm(double rainMm) {
            requireRain(rainMm);
            return rainMm <= 250 ? rainMm * (125 - 0.2 * rainMm) / 125 : 125 + 0.1 * rainMm;
        }
    },
    /** 0.8 P − 25 above 75 mm a month, else 0.6 P − 10, never below 0. */
    FAO("fao-tm3", "From memory of FAO, Irrigation Water Management, Training Manual 3") {
        @Override
        public double ofMonthMm(double rainMm) {
            requireRain(rainMm);
            return Math.max(0, rainMm > 75 ? 0.8 * rainMm - 25 : 0.6 * rainMm - 10);
        }
    };

    private final String id;
    private final String citation;

    EffectiveRain(String id, String citation) {
        this.id = id;
        this.citation = citation;
    }

    public Source source() {
        return new Source(id, citation);
    }

    /** Of the rain of a month, mm, 0 or more; never more than the rain. */
    public abstract double ofMonthMm(double rainMm);

    /**
     * Of the rain of a day, mm: the first tenth of an inch is lost, up to an inch counts in full, from one to two inches
     * two thirds, beyond nothing (Texas A&amp;M AgriLife, TexasET, effective rainfall).
     */
    public static double ofDayMm(double rainMm) {
        requireRain(rainMm);
        double in = rainMm / Factors.MM_PER_IN;
        double counted = Math.max(0, Math.min(in, 1) - 0.1) + 2.0 / 3 * Math.max(0, Math.min(in, 2) - 1);
        return counted * Factors.MM_PER_IN;
    }

    private static void requireRain(double rainMm) {
        if (!(rainMm >= 0 && Double.isFinite(rainMm))) {
            throw new IllegalArgumentException("rainMm = " + rainMm + " must be 0 or more");
        }
    }
}
