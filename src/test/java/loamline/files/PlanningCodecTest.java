package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import loamline.account.Problem;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanningCodecTest {
    private static Read<Yard> project(String planning) throws IOException {
        String text = "{\"format\":\"loamline-yard\",\"schema\":1,\"name\":\"y\",\"features\":[]" + planning + "}";
        return ProjectFile.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static PlanOptions planning(Read<Yard> read) {
        return read.value().orElseThrow().planning().orElseThrow();
    }

    @Test
    void aFileThatSaysNothingOfItsPlanningHasNone() throws IOException {
        assertThat(project("").value().orElseThrow().planning()).isEmpty();
    }

    @Test
    void whatIsNotSaidIsAsUsual() throws IOException {
        assertThat(planning(project(",\"planning\":{}"))).isEqualTo(PlanOptions.USUAL);
        PlanOptions some = planning(project(",\"planning\":{\"cores\":14,\"edgeBufferFt\":5,\"place\":\"Random\"}"));
        assertThat(some.coresPerComposite()).isEqualTo(14);
        assertThat(some.edgeBufferM()).isEqualTo(5 * 0.3048);
        assertThat(some.place()).isEqualTo(PlanOptions.Place.RANDOM);
        assertThat(some.headBufferM()).isEqualTo(PlanOptions.USUAL.headBufferM());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"kits\":0",
                "\"cores\":201",
                "\"cores\":12.5",
                "\"edgeBufferM\":-1",
                "\"place\":\"edge\"",
                "\"spares\":3",
                "\"seed\":\"one\"",
                "\"bags\":2",
                "\"probeDepthM\":0"
            })
    void whatCannotBeIsReportedAndAsUsual(String member) throws IOException {
        Read<Yard> read = project(",\"planning\":{" + member + "}");
        assertThat(planning(read)).isEqualTo(PlanOptions.USUAL);
        assertThat(read.problems()).extracting(Problem::code).containsExactly("WRONG_TYPE");
    }

    @Test
    void aSeedKeepsAllItsBits() throws IOException {
        assertThat(planning(project(",\"planning\":{\"seed\":9007199254740993}"))
                        .seed())
                .isEqualTo(9007199254740993L);
    }
}
