package loamline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import loamline.units.ParseResult.Reason;
import loamline.units.ParseResult.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ParsingTest {
    /** A few roundings of a double, relative. */
    private static final double ROUNDING = 1e-15;

    /** Expected values are products of the exact sizes in {@link Factors}, by hand. */
    @ParameterizedTest(name = "{1} as {0} is {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            LENGTH        | 12.5 ft           | 3.81
            LENGTH        | 12'6"             | 3.81
            LENGTH        | 12' 6             | 3.81
            LENGTH        | 12'-6"            | 3.81
            LENGTH        | 12′ 6″            | 3.81
            LENGTH        | 12’6”             | 3.81
            LENGTH        | 12'6''            | 3.81
            LENGTH        | 12 ft 6 in        | 3.81
            LENGTH        | 12ft6in           | 3.81
            LENGTH        | 12 ft 6           | 3.81
            LENGTH        | 12 ft., 6 in.     | 3.81
            LENGTH        | 12 FEET 6 Inches  | 3.81
            LENGTH        | 12 1/2 ft         | 3.81
            LENGTH        | 4 yd 6 in         | refused
            LENGTH        | 4 yd 1 ft 6 in    | 4.1148
            LENGTH        | 6 1/2"            | 0.1651
            LENGTH        | 3ft               | 0.9144
            LENGTH        | 3.8m              | 3.8
            LENGTH        | 0.1m              | 0.1
            LENGTH        | 3 m 20            | 3.2
            LENGTH        | 380 cm            | 3.8
            LENGTH        | 12,5 m            | 12.5
            LENGTH        | 1,000 ft          | 304.8
            LENGTH        | -12 ft 6 in       | -3.81
            LENGTH        | − 3 m             | -3
            LENGTH        | +3 m              | 3
            SMALL_LENGTH  | 1/2 in            | 12.7
            SMALL_LENGTH  | 3/4 in            | 19.05
            SMALL_LENGTH  | ¾"                | 19.05
            SMALL_LENGTH  | 1 1/2 in          | 38.1
            SMALL_LENGTH  | 1-1/2 in          | 38.1
            SMALL_LENGTH  | 1½ in             | 38.1
            SMALL_LENGTH  | 1 3⁄4 in          | 44.45
            SMALL_LENGTH  | 2 cm              | 20
            AREA          | 7,410 ft²         | 688.4115264
            AREA          | 7410 sq ft        | 688.4115264
            AREA          | 7 410 sq. ft.     | 688.4115264
            AREA          | 7410 ft2          | 688.4115264
            AREA          | 7410 ft^2         | 688.4115264
            AREA          | 7410 square feet  | 688.4115264
            AREA          | 1.2 ac            | 4856.22770688
            AREA          | 1 acre            | 4046.8564224
            AREA          | 0.5 ha            | 5000
            ANGLE         | 90°               | 90
            ANGLE         | 90 deg            | 90
            ANGLE         | 90 º              | 90
            FLOW          | 3 gal/min         | 11.356235352
            FLOW          | 3 gpm             | 11.356235352
            FLOW          | 3 gal per minute  | 11.356235352
            FLOW          | 11.4 L/min        | 11.4
            FLOW          | 0.6 m³/h          | 10
            PRESSURE      | 310 kPa           | 310
            PRESSURE      | 3.1 bar           | 310
            DEPTH_RATE    | 0.5 in/h          | 12.7
            DEPTH_RATE    | 12.7 mm / hr      | 12.7
            VOLUME_SMALL  | 0.5 L             | 500
            MASS          | 5 lb 4 oz         | 2.3813599425
            MASS          | 2 tons            | 1814.36948
            AREAL_RATE    | 5 g/m²            | 5
            AREAL_RATE    | 0.5 kg/100 m²     | 5
            AREAL_RATE    | 92.90304 lb per 1,000 sq. ft. | 453.59237
            PERCENT       | 35 %              | 0.35
            PERCENT       | 35%               | 0.35
            TIME_MINUTES  | 10min             | 10
            TIME_MINUTES  | 1 h 30            | 90
            TIME_MINUTES  | 90 s              | 1.5
            TIME_HOURS    | 4                 | 4
            TIME_HOURS    | 4 h 30 min        | 4.5
            TIME_HOURS    | 90 min            | 1.5
            """)
    void understandsWhatPeopleType(Measure measure, String text, String stored) {
        ParseResult result = Parsing.parse(measure, text, UnitSystem.US);

        if (stored.equals("refused")) {
            assertThat(result).isInstanceOf(Refused.class);
        } else {
            double expected = Double.parseDouble(stored);
            assertThat(result.value().orElseThrow()).isCloseTo(expected, within(ROUNDING * Math.abs(expected)));
        }
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            12            | 12
            12.           | 12
            .5            | 0.5
            ,5            | 0.5
            1.250         | 1.25
            1,250         | 1250
            12,50         | 12.5
            0,125         | 0.125
            1234,567      | 1234.567
            1,234.5       | 1234.5
            1.234,5       | 1234.5
            1 234,5       | 1234.5
            1 234.5       | 1234.5
            1,234,567     | 1234567
            1.234.567     | 1234567
            1 234 567     | 1234567
            1.234.567,8   | 1234567.8
            007           | 7
            2 100/200     | 2.5
            """)
    void readsPointsAndCommasByOneRule(String text, double value) {
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(Parsing.parse(Measure.TIME_MINUTES, text, system).value())
                    .hasValue(value);
        }
    }

    @ParameterizedTest(name = "“{1}” is refused: {2} at {3}, “{4}”")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            LENGTH     | ``             | EMPTY          | 0 | ``
            LENGTH     | `   `          | EMPTY          | 0 | ``
            LENGTH     | -              | NUMBER_MISSING | 1 | ``
            LENGTH     | --3 ft         | NUMBER_MISSING | 1 | ``
            LENGTH     | ft             | NUMBER_MISSING | 0 | ``
            LENGTH     | NaN            | NUMBER_MISSING | 0 | ``
            LENGTH     | Infinity ft    | NUMBER_MISSING | 0 | ``
            LENGTH     | 12 ft,         | NUMBER_MISSING | 6 | ``
            LENGTH     | 12 ft - -6 in  | NUMBER_MISSING | 8 | ``
            LENGTH     | `  1,00,0 ft`  | NOT_A_NUMBER   | 2 | 1,00,0
            LENGTH     | 1.2.3 ft       | NOT_A_NUMBER   | 0 | 1.2.3
            LENGTH     | 1,234,5 ft     | NOT_A_NUMBER   | 0 | 1,234,5
            LENGTH     | 0 500 ft       | NOT_A_NUMBER   | 0 | 0 500
            LENGTH     | 1/0 ft         | NOT_A_NUMBER   | 0 | 1/0
            LENGTH     | 12 ft 1/0 in   | NOT_A_NUMBER   | 6 | 1/0
            LENGTH     | 12 fx          | NOT_A_UNIT     | 3 | fx
            LENGTH     | `12   fx  `    | NOT_A_UNIT     | 5 | fx
            LENGTH     | 1½ fx          | NOT_A_UNIT     | 3 | fx
            LENGTH     | 1e3 ft         | NOT_A_UNIT     | 1 | e3 ft
            LENGTH     | 12 ft²         | NOT_A_UNIT     | 3 | ft²
            LENGTH     | 12 ft/min      | NOT_A_UNIT     | 3 | ft/min
            LENGTH     | 12 gal         | NOT_A_UNIT     | 3 | gal
            LENGTH     | 12 6 in        | NOT_A_UNIT     | 3 | 6 in
            LENGTH     | 3–4 ft         | NOT_A_UNIT     | 1 | –4 ft
            LENGTH     | 12 ft2         | LEFT_OVER      | 5 | 2
            LENGTH     | 12 ft 6 cm     | LEFT_OVER      | 6 | 6 cm
            LENGTH     | 12 in 6        | LEFT_OVER      | 6 | 6
            LENGTH     | 6 in 12 ft     | LEFT_OVER      | 5 | 12 ft
            LENGTH     | 12 ft 14 in    | PART_TOO_LARGE | 6 | 14 in
            AREAL_RATE | 5 lb           | NOT_A_UNIT     | 2 | lb
            AREAL_RATE | 5 lb/M         | NOT_A_UNIT     | 2 | lb/M
            MASS       | 5 lb/1000 ft2  | NOT_A_UNIT     | 2 | lb/1000 ft2
            PRESSURE   | 3 psi 4        | LEFT_OVER      | 6 | 4
            """)
    void saysWhatIsTheMatterAndWhere(Measure measure, String text, Reason reason, int position, String part) {
        assertThat(Parsing.parse(measure, text, UnitSystem.US)).isEqualTo(new Refused(reason, position, part, measure));
    }

    @Test
    void refusesLongTextsUnread() {
        String longest = "1".repeat(Parsing.MAX_CHARS);
        assertThat(Parsing.parse(Measure.LENGTH, longest, UnitSystem.US).value())
                .isPresent();
        assertThat(Parsing.parse(Measure.LENGTH, longest + "1", UnitSystem.US))
                .isEqualTo(new Refused(Reason.TOO_LONG, Parsing.MAX_CHARS, "1", Measure.LENGTH));
    }

    @Test
    void tellsThePersonInTwoSentences() {
        assertThat(message("12 fx"))
                .isEqualTo("“fx” at character 4 is not a unit that fits."
                        + " Write a length such as 12.5 ft, 12 ft 6 in or 3.8 m.");
        assertThat(message("-"))
                .isEqualTo("A number is missing at character 2."
                        + " Write a length such as 12.5 ft, 12 ft 6 in or 3.8 m.");
        assertThat(message(" ")).isEqualTo("Nothing is written. Write a length such as 12.5 ft, 12 ft 6 in or 3.8 m.");
    }

    @Test
    void takesABareNumberInTheUnitShown() {
        assertThat(Parsing.parse(Measure.LENGTH, "10", UnitSystem.US).value()).hasValue(3.048);
        assertThat(Parsing.parse(Measure.LENGTH, "10", UnitSystem.METRIC).value())
                .hasValue(10);
        assertThat(Parsing.parse(Measure.SMALL_LENGTH, "1/2", UnitSystem.US).value())
                .hasValue(12.7);
        assertThat(Parsing.parse(Measure.AREAL_RATE, "1", UnitSystem.METRIC).value())
                .hasValue(10);
    }

    @ParameterizedTest
    @EnumSource
    void acceptsEveryExampleItOffers(Measure measure) {
        for (String example : measure.examples().split(", | or ", -1)) {
            assertThat(Parsing.parse(measure, example, UnitSystem.US).value())
                    .as(example)
                    .isPresent();
        }
    }

    @ParameterizedTest
    @EnumSource
    void readsEverySpellingAsItsUnitHoweverItIsSet(Measure measure) {
        for (Unit unit : UnitTable.of(measure).units()) {
            for (String spelling : unit.spellings()) {
                for (String set : new String[] {
                    "3 " + spelling,
                    "3" + spelling.replace(" ", ""),
                    "3\u00a0" + spelling.toUpperCase(Locale.ROOT).replace(" ", "\u2009"),
                    "3 "
                            + spelling.replace("/", " per ")
                                    .replaceAll("(?<=[a-z])2", "²")
                                    .replace("1000", "1,000"),
                }) {
                    assertThat(Parsing.parse(measure, set, UnitSystem.US).value())
                            .as(set)
                            .hasValue(3 * unit.size());
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0", "-0 ft", "−0' 0\""})
    void neverReturnsANegativeZero(String text) {
        assertThat(Parsing.parse(Measure.LENGTH, text, UnitSystem.US)).isEqualTo(new ParseResult.Parsed(0.0));
    }

    private static String message(String text) {
        return Parsing.parse(Measure.LENGTH, text, UnitSystem.US)
                .refusal()
                .orElseThrow()
                .message();
    }
}
