package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a laboratory's table to what is written for the client. */
class SoilCommandTest {
    private static final String HEAD = "sample,zones,element,value,unit,extractant,depth_cm,method,lab,date\n";
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private String said = "";

    private int run(Path lab, String... flags) {
        List<String> words = new ArrayList<>(List.of("soil", lab.toString(), "--out", out().toString()));
        words.addAll(List.of(flags));
        StringWriter err = new StringWriter();
        int code = LoamlineCommand.run(
                new PrintWriter(new StringWriter()), new PrintWriter(err, true), words.toArray(String[]::new));
        said = err.toString();
        return code;
    }

    private Path out() {
        return folder.resolve("out");
    }

    private Path lab(String rows) throws IOException {
        return Files.writeString(folder.resolve("lab.csv"), HEAD + rows, StandardCharsets.UTF_8);
    }

    private JsonNode json(String file) throws IOException {
        return JSON.readTree(Files.readString(out().resolve(file), StandardCharsets.UTF_8));
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void aCleanReportGivesDosesWithTheirAccounts() throws IOException {
        assertThat(run(Path.of("demo-data/lab/mossgate.csv"))).as(said).isZero();
        JsonNode sample = json("soil.json").at("/samples/0");
        assertThat(sample.get("id").asText()).isEqualTo("Shade");
        JsonNode lime = sample.get("lime");
        // Penn State AASL, Lime Recommendations Turf: acidity 6.5 to pH 6.5 is 110 lb/1,000 ft², in two of 55
        assertThat(lime.get("cceKgM2").asDouble()).isCloseTo(110 * 0.0048824, within(1e-5));
        assertThat(lime.get("doses")).hasSize(2);
        // University of Massachusetts sample report
        assertThat(sample.at("/ratings/2/rating").asText()).isEqualTo("optimum");
        assertThat(sample.at("/ratings/2/source").asText()).isEqualTo("umass-report");
        assertThat(sample.at("/needs/P2O5GM2").isNull()).isTrue();
        JsonNode account = json("accounts.json").get("/samples/0/lime/cceKgM2");
        assertThat(account.at("/inputs/acidity_meq").asDouble()).isEqualTo(6.5);
        assertThat(account.at("/source/0").asText()).isEqualTo("psu-lime-turf");
    }

    @Test
    void everyAccountPointsIntoTheResult() throws IOException {
        run(Path.of("demo-data/lab/thistlewick.csv"));
        JsonNode result = json("soil.json");
        json("accounts.json")
                .fieldNames()
                .forEachRemaining(pointer -> assertThat(result.at(pointer).isMissingNode())
                        .as(pointer)
                        .isFalse());
    }

    @Test
    void theAwkwardReportIsReadAsFarAsItIsHonestAndTheRestIsAskedFor() throws IOException {
        assertThat(run(Path.of("demo-data/lab/zinnia-awkward.csv"))).isEqualTo(LoamlineCommand.INPUT_HAS_ERRORS);
        assertThat(said)
                .contains(
                        ":6 LAB_EXTRACTANT_MISSING",
                        ":10 LAB_UNIT_OPEN",
                        ":13 LAB_TEXTURE_SUM",
                        ":14 LAB_VALUE_RANGE",
                        ":15 LAB_DEPTH_MISSING",
                        ":16 CSV_CELL_BAD value",
                        ":17 LAB_UNIT_OPEN")
                .doesNotContain("Exception");
        assertThat(json("soil.json").get("samples")).hasSize(2);
        JsonNode phosphorus = json("soil.json").at("/samples/0/ratings/1");
        assertThat(phosphorus.get("rating").asText()).isEqualTo("sufficient"); // 24.5 lb/acre are 12.25 ppm Olsen
    }

    @Test
    void theGuidelineIsTheOnlyOneUsedForNutrients() throws IOException {
        run(Path.of("demo-data/lab/mossgate.csv"), "--guideline", "MLSN");
        JsonNode phosphorus = json("soil.json").at("/samples/0/ratings/2");
        assertThat(phosphorus.get("rating").isNull()).isTrue();
        assertThat(phosphorus.get("refused").asText()).contains("Mehlich-3", "modified Morgan");
        assertThat(json("soil.json").at("/samples/0/ratings/0/rating").asText()).isEqualTo("acid");
    }

    @Test
    void thePagesSayWhatToSpreadAndWhatIsOpen() throws IOException {
        run(Path.of("demo-data/lab/mossgate.csv"));
        String text = text(out().resolve("soil.pdf"));
        assertThat(text)
                .contains(
                        "Back shade", "110 lb/1,000 ft²", "2 of 55 lb/1,000 ft²", "What this test leaves open", "umass")
                .contains("no rule is held that turns P by modified Morgan")
                .contains("Penn State AASL, Lime Recommendations Turf");
    }

    @Test
    void theSameReportGivesTheSameBytes() throws IOException {
        run(Path.of("demo-data/lab/thistlewick.csv"));
        byte[] first = Files.readAllBytes(out().resolve("soil.pdf"));
        run(Path.of("demo-data/lab/thistlewick.csv"));
        assertThat(Files.readAllBytes(out().resolve("soil.pdf"))).isEqualTo(first);
    }

    @Test
    void poorLimeTakesMore() throws IOException {
        Path lab = lab("A,,pH,5.6,,,10,water,L,2027-04-01\nA,,acidity,6.5,meq/100 g,,10,Mehlich,L,2027-04-01\n");
        // Cornell ENV of the check beside its formula: 69.3 %
        assertThat(run(lab, "--lime-cce", "90", "--lime-fineness", "cornell:20=95,60=70,100=55"))
                .as(said)
                .isZero();
        JsonNode lime = json("soil.json").at("/samples/0/lime");
        assertThat(lime.get("productKgM2").asDouble() / lime.get("cceKgM2").asDouble())
                .isCloseTo(100 / 69.3, within(1e-9));
        // University of Nebraska-Lincoln, liming materials lesson: CaO 178
        assertThat(run(lab, "--lime-cce", "CaO")).as(said).isZero();
        JsonNode burnt = json("soil.json").at("/samples/0/lime");
        assertThat(burnt.get("productKgM2").asDouble() / burnt.get("cceKgM2").asDouble())
                .isCloseTo(100 / 178.0, within(1e-9));
    }

    @Test
    void theLaboratorysOwnNumbersStandBesideOursOrInTheirPlace() throws IOException {
        Path lab = lab("A,,pH,5.6,,,10,water,L,2027-04-01\n"
                + "A,,P,9,ppm,Mehlich-3,10,,L,2027-04-01\n"
                + "A,,K,88,ppm,modified Morgan,10,,L,2027-04-01\n"
                + "A,,recP2O5,0.5,lb/1000 ft2,,,,L,2027-04-01\n"
                + "A,,recK2O,4.8824,g/m²,,,,L,2027-04-01\n"
                + "A,,recLime,50,lb/1000ft2,,,,L,2027-04-01\n");
        assertThat(run(lab)).as(said).isZero();
        JsonNode sample = json("soil.json").at("/samples/0");
        assertThat(sample.at("/needs/K2OGM2").asDouble()).isEqualTo(4.8824);
        assertThat(sample.at("/recommended/P2O5GM2").asDouble()).isCloseTo(0.5 * 4.8824, within(1e-4));
        assertThat(sample.at("/needs/P2O5GM2").asDouble()).isGreaterThan(0.5 * 4.8824);
        assertThat(sample.at("/lime/cceKgM2").asDouble()).isCloseTo(50 * 0.0048824, within(1e-5));
        assertThat(json("accounts.json")
                        .get("/samples/0/needs/K2OGM2")
                        .at("/source/0")
                        .asText())
                .isEqualTo("laboratory");
        assertThat(text(out().resolve("soil.pdf")).replaceAll("\\s+", " "))
                .contains("The laboratory’s own recommendation; ours is left open.")
                .contains("The laboratory recommends 0.50 lb/1,000 ft²")
                .doesNotContain("Recommended P2O5");
    }

    @Test
    void sharesOfTheExchangeStandBesideTheirRanges() throws IOException {
        run(Path.of("demo-data/lab/thistlewick.csv"));
        JsonNode ranges = json("soil.json").at("/samples/0/exchange/saturationRanges");
        assertThat(ranges.findValuesAsText("share")).containsExactly("Ca", "Mg", "K", "Mg:K");
        assertThat(ranges.at("/0/guideline").asText()).isEqualTo("ohio"); // Mehlich-3 has no range of its own
        assertThat(ranges.at("/0/high").asDouble()).isEqualTo(80);
        assertThat(ranges.at("/3/high").isNull()).isTrue();
        assertThat(text(out().resolve("soil.pdf"))).contains("of ohio");
    }

    @Test
    void badArgumentsAreSaidAndNothingIsWritten() throws IOException {
        Path lab = lab("A,,pH,5.6,,,10,water,L,2027-04-01\n");
        for (String[] flags : List.of(
                new String[] {"--guideline", "nobody"},
                new String[] {"--target-ph", "12"},
                new String[] {"--lime-fineness", "cornell:coarse"},
                new String[] {"--lime-cap", "none"},
                new String[] {"--lime-cce", "chalk"},
                new String[] {"--state", "ZZ"},
                new String[] {"--nitrogen", "plenty"},
                new String[] {"--tables", folder.resolve("nowhere").toString()})) {
            assertThat(run(lab, flags)).as(String.join(" ", flags)).isEqualTo(LoamlineCommand.NOT_DONE);
            assertThat(said).doesNotContain("INTERNAL", "Exception");
        }
        assertThat(run(folder.resolve("not-there.csv"))).isEqualTo(LoamlineCommand.NOT_DONE);
        assertThat(run(lab(""))).isEqualTo(LoamlineCommand.NOT_DONE);
        assertThat(out()).doesNotExist();
    }

    @Test
    void tenThousandRowsAreQuick() throws IOException {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 10_000; i++) {
            rows.append("S")
                    .append(i % 20)
                    .append(",,")
                    .append(i % 2 == 0 ? "P" : "K")
                    .append(',')
                    .append(i % 90)
                    .append(",ppm,Mehlich-3,10,,L,")
                    .append(2000 + i % 27)
                    .append("-04-01\n");
        }
        Path lab = lab(rows.toString());
        Assertions.assertTimeout(Duration.ofSeconds(10), () -> run(lab));
        assertThat(json("soil.json").get("samples")).hasSize(20);
    }
}
