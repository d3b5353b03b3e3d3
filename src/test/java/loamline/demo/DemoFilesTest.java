package loamline.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import loamline.files.GeoJson;
import loamline.files.ProjectFile;
import loamline.yard.Backdrop;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files under {@code maps/} are what the demo yards say; {@link loamline.demo} tells how to write them anew. */
class DemoFilesTest {
    private static final Map<DemoYard, DemoFiles> MADE = new LinkedHashMap<>();

    @BeforeAll
    static void make() throws IOException {
        for (DemoYard demo : DemoYards.all()) {
            DemoFiles files = DemoFiles.of(demo);
            MADE.put(demo, files);
            if (Boolean.getBoolean("loamline.writeDemo")) {
                files.write(demo);
            }
        }
    }

    static Stream<DemoYard> yards() {
        return MADE.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("yards")
    void theCommittedTextsAreTheOnesMade(DemoYard demo) throws IOException {
        DemoFiles made = MADE.get(demo);
        assertThat(Files.readString(DemoFiles.projectPath(demo))).isEqualTo(made.project());
        assertThat(Files.readString(DemoFiles.geoJsonPath(demo))).isEqualTo(made.geoJson());
    }

    @ParameterizedTest
    @MethodSource("yards")
    void theCommittedPictureHasThePixelsMade(DemoYard demo) throws IOException {
        var made = MADE.get(demo).picture();
        var committed = ImageIO.read(DemoFiles.picturePath(demo).toFile());
        assertThat(committed.getWidth()).isEqualTo(made.getWidth());
        assertThat(committed.getHeight()).isEqualTo(made.getHeight());
        int width = made.getWidth();
        int height = made.getHeight();
        int[] expected = made.getRGB(0, 0, width, height, null, 0, width);
        int[] found = committed.getRGB(0, 0, width, height, null, 0, width);
        assertThat(found).isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("yards")
    void bothTextsReadBackAsTheYardWithoutProblems(DemoYard demo) throws IOException {
        DemoFiles made = MADE.get(demo);
        var project = ProjectFile.read(stream(made.project()));
        var geoJson = GeoJson.read(stream(made.geoJson()));
        assertThat(project.problems()).isEmpty();
        assertThat(geoJson.problems()).isEmpty();
        assertThat(geoJson.value()).contains(demo.yard());
        assertThat(project.value().orElseThrow().features())
                .isEqualTo(demo.yard().features());
        Backdrop backdrop = project.value().orElseThrow().backdrop().orElseThrow();
        assertThat(backdrop.placement()).isEqualTo(made.grid().placement());
        assertThat(backdrop.file()).isEqualTo(demo.file() + ".tif");
    }

    @Test
    void theDocumentTellsTheAreaOfTheHole() throws IOException {
        assertThat(Files.readString(Path.of("docs/demo.md"))).contains(DemoYards.HOLE_M2 + " m²");
    }

    private static ByteArrayInputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }
}
