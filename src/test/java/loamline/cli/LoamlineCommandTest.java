package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LoamlineCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private final StringWriter err = new StringWriter();

    private int run(Object... args) {
        String[] words = Arrays.stream(args).map(Object::toString).toArray(String[]::new);
        PrintWriter out = new PrintWriter(new StringWriter());
        return LoamlineCommand.run(out, new PrintWriter(err, true), words);
    }

    private static Path workedYard() {
        try {
            return Path.of(LoamlineCommandTest.class
                    .getResource("/loamline/cli/worked-yard.geojson")
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private JsonNode json(String file) throws IOException {
        return JSON.readTree(folder.resolve(file).toFile());
    }

    @Test
    void keptCoresAreWalkedOnTheProvenShortestRound() throws IOException {
        assertThat(run("cores", workedYard(), "--out", folder.resolve("out"), "--keep"))
                .isZero();
        JsonNode walk = json("out/cores.json").get("walks").get(0);
        assertThat(walk.get("lengthM").asDouble()).isCloseTo(163.363213866, within(1e-8));
        assertThat(walk.get("proven").asBoolean()).isTrue();
        assertThat(json("out/cores.json").get("cores").findValuesAsText("id")).contains("A1", "A12");
    }

    @Test
    void coresWritesEveryFileTheContractNames() throws IOException {
        assertThat(run("cores", "maps/plover-court.geojson", "--out", folder.resolve("out")))
                .isZero();
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "accounts.json",
                            "cores.json",
                            "cores.csv",
                            "cores.geojson",
                            "cores.gpx",
                            "walk-plan.pdf",
                            "walk-plan.png");
        }
        JsonNode result = json("out/cores.json");
        assertThat(result.get("seed").asLong()).isEqualTo(1);
        for (JsonNode bag : result.get("composites")) {
            assertThat(bag.get("cores").asInt()).isBetween(10, 15);
            assertThat(bag.get("stratumAreaCv").asDouble()).isLessThanOrEqualTo(0.01);
            assertThat(bag.get("mssdM2").asDouble()).isPositive();
            assertThat(bag.get("probe").fieldNames()).toIterable().contains("depthM", "diameterM", "volumeMl");
        }
        for (JsonNode core : result.get("cores")) {
            assertThat(core.fieldNames())
                    .toIterable()
                    .contains("id", "composite", "zone", "xM", "yM", "lon", "lat", "stratum", "spareOf", "order");
        }
    }

    @Test
    void everyAccountPointsAtANumberOfTheResult() throws IOException {
        run("cores", "maps/plover-court.geojson", "--out", folder.resolve("out"));
        JsonNode result = json("out/cores.json");
        json("out/accounts.json")
                .fieldNames()
                .forEachRemaining(pointer -> assertThat(result.at(pointer).isMissingNode())
                        .as(pointer)
                        .isFalse());
    }

    @Test
    void theSameSeedGivesTheSameBytes() throws IOException {
        for (String out : List.of("one", "two")) {
            run("cores", "maps/tansy-hill.geojson", "--out", folder.resolve(out), "--place", "random", "--seed", 7);
        }
        try (Stream<Path> files = Files.list(folder.resolve("one"))) {
            assertThat(files)
                    .isNotEmpty()
                    .allSatisfy(file -> assertThat(folder.resolve("two").resolve(file.getFileName()))
                            .hasSameBinaryContentAs(file));
        }
    }

    @Test
    void zonesGiveNetAreasWithWhatWasTakenOut() throws IOException {
        assertThat(run("zones", workedYard(), "--out", folder.resolve("out"))).isZero();
        JsonNode zone = json("out/zones.json").get("zones").get(0);
        // house 14 x 4 + 8 x 6, pool 6 x 5
        assertThat(zone.get("grossAreaM2").asDouble()).isEqualTo(1200);
        assertThat(zone.get("minus").get("building").asDouble()).isEqualTo(104);
        assertThat(zone.get("minus").get("water").asDouble()).isEqualTo(30);
        assertThat(zone.get("netAreaM2").asDouble())
                .isCloseTo(1200 - 104 - 30 - zone.get("minus").get("bed").asDouble(), within(1e-9));
        assertThat(json("out/zones.json").get("totalNetAreaM2").asDouble())
                .isEqualTo(zone.get("netAreaM2").asDouble());
        assertThat(Files.readString(folder.resolve("out/zones.csv"))).startsWith("name,net_area_m2,");
    }

    @Test
    void aProjectThatGoesThroughGeoJsonComesBackWhole() throws IOException {
        Path project = Path.of("maps/plover-court.loam.json");
        run("convert", project, folder.resolve("a.geojson"));
        run("convert", folder.resolve("a.geojson"), folder.resolve("b.loam.json"));
        assertThat(folder.resolve("b.loam.json")).hasSameBinaryContentAs(project);
    }

    @Test
    void convertWritesKmlAndGpx() {
        assertThat(run("convert", "maps/plover-court.geojson", folder.resolve("yard.kml")))
                .isZero();
        assertThat(run("convert", "maps/plover-court.geojson", folder.resolve("yard.gpx")))
                .isZero();
        assertThat(folder.resolve("yard.kml")).content().contains("<kml xmlns=\"http://www.opengis.net/kml/2.2\">");
        assertThat(folder.resolve("yard.gpx")).content().contains("version=\"1.1\"");
    }

    @Test
    void aYardWithoutAPlaceHasNoGpxAndSaysSo() {
        assertThat(run("convert", workedYard(), folder.resolve("yard.gpx"))).isEqualTo(2);
        assertThat(err.toString()).contains("NO_PLACE").contains("longitude and latitude");
        assertThat(folder.resolve("yard.gpx")).doesNotExist();
    }

    @Test
    void whatCannotBeReadIsSaidAndNothingIsWritten() throws IOException {
        Path broken = write("broken.geojson", "{\"type\": \"FeatureCollection\", \"features\": [\n{\"type\":");
        assertThat(run("cores", broken, "--out", folder.resolve("out"))).isEqualTo(2);
        assertThat(err.toString()).startsWith("error " + broken + ":2 ").doesNotContain("\tat ");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void badArgumentsAreExplained() {
        assertThat(run("cores", workedYard(), "--out", folder.resolve("out"), "--edge-buffer", "3 bananas"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("--edge-buffer").contains("3.8 m");
        assertThat(run("cores", workedYard(), "--out", folder.resolve("out"), "--cores", 0))
                .isEqualTo(2);
        assertThat(run("nonsense")).isEqualTo(2);
        assertThat(run("cores", workedYard())).isEqualTo(2);
    }

    @Test
    void aFileInThePlaceOfTheFolderIsLeftAlone() throws IOException {
        Path file = write("out", "mine");
        assertThat(run("zones", workedYard(), "--out", file)).isEqualTo(2);
        assertThat(file).hasContent("mine");
    }

    @Test
    void aWrongFeatureIsAnErrorAndTheRestIsDone() throws IOException {
        Path yard = write("yard.geojson", """
                {"type": "FeatureCollection", "loamlineFrame": "local-metres", "features": [
                {"type": "Feature", "properties": {"kind": "turf", "zone": "lawn"}, "geometry":
                 {"type": "Polygon", "coordinates": [[[0, 0], [20, 0], [20, 20], [0, 20], [0, 0]]]}},
                {"type": "Feature", "properties": {"kind": "turf"}, "geometry":
                 {"type": "Polygon", "coordinates": [[[0, 0], ["x", 0], [20, 20], [0, 0]]]}}]}
                """);
        assertThat(run("zones", yard, "--out", folder.resolve("out"))).isEqualTo(1);
        assertThat(err.toString()).contains("error " + yard + ":/features/1/geometry/coordinates/0/1");
        assertThat(json("out/zones.json").get("totalNetAreaM2").asDouble()).isEqualTo(400);
    }
}
