package loamline.units;

/**
 * Sizes of the US customary units, named {@code <stored unit>_PER_<customary unit>}.
 *
 * <p>Each is exact by definition (the {@code double} is the nearest one, or within 2 ulp where it is a product): the
 * international foot and pound of 1959, the gallon of 231 cubic inches, and standard gravity 9.80665 m/s². Sources: NIST
 * Special Publication 811 (2008), appendix B.8; NIST Handbook 44, appendix C. The acre is 43,560 international square
 * feet, since the US survey foot was retired at the end of 2022 (85 FR 62698, 5 October 2020); the older 4046.873 m² of
 * SP 811 is 4 parts in a million larger.
 */
public final class Factors {
    /** International foot. */
    public static final double M_PER_FT = 0.3048;
    /** Inch, a twelfth of a foot. */
    public static final double M_PER_IN = 0.0254;
    /** Inch. */
    public static final double MM_PER_IN = 25.4;
    /** Yard, three feet. */
    public static final double M_PER_YD = 0.9144;
    /** Square foot. */
    public static final double M2_PER_FT2 = 0.09290304;
    /** Square yard. */
    public static final double M2_PER_YD2 = 0.83612736;
    /** Acre, 43,560 ft². */
    public static final double M2_PER_ACRE = 4046.8564224;
    /** Cubic foot. */
    public static final double M3_PER_FT3 = 0.028316846592;
    /** Cubic yard. */
    public static final double M3_PER_YD3 = 0.764554857984;
    /** US liquid gallon, 231 in³. */
    public static final double L_PER_GAL = 3.785411784;
    /** US fluid ounce, a 128th of a gallon. */
    public static final double ML_PER_FL_OZ = 29.5735295625;
    /** Cubic inch. */
    public static final double ML_PER_IN3 = 16.387064;
    /** Avoirdupois pound. */
    public static final double KG_PER_LB = 0.45359237;
    /** Avoirdupois ounce, a sixteenth of a pound. */
    public static final double KG_PER_OZ = KG_PER_LB / 16;
    /** Pound-force per square inch: a pound under standard gravity on 0.00064516 m². */
    public static final double KPA_PER_PSI = KG_PER_LB * 9.80665 / 0.64516;
    /** Pound on 1,000 square feet. */
    public static final double G_M2_PER_LB_1000FT2 = KG_PER_LB / M2_PER_FT2;

    private Factors() {}
}
