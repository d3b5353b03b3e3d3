package loamline.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loamline.files.Read;
import loamline.files.ReadingsFile;
import loamline.water.cups.Cup;
import loamline.water.cups.CupTest;
import loamline.water.cups.HeadFinding;
import loamline.water.cups.Verdict;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

/** The readings under {@code demo-data/} are the ones made, and tell which head was made weak. */
class CupReadingsTest {
    private static final Path FILE = Path.of("demo-data", "plover-court", "cups-valve-2.csv");

    private static Yard yard() {
        return DemoYards.all().get(0).yard();
    }

    @Test
    void theCommittedReadingsAreTheOnesMade() throws IOException {
        String made = CupReadings.of(yard());
        if (Boolean.getBoolean("loamline.writeDemo")) {
            Files.createDirectories(FILE.getParent());
            Files.writeString(FILE, made);
        }
        assertThat(Files.readString(FILE)).isEqualTo(made);
    }

    @Test
    void theWeakHeadIsNamedAndNoOther() {
        Read<List<Cup>> read = ReadingsFile.read(FILE, yard().frame());
        assertThat(read.problems()).isEmpty();
        CupTest test = CupTest.of(yard(), CupReadings.VALVE, read.value().orElseThrow(), Optional.empty());
        List<HeadFinding> faults = test.findings().faults();
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).head()).isEqualTo(CupReadings.WEAK);
        assertThat(faults.get(0).verdict()).isEqualTo(Verdict.WEAK);
        assertThat(faults.get(0).low()).isLessThan(0.45);
        assertThat(faults.get(0).high()).isGreaterThan(0.45);
    }
}
