package loamline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FactorsTest {
    /** Two roundings of a double, relative. */
    private static final double TWO_ULP = Math.ulp(1.0) * 2;

    /**
     * NIST SP 811 (2008), appendix B.8, prints seven digits, bold where exact; units as there, moved to ours by powers
     * of ten and 60. Half a unit of the seventh digit is allowed.
     */
    @ParameterizedTest(name = "1 {1} of {0} is {2} in the stored unit")
    @CsvSource(delimiter = '|', textBlock = """
            LENGTH        | ft            | 0.3048     | foot: 3.048 E-01 m, exact
            LENGTH        | in            | 0.0254     | inch: 2.54 E-02 m, exact
            LENGTH        | yd            | 0.9144     | yard: 9.144 E-01 m, exact
            SMALL_LENGTH  | in            | 25.4       | inch
            SMALL_LENGTH  | ft            | 304.8      | foot
            AREA          | ft²           | 0.09290304 | square foot: 9.290304 E-02 m², exact
            AREA          | yd²           | 0.8361274  | square yard: 8.361274 E-01 m²
            AREA          | ha            | 10000      | hectare: 1.0 E+04 m², exact
            FLOW          | gal/min       | 3.785412   | gallon (US): 3.785412 L
            FLOW          | gal/h         | 0.06309020 | gallon per minute: 6.309020 E-02 L/s
            PRESSURE      | psi           | 6.894757   | psi: 6.894757 kPa
            PRESSURE      | bar           | 100        | bar: 1.0 E+02 kPa, exact
            DEPTH_RATE    | in/h          | 25.4       | inch
            VOLUME_SMALL  | fl oz         | 29.57353   | fluid ounce (US): 2.957353 E+01 mL
            VOLUME_LIQUID | gal           | 3.785412   | gallon (US): 3.785412 L
            VOLUME_LIQUID | fl oz         | 0.02957353 | fluid ounce (US)
            VOLUME_BULK   | yd³           | 0.7645549  | cubic yard: 7.645549 E-01 m³
            VOLUME_BULK   | ft³           | 0.02831685 | cubic foot: 2.831685 E-02 m³
            MASS          | lb            | 0.4535924  | pound (avoirdupois): 4.535924 E-01 kg
            MASS          | oz            | 0.02834952 | ounce (avoirdupois): 2.834952 E-02 kg
            MASS          | ton           | 907.1847   | ton, short: 9.071847 E+02 kg
            AREAL_RATE    | lb/1,000 ft²  | 4.882428   | pound per square foot: 4.882428 kg/m²
            """)
    void unitsHaveTheSizesThatNistPrints(Measure measure, String unit, double printed, String entry) {
        double size = Parsing.parse(measure, "1 " + unit, UnitSystem.US).value().orElseThrow();

        double halfOfTheSeventhDigit = 0.5 * Math.pow(10, Math.floor(Math.log10(printed)) - 6);
        assertThat(size).isCloseTo(printed, within(halfOfTheSeventhDigit));
    }

    /** From the definitions: 3 ft in a yard, 231 in³ in a gallon, 128 fl oz in a gallon, 43,560 ft² in an acre. */
    @Test
    void sizesFollowFromTheFootToTheLastDigits() {
        double inchCm = 2.54;
        assertSame(Factors.M_PER_YD, 3 * Factors.M_PER_FT);
        assertSame(Factors.M2_PER_FT2, Factors.M_PER_FT * Factors.M_PER_FT);
        assertSame(Factors.M2_PER_YD2, 9 * Factors.M2_PER_FT2);
        assertSame(Factors.M2_PER_ACRE, 43_560 * Factors.M2_PER_FT2);
        assertSame(Factors.M3_PER_FT3, Factors.M2_PER_FT2 * Factors.M_PER_FT);
        assertSame(Factors.M3_PER_YD3, 27 * Factors.M3_PER_FT3);
        assertSame(Factors.ML_PER_IN3, inchCm * inchCm * inchCm);
        assertSame(Factors.L_PER_GAL, 231 * Factors.ML_PER_IN3 / 1000);
        assertSame(Factors.ML_PER_FL_OZ, 1000 * Factors.L_PER_GAL / 128);
    }

    /** Derived: a pound is 453.59237 g; 1,000 ft² are 92.90304 m²; an acre is 43.56 times as much. */
    @Test
    void dosesFollowFromPoundsAndFeet() {
        assertSame(dose("1 lb/1000 ft2"), 453.59237 / 92.90304);
        assertSame(dose("43.56 lb/ac"), dose("1 lb/1000 ft2"));
        assertSame(dose("16 oz/1000 ft2"), dose("1 lb/1000 ft2"));
        assertSame(dose("1 kg/100 m2"), 10);
        assertSame(dose("100 kg/ha"), 10);
        assertSame(UnitSystem.US.doseAreaM2(), 92.90304);
    }

    private static double dose(String text) {
        return Parsing.parse(Measure.AREAL_RATE, text, UnitSystem.US).value().orElseThrow();
    }

    private static void assertSame(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(TWO_ULP * expected));
    }
}
