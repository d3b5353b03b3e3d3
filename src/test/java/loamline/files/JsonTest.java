package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class JsonTest {
    /** A number in a file, what it becomes, and how it is written again. */
    static Stream<Arguments> numbers() {
        return Stream.of(
                Arguments.of("0", 0L, "0"),
                Arguments.of("-0", 0L, "0"),
                Arguments.of("9223372036854775807", Long.MAX_VALUE, "9223372036854775807"),
                Arguments.of("9223372036854775808", new BigInteger("9223372036854775808"), "9223372036854775808"),
                Arguments.of("1.50", 1.5, "1.5"),
                Arguments.of("-0.0", -0.0, "-0.0"),
                Arguments.of("-82.998800000001", -82.998800000001, "-82.998800000001"),
                Arguments.of("2e3", 2000.0, "2000.0"),
                Arguments.of("0.30000000000000004", 0.1 + 0.2, "0.30000000000000004"),
                // one digit more than the double next to it can tell
                Arguments.of("0.300000000000000041", new BigDecimal("0.300000000000000041"), "0.300000000000000041"),
                Arguments.of("1e400", new BigDecimal("1E+400"), "1E+400"),
                Arguments.of("1e-400", new BigDecimal("1E-400"), "1E-400"),
                Arguments.of(
                        "12345678901234567890.5e1", new BigInteger("123456789012345678905"), "123456789012345678905"),
                Arguments.of("NaN", "NaN", "\"NaN\""),
                Arguments.of("-Infinity", "-Infinity", "\"-Infinity\""));
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void aNumberKeepsItsValue(String text, Object value, String written) throws IOException {
        assertThat(tree("{\"n\":" + text + "}")).containsEntry("n", value);
        assertThat(JsonText.of(Map.of("n", value))).isEqualTo("{\"n\": " + written + "}\n");
    }

    @Test
    void whatFitsIntoALineStandsOnOne() {
        assertThat(JsonText.of(List.of(1L, List.of(), Map.of("a", true)))).isEqualTo("[1, [], {\"a\": true}]\n");
        String half = "x".repeat(70);
        assertThat(JsonText.of(Map.of("a", List.of(half, half))))
                .isEqualTo("{\n \"a\": [\n  \"%s\",\n  \"%s\"\n ]\n}\n".formatted(half, half));
    }

    @Test
    void anExcerptIsCutShort() {
        assertThat(JsonText.excerpt(Collections.nCopies(99, 1L), 10)).isEqualTo("[1, 1, 1, …");
        assertThat(JsonText.excerpt(null, 10)).isEqualTo("null");
    }

    @Test
    void ourOwnNamesAreSetApartFromOthersOfTheSameName() {
        JsonNames names = JsonNames.of("kind");
        for (String name : List.of("kind", "~kind", "~~kind", "colour", "~colour", "")) {
            assertThat(names.isOurs(names.inFile(name))).isFalse();
            assertThat(names.inMemory(names.inFile(name))).isEqualTo(name);
        }
    }

    private static Map<String, Object> tree(String text) throws IOException {
        ProblemLog log = new ProblemLog();
        return JsonTree.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), log)
                .orElseThrow();
    }
}
