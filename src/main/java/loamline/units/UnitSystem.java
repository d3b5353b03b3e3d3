package loamline.units;

/** Which units are shown, and what a bare number means. What is written with a unit is understood in either. */
public enum UnitSystem {
    /** US customary: feet, gallons, pounds; doses per 1,000 ft². */
    US("1,000 ft²", 1000 * Factors.M2_PER_FT2),
    /** Metric: metres, litres, kilograms; doses per 100 m². */
    METRIC("100 m²", 100);

    private final String doseArea;
    private final double doseAreaM2;

    UnitSystem(String doseArea, double doseAreaM2) {
        this.doseArea = doseArea;
        this.doseAreaM2 = doseAreaM2;
    }

    /** The area that doses and prices are told for, as written: {@code 1,000 ft²} or {@code 100 m²}. */
    public String doseArea() {
        return doseArea;
    }

    /** The same area in m²: 92.90304 or 100. */
    public double doseAreaM2() {
        return doseAreaM2;
    }
}
