package loamline.desk.ui;

import static loamline.desk.WindowDriver.onScreen;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import loamline.cli.Demo;
import loamline.desk.WindowDriver;
import loamline.yard.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The window in the sizes of usual screens, light and dark, US and metric, with short and with long names. Pictures of
 * all of it go to {@code target/shots}.
 */
@Tag("window")
class LookTest {
    private static final Path SHOTS = Path.of("target", "shots");
    private static final List<int[]> SIZES =
            List.of(new int[] {1280, 720}, new int[] {1280, 800}, new int[] {1920, 1080});

    @Test
    void nothingIsCutFaintHiddenOrNameless() throws IOException {
        assertThat(complaints("demo", Demo.yard())).isEmpty();
    }

    @Test
    void nothingIsCutFaintHiddenOrNamelessWhenAllNamesHave40Characters() throws IOException {
        assertThat(complaints("long", LongNames.in(Demo.yard()))).isEmpty();
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

    /** What is wrong, and the first picture that shows it. */
    private static Map<String, String> complaints(String name, Yard yard) {
        Map<String, String> all = new LinkedHashMap<>();
        try (WindowDriver window = WindowDriver.open(yard, 1920, 1080)) {
            for (int[] size : SIZES) {
                window.resize(size[0], size[1]);
                for (String units : List.of("us", "metric")) {
                    for (String theme : List.of("light", "dark")) {
                        String shot = "%s-%dx%d-%s-%s".formatted(name, size[0], size[1], units, theme);
                        look(window, shot).forEach(complaint -> all.putIfAbsent(complaint, shot));
                        window.press("Theme");
                    }
                    window.press(units.equals("us") ? "m" : "ft");
                }
            }
        }
        return all;
    }

    private static List<String> look(WindowDriver window, String shot) {
        window.settle();
        Picture picture = onScreen(() -> Picture.of(window.scene()));
        picture.save(SHOTS.resolve(shot + ".png"));
        return onScreen(() -> new SceneCheck(window.scene()).complaints(picture));
    }
}
