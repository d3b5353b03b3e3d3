package loamline.desk.ui;

import static loamline.desk.WindowDriver.onScreen;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.stage.Window;
import loamline.cli.Demo;
import loamline.desk.WindowDriver;
import loamline.desk.session.Selection;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The window in every step, in the sizes of usual screens, light and dark, US and metric, with short and with long
 * names; and in the states that a person meets once in a while. Pictures of all of it go to {@code target/shots}.
 *
 * <p>Of the 96 combinations of step, size, theme, units and names, 12 are seen: in them each value of a factor meets
 * each value of every other, so that whatever two factors do to each other is seen at least once.
 */
@Tag("window")
class LookTest {
    private static final Path SHOTS = Path.of("target", "shots");
    private static final List<String> STEPS =
            List.of("trace", "zones", "cores", "log", "sun", "water", "soil", "season", "print");
    private static final List<KeyCode> STEP_KEYS = List.of(
            KeyCode.DIGIT1,
            KeyCode.DIGIT2,
            KeyCode.DIGIT3,
            KeyCode.DIGIT4,
            KeyCode.DIGIT5,
            KeyCode.DIGIT6,
            KeyCode.DIGIT7,
            KeyCode.DIGIT8,
            KeyCode.DIGIT9);
    private static final List<int[]> SIZES =
            List.of(new int[] {1280, 800}, new int[] {1920, 1080}, new int[] {1280, 720});

    /** Higher rows make the menu of all commands higher than a small screen. */
    private static final int MENU_ROW_PX = 28;

    /** What is seen together: positions of step and size, and which of two themes, units and names. */
    private record View(int step, int size, boolean dark, boolean metric, boolean longNames) {
        /** Step and size are seen in full product; the others alternate over it, each in a way of its own. */
        static List<View> all() {
            List<View> all = new ArrayList<>();
            for (int size = 0; size < SIZES.size(); size++) {
                for (int step = 0; step < STEPS.size(); step++) {
                    int half = step / 2;
                    all.add(new View(step, size, isOdd(step + size), isOdd(half + size), isOdd(step + half + size)));
                }
            }
            return all;
        }

        private static boolean isOdd(int number) {
            return number % 2 == 1;
        }

        String name() {
            int[] px = SIZES.get(size);
            return "%s-%dx%d-%s-%s-%s"
                    .formatted(
                            STEPS.get(step),
                            px[0],
                            px[1],
                            dark ? "dark" : "light",
                            metric ? "metric" : "us",
                            longNames ? "long" : "demo");
        }

        List<Object> values() {
            return List.of("step " + step, "size " + size, "dark " + dark, "metric " + metric, "long " + longNames);
        }
    }

    @Test
    void theViewsPairEachValueOfAFactorWithEachOfTheOthers() {
        Set<Set<Object>> pairs = new LinkedHashSet<>();
        for (View view : View.all()) {
            view.values()
                    .forEach(one -> view.values().stream()
                            .filter(other -> !other.equals(one))
                            .forEach(other -> pairs.add(Set.of(one, other))));
        }
        int ofStepAndSize = STEPS.size() * SIZES.size();
        int ofThoseAndTwos = (STEPS.size() + SIZES.size()) * 3 * 2;
        int ofTwos = 3 * 2 * 2;
        assertThat(pairs).hasSize(ofStepAndSize + ofThoseAndTwos + ofTwos);
    }

    @Test
    void nothingIsCutFaintHiddenOrNameless() throws IOException {
        assertThat(complaints(Demo.yard(), false)).isEmpty();
    }

    @Test
    void nothingIsCutFaintHiddenOrNamelessWhenAllNamesHave40Characters() throws IOException {
        assertThat(complaints(LongNames.in(Demo.yard()), true)).isEmpty();
    }

    /** What is wrong, and the first picture that shows it. */
    private static Map<String, String> complaints(Yard yard, boolean longNames) {
        Map<String, String> all = new LinkedHashMap<>();
        try (WindowDriver window = WindowDriver.open(yard, 1920, 1080)) {
            for (View view : View.all()) {
                if (view.longNames() == longNames) {
                    turnTo(window, view);
                    if (STEPS.get(view.step()).equals("print")) {
                        window.until("the first page", () -> window.reads("Page 1 of "));
                    }
                    look(window, view.name()).forEach(complaint -> all.putIfAbsent(complaint, view.name()));
                }
            }
        }
        return all;
    }

    private static void turnTo(WindowDriver window, View view) {
        int[] px = SIZES.get(view.size());
        window.resize(px[0], px[1]);
        window.keys(KeyCode.SHORTCUT, STEP_KEYS.get(view.step()));
        if (onScreen(() -> isDark(window)) != view.dark()) {
            window.keys(KeyCode.SHORTCUT, KeyCode.T);
        }
        if (onScreen(() -> window.session().units().get() == UnitSystem.METRIC) != view.metric()) {
            window.keys(KeyCode.SHORTCUT, KeyCode.U);
        }
    }

