package loamline.soil;

import loamline.units.Factors;

/**
 * How much soil lies on an area to a depth, and what a concentration in it amounts to.
 *
 * <p>Two ways, never mixed: by the soil's own bulk density, or by the acre furrow slice of 2,000,000 lb in 6 2/3 in,
 * which is the density {@link #FURROW_SLICE_G_CM3}. Source: UF/IFAS HS1229 and university teaching notes.
 */
public final class SoilMass {
    /** Dry soil of a furrow slice. */
    public static final double FURROW_SLICE_LB_ACRE = 2_000_000;
    /** Depth of a furrow slice, 6 2/3 in. */
    public static final double FURROW_SLICE_M = 20 / 3.0 * Factors.M_PER_IN;
    /** Square metres of an acre in a kilogram of a pound: {@code lb/acre} to {@code kg/m²}. */
    static final double KG_M2_PER_LB_ACRE = Factors.KG_PER_LB / Factors.M2_PER_ACRE;
    /** Bulk density that the furrow slice stands for, about 1.324 g/cm³. */
    public static final double FURROW_SLICE_G_CM3 = FURROW_SLICE_LB_ACRE * KG_M2_PER_LB_ACRE / FURROW_SLICE_M / 1000;

    private SoilMass() {}

    /**
     * Grams on a square metre for each ppm: bulk density (g/cm³) × depth (m).
     *
     * @param depthM above 0
     * @param bulkDensityGCm3 above 0
     */
    public static double gM2PerPpm(double depthM, double bulkDensityGCm3) {
        if (!(depthM > 0 && bulkDensityGCm3 > 0)) {
            throw new IllegalArgumentException(
                    "depthM and bulkDensityGCm3 must be above 0, not " + depthM + " and " + bulkDensityGCm3);
        }
        return bulkDensityGCm3 * depthM;
    }

    /** Bulk density of a value's soil, g/cm³: its own, or that of the furrow slice. */
    static double densityGCm3(LabValue value) {
        return value.made().bulkDensityGCm3().orElse(FURROW_SLICE_G_CM3);
    }
}
