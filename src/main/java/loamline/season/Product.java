package loamline.season;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import loamline.season.blend.Material;
import loamline.season.blend.Quantity;

/**
 * A product of a price list.
 *
 * @param percent analysis as the label gives it, per cent of weight; P and K as oxides
 * @param slowNPct share of the nitrogen that is slow to release, per cent; 0 where the label declares none
 * @param form such as granular, liquid, sulfur, gypsum, wetting agent; may be empty
 * @param bagKg net weight of a bag, above 0
 * @param price of a bag, above 0
 * @param saltIndex by weight, sodium nitrate being 100; empty if not told
 * @param densityKgL of a liquid; empty if not told
 * @param labelGM2 the label's own rate, g/m²; empty if not told
 * @param line of the price list
 */
public record Product(
        String name,
        Percent percent,
        double slowNPct,
        String form,
        double bagKg,
        double price,
        OptionalDouble saltIndex,
        OptionalDouble densityKgL,
        OptionalDouble labelGM2,
        int line) {
    /** Fertilizer with no more phosphate counts as free of it: Connecticut PA 12-155, Vermont 10 VSA 1266b, per cent. */
    public static final double PHOSPHATE_FREE_PCT = 0.67;
    /** From this share on nitrogen is called slow: Cornell Cooperative Extension Suffolk County (second-hand), per cent. */
    public static final double SLOW_PCT = 30;
    /** Pure gypsum, CaSO₄·2H₂O, has this much calcium, per cent: 40.078 / 172.17. */
    private static final double GYPSUM_CA_PCT = 100 * 40.078 / 172.17;

    /** Label figures, each 0 to 100, CaCO₃ equivalent to 200. */
    public record Percent(double n, double p2o5, double k2o, double ca, double mg, double s, double fe, double cce) {}

    public boolean isSlow() {
        return slowNPct >= SLOW_PCT;
    }

    public boolean isPhosphateFree() {
        return percent.p2o5() <= PHOSPHATE_FREE_PCT;
    }

    /** Whether it is spread for what a soil or a turf lacks. */
    boolean isAmendment() {
        return !content().isEmpty();
    }

    private boolean isForm(String word) {
        return form.equalsIgnoreCase(word);
    }

    Material material() {
        return new Material(name, bagKg, price, content());
    }

    private Map<Quantity, Double> content() {
        Map<Quantity, Double> content = new EnumMap<>(Quantity.class);
        put(content, Quantity.N, percent.n());
        put(content, Quantity.QUICK_N, percent.n() * (1 - slowNPct / 100));
        put(content, Quantity.P2O5, isPhosphateFree() ? 0 : percent.p2o5());
        put(content, Quantity.K2O, percent.k2o());
        if (percent.cce() > 0) {
            put(content, Quantity.LIME, percent.cce());
            put(content, Quantity.LIME_WEIGHT, 100);
        }
        if (isForm("sulfur")) {
            put(content, Quantity.SULFUR, percent.s());
        }
        if (isForm("gypsum")) {
            put(content, Quantity.GYPSUM, Math.min(100, 100 * percent.ca() / GYPSUM_CA_PCT));
        }
        if (!content.isEmpty()) {
            put(content, Quantity.SALT, saltIndex.orElse(0));
        }
        return content;
    }

    private static void put(Map<Quantity, Double> content, Quantity quantity, double pct) {
        if (pct > 0) {
            content.put(quantity, pct / 100);
        }
    }
}
