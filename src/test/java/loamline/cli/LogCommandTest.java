package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
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
    void cupsOfAValveBeatTheModelAndPhotosAreListedByName() throws IOException {
        String text = Files.readString(Path.of(LOG));
        String pictured = text.replaceFirst("\n", ",photo\n").replaceFirst("(?m)^(A1,.*)$", "$1,IMG_0231.jpg");
        Path log = Files.writeString(folder.resolve("log.csv"), pictured);
        int exit = run(
                "log",
                YARD,
                log.toString(),
                "--cups",
                "2=demo-data/plover-court/cups-valve-2.csv",
                "--out",
                folder.resolve("out").toString());
        assertThat(exit).isZero();
        JsonNode found = new ObjectMapper().readTree(file("findings.json"));
        assertThat(found.at("/cores/0/photos/0").asText()).isEqualTo("IMG_0231.jpg");
        assertThat(found.at("/cores/0/waterMeasured").asBoolean()).isFalse();
        assertThat(found.at("/cores/6/waterMeasured").asBoolean()).isTrue();
        assertThat(found.at("/areas/0/words").asText()).contains("as cups caught it");
        assertThat(file("log.csv").lines().findFirst().orElseThrow()).contains(",note,photo,");
        try (PDDocument pages =
                Loader.loadPDF(folder.resolve("out/findings.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(pages))
                    .contains("Photos, by file name: A1 IMG_0231.jpg.", "as the cups of valve 2 caught it");
        }
    }

    @Test
    void cupsOfAValveThatIsNotThereAreRefused() {
        assertThat(run("log", YARD, LOG, "--cups", "9=x.csv", "--out", folder.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("VALVE_UNKNOWN");
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
                        "cup-sheet-valve-2.pdf",
                        "findings.pdf",
                        "soil.pdf",
                        "client-plan.pdf");
    }
}
