package loamline.desk.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import loamline.cli.Demo;
import loamline.desk.WindowDriver;
import loamline.sampling.CorePlanner;
import loamline.units.UnitSystem;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person plans the cores and takes the walk plan along. */
@Tag("window")
class PlanTest {
    private WindowDriver window;

    @BeforeEach
    void open() throws IOException {
        window = WindowDriver.open(Demo.yard());
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void theFirstPlanIsTheOneOfTheCommandLine() throws IOException {
        assertThat(window.plan()).isEqualTo(CorePlanner.plan(Demo.yard(), PlanOptions.USUAL));
    }

    @Test
    void aWiderEdgeAndAnotherPlanKeepTheCoresFartherOffTheEdges() {
        window.fill("Off edges", "5 ft").press("Plan the cores").settle();
        assertThat(window.session()
                        .history()
                        .get()
                        .now()
                        .planning()
                        .orElseThrow()
                        .edgeBufferM())
                .isEqualTo(5 * 0.3048);
        assertThat(window.plan().mainCores()).isNotEmpty();
    }

    @Test
    void anEdgeThatIsNoLengthIsRefusedInWordsAndPlansNothing() {
        Yard before = window.session().history().get().now();
        window.fill("Off edges", "-1 ft").press("Plan the cores").settle();
        assertThat(window.reads("A distance from edges is 0 or more.")).isTrue();
        assertThat(window.session().history().get().now()).isEqualTo(before);
    }

    @Test
    void unitsAndThemeSwitchAtAClick() {
        window.press("m").settle();
        assertThat(window.session().units().get()).isEqualTo(UnitSystem.METRIC);
        assertThat(window.reads("m²")).isTrue();
        assertThat(window.reads("ft²")).isFalse();
        window.press("ft").settle();
        assertThat(window.session().units().get()).isEqualTo(UnitSystem.US);
        window.press("Theme").settle();
        assertThat(window.scene().getRoot().getStyleClass()).contains("dark");
    }

    @Test
    void theWalkPlanIsSavedAtAShortcut(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("walk.pdf");
        window.willChoose(file).keys(KeyCode.SHORTCUT, KeyCode.P);
        window.until("the walk plan on disk", () -> Files.exists(file));
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }
}
