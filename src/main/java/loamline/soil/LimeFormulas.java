package loamline.soil;

/**
 * Lime requirements that are equations, in the units of their publications. pH is in water; none is below 0.
 *
 * <p>Each throws {@link IllegalArgumentException} where its equation has no meaning, and says where that is.
 */
public final class LimeFormulas {
    private static final double LB_ACRE_PER_MEQ = 1000;

    private LimeFormulas() {}

    /**
     * Exchangeable acidity by the Mehlich buffer, meq/100 cm³: 4 · (6.6 − buffer pH). North Carolina Department of
     * Agriculture, buffer table.
     */
    public static double mehlichAcidity(double bufferPh) {
        return Math.max(0, 4 * (6.6 - bufferPh));
    }

    /**
     * North Carolina, short tons of CaCO₃ an acre 8 in deep: Ac · (target − pH) / (6.6 − pH) − credit. North Carolina
     * Department of Agriculture, buffer table.
     *
     * @param ph below 6.6, where the equation ends; 0 at or above the target
     * @param acidity meq/100 cm³
     * @param creditTonAcre left from earlier lime, ton/acre
     */
    public static double northCarolinaTonAcre(double ph, double acidity, double targetPh, double creditTonAcre) {
        if (ph >= targetPh) {
            return 0;
        }
        require(ph < 6.6, "the North Carolina equation ends at pH 6.6");
        return Math.max(0, acidity * (targetPh - ph) / (6.6 - ph) - creditTonAcre);
    }

    /**
     * Penn State, field formula, lb CaCO₃ an acre about 7 in deep. Penn State Agronomy Guide, Part 1 Section 2.
     *
     * <p>To 7.0: 1000 · acidity. To 6.5: 840 · acidity from 4.0 on, else 2000 if the pH is below 6.5. The guide leaves
     * acidity of exactly 4.0 open; here it belongs to the upper rule.
     *
     * @param targetPh 7.0 or 6.5
     */
    public static double pennStateLbAcre(double acidity, double ph, double targetPh) {
        require(targetPh == 7.0 || targetPh == 6.5, "the Penn State formula is for targets 7.0 and 6.5");
        if (ph >= targetPh) {
            return 0;
        }
        if (targetPh == 7.0) {
            return LB_ACRE_PER_MEQ * acidity;
        }
        return acidity >= 4.0 ? 840 * acidity : 2000;
    }

    /** Lowest pH at which the relation of Adams and Evans gives a share of 1 or less. */
    static final double ADAMS_EVANS_LEAST_PH = 7.79 - 5.55 + 2.27;

    /**
     * Share of the exchange that is acid, from pH = 7.79 − 5.55 H + 2.27 H² (smaller root). From memory of Adams & Evans
     * 1962, SSSA Proceedings 26:355-357.
     *
     * @param ph 4.51 to 7.79
     */
    public static double adamsEvansAcidShare(double ph) {
        require(ph >= ADAMS_EVANS_LEAST_PH && ph <= 7.79, "the Adams-Evans relation holds from pH 4.51 to 7.79");
        return (5.55 - Math.sqrt(5.55 * 5.55 - 4 * 2.27 * (7.79 - ph))) / (2 * 2.27);
    }

    /**
     * Adams-Evans, lb CaCO₃ for 2,000,000 lb of soil: 8000 · (8 − buffer pH) / H₁ · (H₁ − H₂) · 1.5. As given by Huluka
     * 2005, Commun. Soil Sci. Plant Anal.
     */
    public static double adamsEvansLbAcre(double ph, double bufferPh, double targetPh) {
        if (ph >= targetPh || bufferPh >= 8) {
            return 0;
        }
        double now = adamsEvansAcidShare(ph);
        double then = adamsEvansAcidShare(targetPh);
        return 8000 * (8 - bufferPh) / now * (now - then) * 1.5;
    }

    /** Neutralisable acidity by the Woodruff buffer, meq/100 g: 10 · (7.0 − buffer pH). From memory of Woodruff 1948. */
    public static double woodruffAcidity(double bufferPh) {
        return Math.max(0, 10 * (7.0 - bufferPh));
    }

    /**
     * Lime buffer capacity, lb CaCO₃ an acre of 2,000,000 lb: capacity · (target − pH) · 2. University of Georgia C874;
     * SERA-IEG-6 fact sheet 3.
     *
     * @param capacity mg CaCO₃ that raise 1 kg of soil by 1 unit, at equilibrium
     */
    public static double georgiaLbAcre(double capacity, double ph, double targetPh) {
        return Math.max(0, capacity * (targetPh - ph) * SoilMass.FURROW_SLICE_LB_ACRE / 1e6);
    }

    /** CaCO₃ that neutralises acidity, lb an acre of 2,000,000 lb: 1000 for each meq/100 g. */
    public static double fullLbAcre(double acidity) {
        return LB_ACRE_PER_MEQ * acidity;
    }

    /**
     * Effective neutralizing material that neutralises acidity, lb an acre: 400 for each meq/100 g, since a ton of pure
     * lime that all works counts as 800. From memory of Missouri practice.
     */
    public static double enmLbAcre(double acidity) {
        return fullLbAcre(acidity) * 800 / 2000;
    }

    private static void require(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
