package loamline.soil;

import java.util.List;

/**
 * Gypsum for sodic soil.
 *
 * @param kgM2 pure gypsum
 * @param espPct share of the exchange that sodium holds, per cent
 * @param targetEspPct what it is brought to
 * @param cautions what to know before spreading
 */
public record Gypsum(double kgM2, double espPct, double targetEspPct, List<String> cautions) {
    /** From this share on a soil is sodic; sources print 15 and above 15, and 15 itself is taken as sodic. */
    public static final double SODIC_ESP_PCT = 15;
    /** Safety factor of Oster, Shainberg & Abrol, who give 1.1 to 1.3. */
    public static final double OSTER_FACTOR = 1.1;
    /** Weight of CaSO₄·2H₂O that carries one charge, g. */
    private static final double EQUIVALENT_G = 86.09;

    public Gypsum {
        cautions = List.copyOf(cautions);
    }

    /** Exchangeable sodium to replace, meq/100 g: CEC · (ESP − target) / 100. Ali, chapter 8. */
    public static double sodiumToReplaceMeq(double cec, double espPct, double targetEspPct) {
        return Math.max(0, cec * (espPct - targetEspPct) / 100);
    }

    /** By the rule of 3.85 t on a hectare 30 cm deep for each meq/100 g, t/ha. Ali, section 8.7. */
    public static double ruleTHa(double sodiumMeq, double depthM) {
        return 3.85 * sodiumMeq * depthM / 0.30;
    }

    /** By stoichiometry, lb an acre of 2,000,000 lb: 1 meq of sodium against 1 meq of gypsum. */
    public static double theoryLbAcre(double sodiumMeq) {
        return sodiumMeq * EQUIVALENT_G / 1e5 * SoilMass.FURROW_SLICE_LB_ACRE;
    }

    /**
     * 8.6 · F · depth · density · Na, t/ha of pure gypsum. Oster, Shainberg & Abrol 1999, as given by a North Dakota State
     * University soils page, with Na = CEC · (ESP − target) and a purity of 100 %.
     *
     * @param factor F, 1.1 to 1.3
     */
    public static double osterTHa(double factor, double depthM, double densityGCm3, double sodiumMeq) {
        return 8.6 * factor * depthM * densityGCm3 * sodiumMeq;
    }
}
