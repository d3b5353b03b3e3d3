package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberStyleTest {
    private static OptionalDouble read(String number, char separator, String... elsewhere) {
        return NumberStyle.of(Stream.concat(Stream.of(number), Stream.of(elsewhere)), separator)
                .read(number);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | 0",
                "12 | 12",
                "-3 | -3",
                "−3 | -3",
                "+3 | 3",
                "12.5 | 12.5",
                ".5 | 0.5",
                "5. | 5",
                "12,5 | 12.5",
                ",5 | 0.5",
                "0,125 | 0.125",
                "0.125 | 0.125",
                "1234,567 | 1234.567",
                "1.5e-3 | 0.0015",
                "2E3 | 2000",
                "1,234.5 | 1234.5",
                "1.234,5 | 1234.5",
                "1,234,567 | 1234567",
                "1.234.567 | 1234567"
            })
    void mostNumbersSpeakForThemselves(String text, double value) {
        assertThat(read(text, ',')).hasValue(value);
        assertThat(read(text, ';')).hasValue(value);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "abc",
                "12 ml",
                "1,00,0",
                "1.2.3",
                "1,2,3",
                "12,34.5",
                "NaN",
                "Infinity",
                "0x10",
                "1e999",
                "1d",
                "-",
                ".",
                "--1",
                "1 234",
                "1_000",
                "01,234.5",
                "1111111111111111111111111111111111111111111111"
            })
    void theRestIsRefused(String text) {
        assertThat(read(text, ',')).isEmpty();
        assertThat(read(text, ';')).isEmpty();
    }

    @Test
    void oneMarkBeforeThreeDigitsMeansWhatItMeansElsewhere() {
        assertThat(read("1,234", ',', "0.5")).hasValue(1234);
        assertThat(read("1.234", ',', "0.5")).hasValue(1.234);
        assertThat(read("1,234", ';', "0,5")).hasValue(1.234);
        assertThat(read("1.234", ';', "0,5")).hasValue(1234);
    }

    @Test
    void whereNothingTellsSemicolonsSpeakForDecimalCommas() {
        assertThat(read("1,234", ';')).hasValue(1.234);
        assertThat(read("1.234", ';')).hasValue(1.234);
        assertThat(read("1,234", ',')).isEmpty();
        assertThat(read("1,234", '\t')).isEmpty();
        assertThat(read("1.234", ',')).hasValue(1.234);
    }

    @Test
    void whereBothAreMetNothingIsGuessed() {
        assertThat(read("1,234", ';', "0,5", "0.5")).isEmpty();
        assertThat(read("1.234", ';', "0,5", "0.5")).isEmpty();
        assertThat(read("12.5", ';', "0,5", "0.5")).hasValue(12.5);
        assertThat(read("-1,234", ',')).isEmpty();
    }

    @Test
    void anUnclearNumberIsToldFromNoNumber() {
        NumberStyle style = NumberStyle.of(Stream.of("1,234"), ',');
        assertThat(style.isUnclear("1,234")).isTrue();
        assertThat(style.isUnclear("abc")).isFalse();
        assertThat(NumberStyle.of(Stream.of("1,234"), ';').isUnclear("1,234")).isFalse();
    }
}
