package loamline.desk.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import loamline.account.Problem;
import loamline.cli.Demo;
import loamline.desk.WindowDriver;
import loamline.files.YardFiles;
import loamline.sampling.CorePlanner;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.YardCheck;
import loamline.yard.Zone;
import loamline.yard.Zones;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What it takes a person to trace a suburban yard by hand. */
@Tag("window")
class SuburbanYardTest {
    /** From a new yard to the walk plan on disk. */
    private static final int MOST_EVENTS = 150;

    /** What is left of them for the image, its scale, two cuts into zones, the plan and two files. */
    private static final int EVENTS_BESIDE_TRACING = 40;

    @Test
    void theScriptTracesTheDemosTurfWithAFewCornersOnly() throws IOException {
        TracingScript script = TracingScript.of(Demo.yard());
        assertThat(netM2(script.yard())).isCloseTo(netM2(Demo.yard()), withinPercentage(1));
        assertThat(YardCheck.of(script.yard())).noneMatch(Problem::isError);
        assertThat(script.acts()).as("keys and clicks").hasSizeLessThanOrEqualTo(MOST_EVENTS - EVENTS_BESIDE_TRACING);
    }

    @Test
    @Disabled("the window has no drawing tools yet")
    void aYardIsTracedPlannedAndSavedWithFewEventsAndGivesThePlanOfTheCommandLine(@TempDir Path folder)
            throws IOException {
        Yard demo = Demo.yard();
        Path file = folder.resolve("plover.loam.json");
        Path pdf = folder.resolve("walk-plan.pdf");
        try (WindowDriver window =
                WindowDriver.open(Yard.empty(demo.name(), demo.frame()).withBackdrop(demo.backdrop()))) {
            TracingScript.of(demo).by(window);
            window.settle();
            window.willChoose(file).keys(KeyCode.SHORTCUT, KeyCode.S);
            window.willChoose(pdf).keys(KeyCode.SHORTCUT, KeyCode.P);
            window.until("both files on disk", () -> Files.exists(file) && Files.exists(pdf));
            Yard saved = YardFiles.read(file).yard().orElseThrow();
            assertThat(window.plan()).isEqualTo(CorePlanner.plan(saved, PlanOptions.USUAL));
            assertThat(window.events()).as("events by hand").isLessThanOrEqualTo(MOST_EVENTS);
        }
    }

    private static double netM2(Yard yard) {
        return Zones.of(yard).stream().mapToDouble(Zone::netAreaM2).sum();
    }
}
