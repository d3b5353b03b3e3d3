package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import loamline.Laws;
import loamline.account.Problem;
import loamline.yard.Yard;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class RoundTripTest {
    @Property(seed = Laws.SEED, tries = 150)
    void theProjectFileLosesNothing(@ForAll long seed) {
        Yard yard = RandomYards.yard(seed);
        Read<Yard> read = read(ProjectFile.write(yard));
        assertThat(read.value()).contains(yard);
        assertThat(read.problems()).noneMatch(Problem::isError);
    }

    @Property(seed = Laws.SEED, tries = 150)
    void geoJsonLosesNothing(@ForAll long seed) {
        Yard yard = RandomYards.yard(seed);
        Read<Yard> read = read(GeoJson.write(yard));
        assertThat(read.value()).contains(yard);
        assertThat(read.problems()).noneMatch(Problem::isError);
    }

    @Property(seed = Laws.SEED, tries = 50)
    void aYardThroughGeoJsonGivesTheSameProjectFile(@ForAll long seed) {
        String project = ProjectFile.write(RandomYards.yard(seed));
        Yard first = read(project).value().orElseThrow();
        Yard second = read(GeoJson.write(first)).value().orElseThrow();
        assertThat(read(ProjectFile.write(second)).value()).contains(first);
        assertThat(ProjectFile.write(read(project).value().orElseThrow())).isEqualTo(project);
    }

    private static Read<Yard> read(String text) {
        try {
            return YardFiles.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
