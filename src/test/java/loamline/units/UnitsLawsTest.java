package loamline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import loamline.Laws;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class UnitsLawsTest {
    /** What sizes, sums and the 14 digits that formatting starts from may blur, relative. */
    private static final double BLUR = 1e-13;

    @Property(seed = Laws.SEED, tries = 1000)
    void readingWhatIsShownGivesTheValueToHalfAUnitOfTheLastDigit(
            @ForAll Measure measure, @ForAll UnitSystem system, @ForAll("values") double value) {
        Formatted shown = Formatting.format(measure, value, system);

        double lastDigit = Math.pow(10, -new BigDecimal(shown.number().replace(",", "")).scale());
        double tolerance = measure.toStored(lastDigit / 2, system) + BLUR * Math.abs(value);
        assertThat(parsed(measure, shown.text(), system)).isCloseTo(value, within(tolerance));
    }

    @Property(seed = Laws.SEED, tries = 1000)
    void readingWhatIsOfferedForEditingKeepsNineDigits(
            @ForAll Measure measure, @ForAll UnitSystem system, @ForAll("values") double value) {
        String shown = Formatting.editable(measure, value, system).text();

        double ninthDigit = 0.5e-8 * Math.abs(value) + Double.MIN_NORMAL;
        assertThat(parsed(measure, shown, system)).isCloseTo(value, within(ninthDigit * (1 + BLUR)));
    }

    @Property(seed = Laws.SEED, tries = 1000)
    void whatIsShownReadsTheSameInTheOtherSystem(
            @ForAll Measure measure, @ForAll UnitSystem system, @ForAll("values") double value) {
        String shown = Formatting.format(measure, value, system).text();

        assertThat(Parsing.parse(measure, shown, UnitSystem.METRIC))
                .isEqualTo(Parsing.parse(measure, shown, UnitSystem.US));
    }

    @Property(seed = Laws.SEED, tries = 1000)
    void noTextShowsANegativeZeroOrMoreThanAsciiDigits(
            @ForAll Measure measure, @ForAll UnitSystem system, @ForAll("values") double value) {
        String shown = Formatting.format(measure, value, system).number();

        assertThat(shown).matches("-?\\d{1,3}(,\\d{3})*(\\.\\d+)?").doesNotMatch("-[0.,]*");
    }

    @Property(seed = Laws.SEED, tries = 1000)
    void valueAndErrorEndAtTheSameDecimal(@ForAll("values") double value, @ForAll("errors") double error) {
        String[] shown = Formatting.withStandardError(Measure.LENGTH, value, error, UnitSystem.METRIC)
                .number()
                .replace(",", "")
                .split(" ± ", -1);

        assertThat(new BigDecimal(shown[0]).scale()).isEqualTo(new BigDecimal(shown[1]).scale());
        // The coarsest rounding of an error is 3.55 to 4.
        assertThat(Double.parseDouble(shown[1])).isCloseTo(error, within(0.45 / 3.55 * error * (1 + BLUR)));
    }

    @Property(seed = Laws.SEED, tries = 5000)
    void anyTextGivesAFiniteValueOrAReasonWithinTheText(@ForAll Measure measure, @ForAll("texts") String text) {
        ParseResult result = Parsing.parse(measure, text, UnitSystem.US);

        assertThat(result.value().isPresent()).isNotEqualTo(result.refusal().isPresent());
        result.value().ifPresent(value -> assertThat(value).isFinite());
        result.refusal()
                .ifPresent(refused ->
                        assertThat(text.substring(refused.position())).startsWith(refused.part()));
    }

    @Property(seed = Laws.SEED, tries = 500)
    void feetAndInchesAddUp(
            @ForAll @DoubleRange(min = 0, max = 1000) double feet, @ForAll @DoubleRange(max = 11.9) double inches) {
        int wholeFeet = (int) feet;
        String inchText = BigDecimal.valueOf(inches).toPlainString();

        assertThat(parsed(Measure.LENGTH, wholeFeet + "' " + inchText + "\"", UnitSystem.METRIC))
                .isCloseTo((wholeFeet * 12 + inches) * 0.0254, within(1e-12));
    }

    /** Magnitudes from far below what is shown to far above any yard. */
    @Provide
    Arbitrary<Double> values() {
        return Combinators.combine(digits(-1, 1), digits(-6, 9))
                .as((mantissa, exponent) -> mantissa * Math.pow(10, exponent));
    }

    @Provide
    Arbitrary<Double> errors() {
        return digits(-5, 6).map(exponent -> Math.pow(10, exponent));
    }

    private static Arbitrary<Double> digits(double min, double max) {
        return Arbitraries.doubles().between(min, max).ofScale(12);
    }

    /** Strings of the grammar's own characters, so that many are nearly right. */
    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.of(
                        "1",
                        "0",
                        "12",
                        "000",
                        ".",
                        ",",
                        " ",
                        "-",
                        "/",
                        "'",
                        "\"",
                        "ft",
                        "in",
                        "m",
                        "²",
                        "½",
                        "per",
                        "gal",
                        "min",
                        "lb",
                        "%",
                        "°",
                        "h",
                        "\u00a0",
                        "−",
                        "x",
                        "é",
                        "\ud83c\udf31",
                        "e9")
                .list()
                .ofMaxSize(12)
                .map(parts -> String.join("", parts));
    }

    private static double parsed(Measure measure, String text, UnitSystem system) {
        return Parsing.parse(measure, text, system).value().orElseThrow();
    }
}
