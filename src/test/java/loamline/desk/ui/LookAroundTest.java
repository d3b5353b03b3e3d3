package loamline.desk.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import loamline.cli.Demo;
import loamline.desk.WindowDriver;
import loamline.desk.session.Selection;
import loamline.geometry.Point;
import loamline.sampling.CorePlan.PlannedCore;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A person opens a yard and looks around in it. */
@Tag("window")
class LookAroundTest {
    private static final Point BACK_LAWN = new Point(16, 32);

    /** The pointer stands on whole pixels. */
    private static final double PIXEL = 1.5;

    private static WindowDriver window;

    @BeforeAll
    static void open() throws IOException {
        window = WindowDriver.open(Demo.yard());
    }

    @AfterAll
    static void close() {
        window.close();
    }

    @BeforeEach
    void begin() {
        window.click(BACK_LAWN).keys(KeyCode.F).keys(KeyCode.ESCAPE).settle();
    }

    @Test
    void theWindowIsCalledAfterTheYard() {
        assertThat(window.title()).startsWith("Plover Court 7");
    }

    @Test
    void theWheelZoomsAtThePointer() {
        Point2D before = window.onMap(BACK_LAWN);
        double scale = window.metresPerPx();
        window.wheel(2, BACK_LAWN).settle();
        assertThat(window.metresPerPx()).isLessThan(scale);
        assertThat(window.onMap(BACK_LAWN).distance(before)).isLessThan(PIXEL);
    }

    @Test
    void aDragMovesTheGroundAlong() {
        Point2D before = window.onMap(BACK_LAWN);
        window.drag(BACK_LAWN, BACK_LAWN.plus(4, -4)).settle();
        Point2D moved = window.onMap(BACK_LAWN).subtract(before);
        assertThat(moved.getX()).isCloseTo(4 / window.metresPerPx(), within(PIXEL));
        assertThat(moved.getY()).isCloseTo(4 / window.metresPerPx(), within(PIXEL));
    }

    @Test
    void fShowsTheWholeYardAgain() {
        double scale = window.metresPerPx();
        window.wheel(3, BACK_LAWN).keys(KeyCode.F).settle();
        assertThat(window.metresPerPx()).isEqualTo(scale);
    }

    @Test
    void aClickOnACoreShowsItsFactsAndEscapePutsItDown() {
        PlannedCore core = window.plan().mainCores().get(0);
        window.click(core.at()).settle();
        assertThat(window.session().selection().get()).isEqualTo(Selection.ofCore(core.id()));
        assertThat(window.reads("Core " + core.id())).isTrue();
        window.keys(KeyCode.ESCAPE).settle();
        assertThat(window.session().selection().get()).isEqualTo(Selection.NOTHING);
    }

    @Test
    void eventsAreCountedAsThePersonMakesThem() {
        int before = window.events();
        window.click(BACK_LAWN)
                .drag(BACK_LAWN, BACK_LAWN.plus(1, 1))
                .wheel(-2, BACK_LAWN)
                .keys(KeyCode.SHORTCUT, KeyCode.DIGIT0)
                .type("34.5");
        assertThat(window.events() - before).isEqualTo(1 + 1 + 2 + 2 + 4);
    }
}
