package loamline.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loamline.files.LogFile;
import loamline.files.Read;
import loamline.findings.CoreLog;
import loamline.findings.LogRow;
import loamline.sampling.CorePlanner;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

/** The log under {@code demo-data/} is the one made, and fits the cores of the demo yard. */
class CoreLogsTest {
    private static final Path FILE = Path.of("demo-data", "plover-court", "log-2027-05.csv");

    private static Yard yard() {
        return DemoYards.all().get(0).yard();
    }

    @Test
    void theCommittedLogIsTheOneMade() throws IOException {
        String made = CoreLogs.of(yard());
        if (Boolean.getBoolean("loamline.writeDemo")) {
            Files.writeString(FILE, made);
        }
        assertThat(Files.readString(FILE)).isEqualTo(made);
    }

    @Test
    void itIsReadWithoutAProblemAndFillsEveryBagWithASpareForTheStone() {
        Read<List<LogRow>> read = LogFile.read(FILE);
        assertThat(read.problems()).isEmpty();
        CoreLog.Answer answer = CoreLog.of(
                CorePlanner.plan(yard(), PlanOptions.USUAL), read.value().orElseThrow());
        assertThat(answer.problems()).isEmpty();
        assertThat(answer.log().orElseThrow().bags()).allMatch(bag -> bag.isBalanced());
        assertThat(answer.log().orElseThrow().bags().get(1).replaced()).containsOnlyKeys(CoreLogs.REFUSED);
    }
}
