package loamline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormattingTest {

    /** Digits: common practice, no source. The stored values are written with their units, and read by the parser. */
    @ParameterizedTest(name = "{1} is shown as {2} and {3}")
    @CsvSource(delimiter = '|', textBlock = """
            LENGTH        | 12.5 ft         | 12.5 ft            | 3.81 m
            LENGTH        | 9.96 ft         | 10.0 ft            | 3.04 m
            LENGTH        | 9.996 m         | 32.8 ft            | 10.0 m
            LENGTH        | 99.96 ft        | 100 ft             | 30.5 m
            LENGTH        | 612 ft          | 612 ft             | 187 m
            LENGTH        | 12.45 ft        | 12.5 ft            | 3.79 m
            LENGTH        | -12.45 ft       | -12.5 ft           | -3.79 m
            LENGTH        | -0.01 ft        | 0.0 ft             | 0.00 m
            SMALL_LENGTH  | 3/4 in          | 0.75 in            | 19.1 mm
            AREA          | 7410.4 ft²      | 7,410 ft²          | 688 m²
            AREA          | 100 ac          | 4,356,000 ft²      | 404,686 m²
            ANGLE         | 89.6°           | 90°                | 90°
            FLOW          | 3 gpm           | 3.00 gal/min       | 11.4 L/min
            PRESSURE      | 45 psi          | 45 psi             | 310 kPa
            DEPTH_RATE    | 12.7 mm/h       | 0.50 in/h          | 12.7 mm/h
            VOLUME_SMALL  | 25.4 ml         | 25 ml              | 25 ml
            VOLUME_LIQUID | 1234 gal        | 1,234 gal          | 4,671 L
            VOLUME_BULK   | 2.5 yd³         | 2.50 yd³           | 1.91 m³
            MASS          | 50 lb           | 50.0 lb            | 22.7 kg
            AREAL_RATE    | 63 lb/1000 ft2  | 63 lb/1,000 ft²    | 30.8 kg/100 m²
            AREAL_RATE    | 0.75 lb/1000 ft2 | 0.75 lb/1,000 ft² | 0.37 kg/100 m²
            PERCENT       | 35.4 %          | 35 %               | 35 %
            PERCENT       | 3.54 %          | 3.5 %              | 3.5 %
            TIME_MINUTES  | 1 h 30 min      | 90 min             | 90 min
            TIME_HOURS    | 4 h 15 min      | 4.3 h              | 4.3 h
            """)
    void showsTheDigitsThatSuitTheMeasure(Measure measure, String value, String us, String metric) {
        double stored = stored(measure, value);

        assertThat(Formatting.format(measure, stored, UnitSystem.US).text()).isEqualTo(us);
        assertThat(Formatting.format(measure, stored, UnitSystem.METRIC).text()).isEqualTo(metric);
    }

    @Test
    void keepsNumberAndUnitApart() {
        assertThat(Formatting.format(Measure.AREA, stored(Measure.AREA, "7410 ft²"), UnitSystem.US))
                .isEqualTo(new Formatted("7,410", "ft²"));
    }

    @Test
    void showsAsManyDecimalsAsAsked() {
        double stored = stored(Measure.LENGTH, "1234.5 ft");

        assertThat(Formatting.format(Measure.LENGTH, stored, UnitSystem.US, 3).text())
                .isEqualTo("1,234.500 ft");
        assertThat(Formatting.format(Measure.LENGTH, stored, UnitSystem.US, 0).text())
                .isEqualTo("1,235 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Formatting.format(Measure.LENGTH, stored, UnitSystem.US, -1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.5 ft", "7410 ft", "0.125 ft", "12.45 ft", "-3 ft", "0 ft", "1000000000 ft"})
    void offersForEditingWhatWasTyped(String typed) {
        assertThat(Formatting.editable(Measure.LENGTH, stored(Measure.LENGTH, typed), UnitSystem.US)
                        .text())
                .isEqualTo(typed);
    }

    /**
     * The first two from Particle Data Group, Review of Particle Physics, Introduction, section 5.3; the others by its
     * rule. In minutes, where the stored number is the shown one.
     */
    @ParameterizedTest(name = "{0} with standard error {1} is shown as {2}")
    @CsvSource(delimiter = '|', textBlock = """
            0.827     | 0.119    | 0.83 ± 0.12
            0.827     | 0.367    | 0.8 ± 0.4
            7412.3    | 88       | 7,410 ± 90
            7412.3    | 354      | 7,410 ± 350
            7412.3    | 354.99   | 7,410 ± 350
            7412.3    | 355      | 7,400 ± 400
            7412.3    | 949      | 7,400 ± 900
            7412.3    | 950      | 7,400 ± 1,000
            7412.3    | 999.9    | 7,400 ± 1,000
            7412.3    | 1000     | 7,400 ± 1,000
            1.827     | 0.967    | 1.8 ± 1.0
            12.3456   | 0.01     | 12.346 ± 0.010
            -0.4      | 10       | 0 ± 10
            3         | 88       | 0 ± 90
            0.001     | 0.37     | 0.0 ± 0.4
            12.3456   | 0        | 12 ± 0
            12.3456   | 0.0000004 | 12 ± 0
            12.3456   | 0.00035499999 | 12.34560 ± 0.00035
            12.3456   | 0.000001 | 12.345600 ± 0.000001
            """)
    void roundsAValueToWhatItsErrorLeaves(double value, double error, String shown) {
        assertThat(Formatting.withStandardError(Measure.TIME_MINUTES, value, error, UnitSystem.US)
                        .number())
                .isEqualTo(shown);
    }

    @Test
    void roundsValueAndErrorInTheUnitShown() {
        double area = stored(Measure.AREA, "7412.3 ft²");
        double error = stored(Measure.AREA, "88 ft²");

        assertThat(Formatting.withStandardError(Measure.AREA, area, error, UnitSystem.US))
                .isEqualTo(new Formatted("7,410 ± 90", "ft²"));
        assertThat(Formatting.withStandardError(Measure.AREA, area, error, UnitSystem.METRIC))
                .isEqualTo(new Formatted("689 ± 8", "m²"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void takesFiniteNumbersOnly(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Formatting.format(Measure.LENGTH, value, UnitSystem.US))
                .withMessageContaining(Double.toString(value));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Formatting.editable(Measure.LENGTH, value, UnitSystem.US));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Formatting.withStandardError(Measure.LENGTH, 1, value, UnitSystem.US));
    }

    @Test
    void takesNoNegativeError() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Formatting.withStandardError(Measure.LENGTH, 1, -0.1, UnitSystem.US))
                .withMessageContaining("-0.1");
    }

    @Test
    void namesTheUnitsOfAColumn() {
        assertThat(Measure.AREAL_RATE.symbol(UnitSystem.US)).isEqualTo("lb/" + UnitSystem.US.doseArea());
        assertThat(Measure.AREAL_RATE.symbol(UnitSystem.METRIC)).isEqualTo("kg/" + UnitSystem.METRIC.doseArea());
        assertThat(Measure.LENGTH.toShown(3.81, UnitSystem.US)).isEqualTo(12.5);
        assertThat(Measure.LENGTH.toStored(12.5, UnitSystem.US)).isEqualTo(3.81);
    }

    private static double stored(Measure measure, String text) {
        return Parsing.parse(measure, text, UnitSystem.US).value().orElseThrow();
    }
}
