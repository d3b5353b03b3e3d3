package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogCommandTest {
    private static final String YARD = "maps/plover-court.loam.json";
    private static final String LOG = "demo-data/plover-court/log-2027-05.csv";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... words) {
        return LoamlineCommand.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
    }

    private int log(String file) {
        return run("log", YARD, file, "--out", folder.resolve("out").toString());
    }

    private String file(String name) throws IOException {
        return Files.readString(folder.resolve("out").resolve(name));
    }

    @Test
    void theDemosCausesAreNamedAndWhatIsOpenStaysOpen() throws IOException {
        assertThat(log(LOG)).isZero();
        JsonNode found = new ObjectMapper().readTree(file("findings.json"));
        assertThat(found.at("/areas/0/name").asText()).isEqualTo("dry, thin");
        assertThat(found.at("/areas/0/likely").asText()).isEqualTo("hole");
        assertThat(found.at("/areas/1/likely").isNull()).isTrue();
        assertThat(found.at("/areas/2/likely").asText()).isEqualTo("thatch");
        assertThat(found.at("/bags/1/replaced/B5").asText()).isEqualTo("B5s");
        assertThat(file("accounts.json")).contains("\"/areas/0/causes/0\"", "\"/surfaces/0\"");
        assertThat(Files.size(folder.resolve("out/findings.pdf"))).isPositive();
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        log(LOG);
        byte[] first = Files.readAllBytes(folder.resolve("out/findings.pdf"));
        String json = file("findings.json");
        log(LOG);
        assertThat(Files.readAllBytes(folder.resolve("out/findings.pdf"))).isEqualTo(first);
        assertThat(file("findings.json")).isEqualTo(json);
    }

    @Test
    void anotherYardsLogWritesNothing() throws IOException {
        Path list = folder.resolve("other.csv");
        Files.writeString(list, "core,root_cm\nQ1,5\nQ2,6\n");
        assertThat(log(list.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("LOG_OTHER_YARD", "LOG_NOT_USED");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void badRowsAreListedAndTheRestIsWritten() throws IOException {
        Path list = folder.resolve("bad.csv");
        Files.writeString(list, Files.readString(Path.of(LOG)) + "A1,2027-05-18,deep\n");
        assertThat(log(list.toString())).isEqualTo(1);
        assertThat(err.toString()).contains("bad.csv:27");
        assertThat(folder.resolve("out/findings.json")).exists();
    }

    @Test
    void theHandoutHoldsEveryPageThatTheYardAllows() {
        assertThat(run("handout", YARD, "--out", folder.resolve("out").toString()))
                .isZero();
        assertThat(folder.resolve("out").toFile().list())
                .containsExactlyInAnyOrder(
                        "walk-plan.pdf",
                        "phone-log.html",
                        "water-map.png",
                        "sun-map.png",
                        "cup-plan-valve-2.pdf",
                        "cup-plan-valve-3.pdf",
                        "soil.pdf",
                        "client-plan.pdf");
    }
}
