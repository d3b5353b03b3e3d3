package loamline.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.yard.Yard;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.function.ThrowingSupplier;

/** Texts of yards, and what reading them tells. */
final class Inputs {
    private static final Duration LIMIT = Duration.ofSeconds(10);

    private Inputs() {}

    static <T> T inTime(ThrowingSupplier<T> work) {
        return Assertions.assertTimeout(LIMIT, work);
    }

    static Read<Yard> read(byte[] content) {
        return inTime(() -> YardFiles.read(new ByteArrayInputStream(content)));
    }

    /** Severity, place and code of each problem. */
    static Stream<String> reports(Read<Yard> read) {
        return read.problems().stream().map(p -> {
            assertThat(p.message()).isNotBlank().doesNotContain("Exception");
            return p.line("f").substring(0, p.line("f").length() - p.message().length() - 1);
        });
    }

    static byte[] bytes(String text) {
        return text.getBytes(UTF_8);
    }

    static byte[] collection(String features, String... members) {
        String more = Stream.of(members).map(m -> m + ",").collect(Collectors.joining());
        return bytes("{\"type\":\"FeatureCollection\"," + more + "\"features\":[" + features + "]}");
    }

    static String turf(String geometry) {
        return feature("turf", geometry);
    }

    static String gate(String position) {
        return feature("gate", geometry("Point", position));
    }

    static String feature(String kind, String geometry) {
        return "{\"type\":\"Feature\",\"properties\":{\"kind\":\"" + kind + "\"},\"geometry\":" + geometry + "}";
    }

    static String geometry(String type, String coordinates) {
        return "{\"type\":\"" + type + "\",\"coordinates\":" + coordinates + "}";
    }
}
