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
import java.util.ArrayList;
import java.util.List;
import loamline.files.YardFiles;
import loamline.units.Factors;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Yard;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the demo yard's tables to the client's plan. */
class SeasonCommandTest {
    private static final String COURT = "demo-data/plover-court/";
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private String said = "";

    private int run(String products, String... flags) {
        List<String> words = new ArrayList<>(List.of(
                "season",
                "maps/plover-court.loam.json",
                "--lab",
                "demo-data/lab/thistlewick.csv",
                "--products",
                products,
                "--targets",
                COURT + "targets.csv",
                "--out",
                out().toString()));
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

    private JsonNode season() throws IOException {
        return JSON.readTree(Files.readString(out().resolve("season.json"), StandardCharsets.UTF_8));
    }

    @Test
    void thePlanIsWrittenWithEveryFileAndTheSameBytesTwice() throws IOException {
        assertThat(run(COURT + "products.csv", "--service", COURT + "service-light.csv"))
                .as(said)
                .isZero();
        JsonNode season = season();
        assertThat(season.get("status").asText()).isEqualTo("optimal");
        assertThat(season.get("blocking")).isEmpty();
        assertThat(season.at("/zones/0/name").asText()).isEqualTo("Front west");
        double sum = 0;
        for (JsonNode product : season.get("products")) {
            sum += product.get("cost").asDouble(0);
        }
        assertThat(season.get("cost").asDouble()).isCloseTo(sum, within(1e-9));
        assertThat(season.get("tasks").size())
                .isEqualTo(Files.readAllLines(out().resolve("tasks.csv")).size() - 1);
        byte[] pdf = Files.readAllBytes(out().resolve("client-plan.pdf"));
        byte[] json = Files.readAllBytes(out().resolve("season.json"));
        assertThat(run(COURT + "products.csv", "--service", COURT + "service-light.csv"))
                .isZero();
        assertThat(out().resolve("client-plan.pdf")).hasBinaryContent(pdf);
        assertThat(out().resolve("season.json")).hasBinaryContent(json);
        assertThat(JSON.readTree(Files.readString(out().resolve("accounts.json")))
                        .has("/zones/0/need/N"))
                .isTrue();
    }

    @Test
    void aServiceThatCoversAllNitrogenAndOverdoesPhosphateGetsANote() throws IOException {
        assertThat(run(COURT + "products.csv", "--service", COURT + "service.csv"))
                .as(said)
                .isZero();
        for (JsonNode zone : season().get("zones")) {
            assertThat(zone.at("/remaining/N").asDouble()).isZero();
        }
        assertThat(season().at("/zones/3/surplus/P2O5").asDouble()).isPositive();
        assertThat(said).contains("2027-10-25").contains("phosphate").contains("ask the company");
        try (PDDocument plan = Loader.loadPDF(out().resolve("client-plan.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(plan))
                    .contains("note to the company that fertilizes")
                    .contains("What we ask for")
                    .contains("Mow Kentucky bluegrass at 2.5 in to 3.5 in")
                    .contains("local code wins");
        }
    }

    @Test
    void anInfeasibleSeasonSaysWhatIsInTheWay() throws IOException {
        Path list = Files.writeString(
                folder.resolve("p.csv"),
                "name,n,p2o5,k2o,bag_kg,price\nstarter,10,20,10,20,30\n",
                StandardCharsets.UTF_8);
        assertThat(run(list.toString())).as(said).isZero();
        assertThat(season().get("status").asText()).isEqualTo("infeasible");
        assertThat(season().get("blocking")).isNotEmpty();
        assertThat(season().get("cost").isNull()).isTrue();
        String rule = season().get("blocking").get(0).asText();
        assertThat(said.lines())
                .anyMatch(line -> line.startsWith("warning") && line.contains("SEASON_BLOCKED") && line.endsWith(rule));
        try (PDDocument plan = Loader.loadPDF(out().resolve("client-plan.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(plan))
                    .contains("There is no plan of products yet")
                    .contains("What is in the way")
                    .contains(rule.substring(0, rule.indexOf(':')))
                    .doesNotContain("is fed when it can use it");
        }
    }

    @Test
    void badArgumentsAndEmptyListsWriteNothing() throws IOException {
        Path empty = Files.writeString(folder.resolve("p.csv"), "name,bag_kg,price\n");
        assertThat(run(empty.toString())).isEqualTo(2);
        assertThat(run(COURT + "products.csv", "--state", "ZZ")).isEqualTo(2);
        assertThat(run(COURT + "products.csv", "--frost", "31-10")).isEqualTo(2);
        assertThat(run(
                        COURT + "products.csv",
                        "--tables",
                        folder.resolve("none").toString()))
                .isEqualTo(2);
        assertThat(out()).doesNotExist();
    }

    @Test
    void tablesOfTheUsersOwnReachTheNeedAndABadRowIsNamedByFileAndLine() throws IOException {
        Path tables = Files.createDirectory(folder.resolve("tables"));
        Files.writeString(
                tables.resolve("turf-nitrogen.csv"),
                "grass,region,use,low_lb,high_lb,status,source_id\nfine fescue,illinois,any,2,2,ours,our-trial\n");
        Files.writeString(
                tables.resolve("turf-caps.csv"), "cap,most_lb_1000ft2,status,source_id\nN,lots,ours,our-trial\n");
        assertThat(run(COURT + "products.csv", "--tables", tables.toString(), "--frost", "10-25"))
                .as(said)
                .isEqualTo(1);
        assertThat(said).contains("turf-caps.csv: line 2: most_lb_1000ft2").contains("“lots”");
        JsonNode shade = zone("Back shade");
        // 2 lb N on 1,000 ft², halved by shade, less a fifth for clippings
        assertThat(shade.at("/need/N").asDouble()).isCloseTo(0.8 * Factors.G_M2_PER_LB_1000FT2, within(1e-9));
        assertThat(shade.at("/mowing/source").asText()).isEqualTo("purdue-ay8");
        assertThat(Files.readString(out().resolve("accounts.json"))).contains("your own table: our-trial");
    }

    private JsonNode zone(String name) throws IOException {
        for (JsonNode zone : season().get("zones")) {
            if (zone.get("name").asText().equals(name)) {
                return zone;
            }
        }
        throw new AssertionError("no zone " + name);
    }

    @Test
    void errorsInATableAreListedAndTheRestIsPlanned() throws IOException {
        String good = Files.readString(Path.of(COURT + "products.csv"));
        Path list = Files.writeString(folder.resolve("p.csv"), good + "free,20,0,0,0,0,0,0,0,0,granular,20,0,,\n");
        assertThat(run(list.toString())).isEqualTo(1);
        assertThat(said).contains("PRODUCT_PRICE");
        assertThat(season().get("status").asText()).isEqualTo("optimal");
    }

    @Test
    void theHandoutHoldsSoilAndSeasonFromTheTablesOfTheYard() throws IOException {
        Yard yard = bare().attaching(table(Sort.LAB, "demo-data/lab/thistlewick.csv"));
        assertThat(handout(yard)).isZero();
        assertThat(out().toFile().list()).contains("soil.pdf", "walk-plan.pdf").doesNotContain("client-plan.pdf");
        yard = yard.attaching(table(Sort.PRODUCTS, COURT + "products.csv"))
                .attaching(table(Sort.SERVICE, COURT + "service-light.csv"))
                .attaching(table(Sort.TARGETS, COURT + "targets.csv"))
                .attaching(table(Sort.CLIMATE, "demo-data/climate.csv"));
        assertThat(handout(yard)).isZero();
        assertThat(out().toFile().list()).contains("soil.pdf", "client-plan.pdf");
        try (PDDocument plan = Loader.loadPDF(out().resolve("client-plan.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(plan))
                    .contains("September 2027")
                    .contains("What to buy");
        }
    }

    @Test
    void aHandoutWithoutAnyDateSaysWhyItHasNoSeason() throws IOException {
        Yard yard = bare().attaching(table(Sort.PRODUCTS, COURT + "products.csv"));
        assertThat(handout(yard)).isZero();
        assertThat(said).contains("SEASON_NO_START").contains("--from");
        assertThat(handout(yard, "--from", "2027-03-01", "--state", "ZZ")).isEqualTo(2);
        assertThat(handout(yard, "--from", "2027-03-01", "--region", "illinois"))
                .isZero();
        assertThat(out().toFile().list()).contains("client-plan.pdf").doesNotContain("soil.pdf");
    }

    /** The demo yard without its tables. */
    private static Yard bare() {
        return YardFiles.read(Path.of("maps/plover-court.loam.json"))
                .yard()
                .orElseThrow()
                .withAttachments(List.of());
    }

    private static Attachment table(Sort sort, String file) throws IOException {
        return Attachment.of(sort, Path.of(file).getFileName().toString(), "", Files.readString(Path.of(file)));
    }

    private int handout(Yard yard, String... flags) throws IOException {
        Path file = folder.resolve("yard.loam.json");
        YardFiles.write(yard, file);
        List<String> words = new ArrayList<>(List.of("handout", file.toString(), "--out", out().toString()));
        words.addAll(List.of(flags));
        StringWriter err = new StringWriter();
        int code = LoamlineCommand.run(
                new PrintWriter(new StringWriter()), new PrintWriter(err, true), words.toArray(String[]::new));
        said = err.toString();
        return code;
    }
}
