package loamline.soil;

/** Sodium in the extract of a saturated paste. */
public final class Salinity {
    private Salinity() {}

    /** Sodium adsorption ratio: Na / √((Ca + Mg) / 2), all meq/L, Ca + Mg above 0. USDA Handbook 60, 1954. */
    public static double sar(double sodium, double calcium, double magnesium) {
        if (!(sodium >= 0 && calcium + magnesium > 0)) {
            throw new IllegalArgumentException("no SAR of Na " + sodium + ", Ca " + calcium + ", Mg " + magnesium);
        }
        return sodium / Math.sqrt((calcium + magnesium) / 2);
    }

    /**
     * Exchangeable sodium, per cent: 100 x / (1 + x), x = −0.0126 + 0.01475 SAR; 0 where x is below 0. From memory of USDA
     * Handbook 60, p. 26.
     */
    public static double espPct(double sar) {
        double x = Math.max(0, -0.0126 + 0.01475 * sar);
        return 100 * x / (1 + x);
    }
}
