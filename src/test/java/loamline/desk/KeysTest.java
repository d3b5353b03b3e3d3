package loamline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loamline.desk.Keys.Line;
import loamline.desk.tool.ToolChoice;
import org.junit.jupiter.api.Test;

class KeysTest {
    private static final List<Key> SOME = List.of(
            Key.of("Edit", "Shortcut+Y Shortcut+Shift+Z", "Redo", () -> {}),
            Key.of("Window", "Shortcut+Equals", "Larger text", () -> {}),
            Key.of("Window", "F1", "Show or hide the keys", () -> {}));

    @Test
    void theHelpTellsTheFirstOfTheKeysAsPeopleSayIt() {
        assertThat(Keys.lines(SOME).subList(0, 3)).extracting(Line::told).containsExactly("Ctrl+Y", "Ctrl++", "F1");
    }

    @Test
    void theHelpTellsEveryDrawingTool() {
        assertThat(Keys.lines(SOME).stream()
                        .filter(line -> line.group().equals("Draw"))
                        .map(Line::words))
                .hasSize(ToolChoice.values().length)
                .contains("Turf", "Keep-away spot");
    }

    @Test
    void linesOfAGroupStandTogether() {
        List<String> groups = Keys.lines(SOME).stream().map(Line::group).toList();
        long changes = java.util.stream.IntStream.range(1, groups.size())
                .filter(i -> !groups.get(i).equals(groups.get(i - 1)))
                .count();
        assertThat(changes).isEqualTo(groups.stream().distinct().count() - 1);
    }
}
