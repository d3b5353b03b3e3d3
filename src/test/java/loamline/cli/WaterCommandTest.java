package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WaterCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path DEMO = Path.of("maps/plover-court.geojson");

    @TempDir
    private Path folder;

    private final StringWriter err = new StringWriter();

    private int run(Object... args) {
        String[] words = Arrays.stream(args).map(Object::toString).toArray(String[]::new);
        return LoamlineCommand.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), words);
    }

    private JsonNode json(String file) throws IOException {
        return JSON.readTree(folder.resolve(file).toFile());
    }

    /** A lawn of 10 by 10 m in local metres with heads given as properties and places. */
    private Path yard(String... heads) throws IOException {
        StringBuilder text = new StringBuilder("{\"type\":\"FeatureCollection\",\"loamlineFrame\":\"local-metres\","
                + "\"features\":[{\"type\":\"Feature\",\"properties\":{\"kind\":\"turf\",\"zone\":\"Lawn\"},\"geometry\":"
                + "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[10,0],[10,10],[0,10],[0,0]]]}}");
        for (String head : heads) {
            text.append(",").append(head);
        }
        return Files.writeString(folder.resolve("yard.geojson"), text.append("]}"));
    }

    private static String head(double x, double y, String properties) {
        return String.format(
                Locale.ROOT,
                "{\"type\":\"Feature\",\"properties\":{\"kind\":\"head\",%s},\"geometry\":{\"type\":\"Point\","
                        + "\"coordinates\":[%s,%s]}}",
                properties,
                x,
                y);
    }

    @Test
    void theDemoYardGivesEveryFileOfTheContract() throws IOException {
        assertThat(run("water", DEMO, "--out", folder.resolve("out"))).isZero();
        assertThat(folder.resolve("out").toFile().list())
                .containsExactlyInAnyOrder(
                        "water.json", "gaps.geojson", "application.tif", "water-map.png", "accounts.json");
        JsonNode water = json("out/water.json");
        assertThat(water.get("valves")).hasSize(3);
        for (String key : List.of(
                "name",
                "heads",
                "flowLpm",
                "throwAreaM2",
                "turfAreaM2",
                "meanMmH",
                "grossMmH",
                "duLq",
                "duLh",
                "cu",
                "sc5",
                "minMmH")) {
            assertThat(water.get("valves").get(0).has(key)).as(key).isTrue();
        }
        JsonNode coverage = water.get("coverage");
        double sum = coverage.get("reachedBy0M2").asDouble()
                + coverage.get("reachedBy1M2").asDouble()
                + coverage.get("reachedBy2M2").asDouble()
                + coverage.get("reachedBy3plusM2").asDouble();
        assertThat(sum).isCloseTo(coverage.get("turfM2").asDouble(), within(1e-6));
        assertThat(coverage.get("offTurfShare").asDouble()).isBetween(0.05, 0.2);
        JsonNode gap = water.get("gaps").get(0);
        assertThat(gap.get("areaM2").asDouble()).isCloseTo(9.5842, within(0.0958));
        assertThat(gap.get("zone").asText()).isEqualTo("Back lawn");
        assertThat(gap.get("centroid").get(0).asDouble()).isCloseTo(22, within(0.05));
        assertThat(gap.get("centroid").get(1).asDouble()).isCloseTo(36, within(0.05));
        assertThat(water.get("headToHead")).hasSize(14);
        JsonNode outline = json("out/gaps.geojson").get("features").get(0);
        assertThat(outline.get("geometry").get("type").asText()).isEqualTo("Polygon");
        assertThat(outline.get("geometry")
                        .get("coordinates")
                        .get(0)
                        .get(0)
                        .get(0)
                        .asDouble())
                .isCloseTo(-89.05, within(0.001));
        json("out/accounts.json")
                .fieldNames()
                .forEachRemaining(pointer -> assertThat(water.at(pointer).isMissingNode())
                        .as(pointer)
                        .isFalse());
    }

    @Test
    void theSameYardGivesTheSameBytes() throws IOException {
        assertThat(run("water", DEMO, "--out", folder.resolve("a"), "--cell", "0.3m"))
                .isZero();
        assertThat(run("water", DEMO, "--out", folder.resolve("b"), "--cell", "0.3m"))
                .isZero();
        for (String name : List.of("water.json", "gaps.geojson", "application.tif", "water-map.png", "accounts.json")) {
            assertThat(Files.mismatch(
                            folder.resolve("a").resolve(name),
                            folder.resolve("b").resolve(name)))
                    .as(name)
                    .isEqualTo(-1);
        }
    }

    @Test
    void aYardWithoutAPlaceGivesAnAsciiGridOfRates() throws IOException {
        String cone = "\"id\":\"a\",\"valve\":\"1\",\"radiusM\":4,\"flowLpm\":6";
        assertThat(run("water", yard(head(5, 5, cone)), "--out", folder.resolve("out"), "--cell", "0.5m"))
                .isZero();
        List<String> lines = Files.readAllLines(folder.resolve("out/application.asc"));
        assertThat(lines.subList(0, 2)).containsExactly("ncols 20", "nrows 20");
        double[] row = Arrays.stream(lines.get(6 + 9).split(" ")) // middles at y = 5.25
                .mapToDouble(Double::parseDouble)
                .toArray();
        double expected = 3 * 6 * 60 / (Math.PI * 16) * (1 - Math.hypot(0.25, 0.25) / 4);
        assertThat(row[10]).isCloseTo(expected, within(1e-9));
        assertThat(row[0]).isZero();
    }

    @Test
    void headsThatCannotBeAreProblemsAndTheRestIsComputed() throws IOException {
        Path yard = yard(
                head(5, 5, "\"id\":\"good\",\"radiusM\":4,\"flowLpm\":6"),
                head(5, 5, "\"id\":\"backwards\",\"radiusM\":4,\"flowLpm\":-6"),
                head(5, 5, "\"id\":\"short\",\"radiusM\":0,\"flowLpm\":6"),
                head(5, 5, "\"id\":\"none\",\"radiusM\":4,\"flowLpm\":6,\"arcSweepDeg\":0"),
                head(5, 5, "\"id\":\"twice\",\"radiusM\":4,\"flowLpm\":6,\"arcSweepDeg\":720"),
                head(5, 5, "\"id\":\"bare\""),
                head(90, 5, "\"id\":\"far\",\"radiusM\":4,\"flowLpm\":6,\"valve\":\"9\""));
        assertThat(run("water", yard, "--out", folder.resolve("out"), "--cell", "0.5m"))
                .isEqualTo(LoamlineCommand.INPUT_HAS_ERRORS);
        assertThat(err.toString())
                .contains("head backwards is left out", "head short is left out", "head none is left out")
                .contains("head twice is left out", "its radius of throw is not known")
                .contains("HEAD_OFF_TURF", "VALVE_OFF_TURF")
                .doesNotContain("Exception");
        String text = Files.readString(folder.resolve("out/water.json"));
        assertThat(text).doesNotContain("NaN", "Infinity");
        JsonNode valves = json("out/water.json").get("valves");
        assertThat(valves).hasSize(2);
        assertThat(valves.get(1).get("meanMmH").isNull()).isTrue();
    }

    @Test
    void withoutHeadsOrTurfNothingIsWritten() throws IOException {
        assertThat(run("water", yard(), "--out", folder.resolve("out"))).isEqualTo(LoamlineCommand.NOT_DONE);
        assertThat(err.toString()).contains("NO_HEADS").contains("WATER_NOT_COMPUTED");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void cellsMustBeAboveZero() throws IOException {
        assertThat(run("water", DEMO, "--out", folder.resolve("out"), "--cell", "0"))
                .isEqualTo(LoamlineCommand.NOT_DONE);
        assertThat(err.toString()).contains("--cell must be above 0");
    }

    @Test
    void obstaclesAndWindChangeTheAnswer() throws IOException {
        assertThat(run(
                        "water",
                        DEMO,
                        "--out",
                        folder.resolve("out"),
                        "--cell",
                        "0.5m",
                        "--obstacles",
                        "--drift",
                        "0.5m",
                        "--drift-to",
                        "0"))
                .isZero();
        assertThat(json("out/water.json").get("coverage").get("destinations").findValuesAsText("ground"))
                .contains("obstacles");
        assertThat(json("out/water.json")
                        .get("gaps")
                        .get(0)
                        .get("centroid")
                        .get(1)
                        .asDouble())
                .isGreaterThan(36.2);
    }
}