    private static boolean isDark(WindowDriver window) {
        return window.scene().getRoot().getStyleClass().contains("dark");
    }

    @Test
    void theStatesMetOnceInAWhileAreAsWhole() throws IOException {
        Yard demo = Demo.yard();
        Map<String, String> all = new LinkedHashMap<>();
        try (WindowDriver window = WindowDriver.openFirst(withProblems(demo), 1280, 800)) {
            turnTo(window, new View(2, 0, false, false, false));
            see(window, "welcome", all);
            window.press("Got it").keys(KeyCode.SHORTCUT, KeyCode.E);
            see(window, "problems", all);
            window.keys(KeyCode.ESCAPE).keys(KeyCode.F1);
            see(window, "help", all);
            window.keys(KeyCode.F1).keys(KeyCode.SHORTCUT, KeyCode.DIGIT1);
            select(window, demo, Kind.BUILDING);
            see(window, "building", all);
            seeTheMenu(window);
            select(window, demo, Kind.TURF);
            window.keys(KeyCode.SHORTCUT, KeyCode.DIGIT2);
            see(window, "zone", all);
            drawABed(window);
            see(window, "drawing", all);
            window.keys(KeyCode.ESCAPE)
                    .keys(KeyCode.ESCAPE)
                    .keys(KeyCode.ESCAPE)
                    .keys(KeyCode.ESCAPE)
                    .keys(KeyCode.SHORTCUT, KeyCode.DIGIT5)
                    .press("Shade at an hour");
            see(window, "glare", all);
            window.keys(KeyCode.SHORTCUT, KeyCode.N);
            for (int step = 0; step < STEPS.size(); step++) {
                turnTo(window, new View(step, 0, step % 2 == 1, false, false));
                see(window, "empty-" + STEPS.get(step), all);
            }
        }
        assertThat(all).isEmpty();
    }

    /** A bed that crosses itself, on the lawn. */
    private static Yard withProblems(Yard yard) {
        Feature bed = first(yard, Kind.BED).withShape(Outline.of(6, 24, 10, 27, 10, 24, 6, 27));
        List<Feature> features = new ArrayList<>(yard.features());
        features.replaceAll(feature -> feature.key().equals(bed.key()) ? bed : feature);
        return yard.withFeatures(features);
    }

    private static Feature first(Yard yard, Kind kind) {
        return yard.features().stream()
                .filter(feature -> feature.kind().filter(kind::equals).isPresent())
                .findFirst()
                .orElseThrow();
    }

    private static void select(WindowDriver window, Yard yard, Kind kind) {
        onScreen(() -> {
            window.session()
                    .selection()
                    .set(Selection.ofFeatures(List.of(first(yard, kind).key())));
            return kind;
        });
    }

    private static void seeTheMenu(WindowDriver window) {
        Picture menu = onScreen(() -> {
            window.map()
                    .fireEvent(new ContextMenuEvent(
                            ContextMenuEvent.CONTEXT_MENU_REQUESTED, 300, 100, 600, 100, true, null));
            ContextMenu opened = (ContextMenu) Window.getWindows().stream()
                    .filter(ContextMenu.class::isInstance)
                    .findFirst()
                    .orElseThrow();
            Picture picture = Picture.of(opened.getScene());
            opened.hide();
            return picture;
        });
        menu.save(SHOTS.resolve("menu.png"));
        int rows = Math.round((float) menu.image().getHeight() / MENU_ROW_PX);
        assertThat(rows).as("rows of %d px", MENU_ROW_PX).isLessThanOrEqualTo(19);
    }

    private static void drawABed(WindowDriver window) {
        window.keys(KeyCode.SHORTCUT, KeyCode.DIGIT1);
        onScreen(() -> {
            window.map().requestFocus();
            return window;
        });
        window.keys(KeyCode.B)
                .click(new Point(6, 20))
                .click(new Point(10, 20))
                .click(new Point(10, 23))
                .type("3 ft");
    }

    @Test
    void theTabKeyReachesEveryControl() throws IOException {
        try (WindowDriver window = WindowDriver.open(Demo.yard())) {
            List<Node> wanted = onScreen(() -> new SceneCheck(window.scene()).reachable());
            Set<Node> reached = new LinkedHashSet<>();
            for (int i = 0; i <= wanted.size(); i++) {
                reached.add(onScreen(() -> window.scene().getFocusOwner()));
                window.keys(KeyCode.TAB);
            }
            assertThat(reached).containsAll(wanted);
        }
    }

    private static void see(WindowDriver window, String shot, Map<String, String> all) {
        look(window, shot).forEach(complaint -> all.putIfAbsent(complaint, shot));
    }

    private static List<String> look(WindowDriver window, String shot) {
        window.settle();
        Picture picture = onScreen(() -> Picture.of(window.scene()));
        picture.save(SHOTS.resolve(shot + ".png"));
        return onScreen(() -> new SceneCheck(window.scene()).complaints(picture));
    }
}
