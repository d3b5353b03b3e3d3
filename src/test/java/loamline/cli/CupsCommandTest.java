package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CupsCommandTest {
    private static final String YARD = "maps/plover-court.geojson";
    private static final String READINGS = "demo-data/plover-court/cups-valve-2.csv";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... more) {
        List<String> words = new ArrayList<>(List.of("cups", YARD));
        words.addAll(List.of(more));
        words.addAll(List.of("--out", folder.resolve("out").toString()));
        return LoamlineCommand.run(
                new PrintWriter(out, true), new PrintWriter(err, true), words.toArray(String[]::new));
    }

    private String file(String name) throws IOException {
        return Files.readString(folder.resolve("out").resolve(name));
    }

    private String readings(String... rows) throws IOException {
        Path list = folder.resolve("readings.csv");
        Files.writeString(list, "cup,x_m,y_m,ml,throat_cm2,minutes\n" + String.join("\n", rows));
        return list.toString();
    }

    @Test
    void tellsTheWeakHeadOfTheDemo() throws IOException {
        assertThat(run(READINGS, "--valve", "2", "--climate", "demo-data/climate.csv"))
                .isZero();
        JsonNode cups = new ObjectMapper().readTree(file("cups.json"));
        assertThat(cups.at("/n").asInt()).isEqualTo(24);
        assertThat(cups.at("/suspects/0/head").asText()).isEqualTo("h10");
        assertThat(cups.at("/suspects/0/verdict").asText()).isEqualTo("weak");
        assertThat(cups.at("/suspects/1/verdict").asText()).isEqualTo("ok");
        assertThat(cups.at("/suspects/0/ci95").size()).isEqualTo(2);
        assertThat(cups.at("/runTimes").size()).isEqualTo(12);
        assertThat(cups.at("/runTimes/6/minutes").asDouble()).isPositive();
        assertThat(file("accounts.json")).contains("\"/duLq\"", "\"/suspects/0\"", "\"/runTimes/6\"");
        assertThat(Files.size(folder.resolve("out/cup-sheet.pdf"))).isPositive();
        assertThat(out.toString()).contains("Head h10");
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        run(READINGS, "--valve", "2");
        byte[] first = Files.readAllBytes(folder.resolve("out/cup-sheet.pdf"));
        String json = file("cups.json");
        run(READINGS, "--valve", "2");
        assertThat(Files.readAllBytes(folder.resolve("out/cup-sheet.pdf"))).isEqualTo(first);
        assertThat(file("cups.json")).isEqualTo(json);
    }

    @Test
    void withoutAClimateThereAreNoRunTimesAndTheUserIsTold() throws IOException {
        assertThat(run(READINGS, "--valve", "2")).isZero();
        assertThat(new ObjectMapper()
                        .readTree(file("cups.json"))
                        .at("/runTimes")
                        .size())
                .isZero();
        assertThat(err.toString()).contains("NO_CLIMATE");
    }

    @Test
    void theClimateThatTheYardCarriesDoesWhereNoneIsGiven() throws IOException {
        String project = YARD.replace(".geojson", ".loam.json");
        String[] words = {
            "cups",
            project,
            READINGS,
            "--valve",
            "2",
            "--out",
            folder.resolve("out").toString()
        };
        assertThat(LoamlineCommand.run(new PrintWriter(out, true), new PrintWriter(err, true), words))
                .isZero();
        assertThat(new ObjectMapper()
                        .readTree(file("cups.json"))
                        .at("/runTimes")
                        .size())
                .isEqualTo(12);
        assertThat(err.toString()).doesNotContain("NO_CLIMATE");
    }

    @Test
    void anUnknownValveIsAnsweredWithThoseThereAre() {
        assertThat(run(READINGS, "--valve", "9")).isEqualTo(2);
        assertThat(err.toString()).contains("VALVE_UNKNOWN", "it has 1, 2, 3");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aDryTestHasWordsWhereItHasNoNumbers() throws IOException {
        assertThat(run(
                        readings("1,16,30,0,100,10", "2,17,30,0,100,10", "3,18,30,0,100,10", "4,19,30,0,100,10"),
                        "--valve",
                        "2"))
                .isEqualTo(1);
        JsonNode cups = new ObjectMapper().readTree(file("cups.json"));
        assertThat(cups.at("/meanMl").asDouble()).isZero();
        assertThat(cups.at("/duLq").isNull()).isTrue();
        assertThat(cups.at("/sc").isNull()).isTrue();
        assertThat(cups.at("/scWords").asText()).startsWith("infinite");
        assertThat(file("cups.json")).doesNotContain("NaN").doesNotContain("Infinity");
    }

    @Test
    void badRowsAreListedWithTheirLinesAndTheGoodOnesRead() throws IOException {
        assertThat(run(readings("1,16,30,25,100,10", "2,17,30,full,100,10", "3,18,30,,100,10"), "--valve", "2"))
                .isEqualTo(1);
        assertThat(err.toString())
                .contains("readings.csv:3 CSV_CELL_BAD", "readings.csv:4 CSV_CELL_EMPTY", "CUPS_TOO_FEW");
        assertThat(new ObjectMapper().readTree(file("cups.json")).at("/n").asInt())
                .isEqualTo(1);
    }

    @Test
    void aListWithoutAReadingWritesNothing() throws IOException {
        assertThat(run(readings("1,16,30,full,100,10"), "--valve", "2")).isEqualTo(2);
        assertThat(run("no-such.csv", "--valve", "2")).isEqualTo(2);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void withoutReadingsTheTestIsLaidAndItsListCanBeFilledIn() throws IOException {
        assertThat(run("--valve", "2")).isZero();
        JsonNode plan = new ObjectMapper().readTree(file("cup-plan.json"));
        assertThat(plan.at("/reasons/0").asText()).startsWith("hole");
        assertThat(Files.size(folder.resolve("out/cup-plan.pdf"))).isPositive();
        String filled = file("readings.csv").replace(",,", ",25,");
        Path list = folder.resolve("filled.csv");
        Files.writeString(list, filled);
        assertThat(run(list.toString(), "--valve", "2")).isZero();
        assertThat(new ObjectMapper().readTree(file("cups.json")).at("/n").asInt())
                .isEqualTo(plan.at("/cups").size());
    }

    @Test
    void wrongOptionsAreAnsweredWithWhatThereIs() {
        assertThat(run(READINGS, "--valve", "2", "--grass", "moss")).isEqualTo(2);
        assertThat(err.toString()).contains("cool season, warm season");
        assertThat(run(READINGS, "--valve", "2", "--texture", "cheese")).isEqualTo(2);
        assertThat(run("--valve", "2", "--throat", "0")).isEqualTo(2);
    }
}
