package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import loamline.files.YardFiles;
import loamline.yard.Turf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunCommandTest {
    private static final String YARD = "maps/plover-court.geojson";

    @TempDir
    private Path folder;

    private final StringWriter err = new StringWriter();

    private int run(String yard, String... flags) {
        List<String> words = new ArrayList<>(
                List.of("sun", yard, "--out", folder.resolve("out").toString()));
        words.addAll(List.of(flags));
        return LoamlineCommand.run(
                new PrintWriter(new StringWriter()), new PrintWriter(err, true), words.toArray(String[]::new));
    }

    private byte[] bytes(String name) throws IOException {
        return Files.readAllBytes(folder.resolve("out").resolve(name));
    }

    private JsonNode json(String name) throws IOException {
        return new ObjectMapper().readTree(bytes(name));
    }

    @Test
    void aYardsSunIsWrittenWhole() throws IOException {
        assertThat(run(YARD, "--dates", "2027-06-21,2027-09-21", "--cell", "0.5m", "--step", "20min"))
                .as(err.toString())
                .isZero();
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "sun.json", "sun-classes.geojson", "accounts.json", "sun-hours.tif", "sun-map.png");
        }
        JsonNode sun = json("sun.json");
        assertThat(sun.at("/dates/1").asText()).isEqualTo("2027-09-21");
        assertThat(sun.at("/zones")).hasSize(4);
        JsonNode zone = sun.at("/zones/0");
        assertThat(zone.at("/name").asText()).isEqualTo("Front west");
        assertThat(zone.at("/morningHours").asDouble()
                        + zone.at("/afternoonHours").asDouble())
                .isEqualTo(zone.at("/meanHours").asDouble(), within(1e-9));
        assertThat(zone.at("/p10").asDouble()).isLessThan(zone.at("/p90").asDouble());
        assertThat(sun.at("/sun/0/utc").asText()).startsWith("2027-06-21T1");
        assertThat(sun.at("/sun/0/elevationDeg").asDouble()).isBetween(0.0, 5.0);
        assertThat(json("accounts.json").has("/zones/3/meanHours")).isTrue();
        BufferedImage map =
                ImageIO.read(folder.resolve("out").resolve("sun-map.png").toFile());
        assertThat(map.getWidth()).isGreaterThan(1000);
        assertThat(YardFiles.read(folder.resolve("out").resolve("sun-classes.geojson"))
                        .yard()
                        .orElseThrow()
                        .all(Turf.class))
                .extracting(Turf::zone)
                .contains("full sun");
    }

    @ParameterizedTest
    @CsvSource({
        "--dates=2027-02-30, Write it as 2027-06-21",
        "--dates=tomorrow, Write it as 2027-06-21",
        "--step=2h, no step from 1 to 60 min",
        "--step=soon, Write a time such as",
        "--cell=0, --cell must be above 0",
        "--cell=1mm, SUN_CELL_TOO_SMALL"
    })
    void whatMakesNoSenseIsToldAndNothingWritten(String flag, String told) {
        String[] flags = flag.startsWith("--dates") ? new String[] {flag} : new String[] {"--dates=2027-06-21", flag};
        assertThat(run(YARD, flags)).isEqualTo(LoamlineCommand.NOT_DONE);
        assertThat(err.toString()).contains(told);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({"turf, SUN_NO_PLACE", "bed, SUN_NO_TURF"})
    void aYardWithoutAPlaceOrWithoutTurfIsRefused(String kind, String code) throws IOException {
        String frame = kind.equals("turf") ? "\"loamlineFrame\":\"local-metres\"," : "";
        Path yard = folder.resolve("yard.geojson");
        Files.writeString(
                yard,
                "{\"type\":\"FeatureCollection\"," + frame
                        + "\"features\":[{\"type\":\"Feature\",\"properties\":{\"kind\":\""
                        + kind + "\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":"
                        + "[[[0,0],[0.0001,0],[0.0001,0.0001],[0,0.0001],[0,0]]]}}]}");
        assertThat(run(yard.toString(), "--dates=2027-06-21")).isEqualTo(LoamlineCommand.NOT_DONE);
        assertThat(err.toString()).contains(code);
        assertThat(folder.resolve("out")).doesNotExist();
    }
}
