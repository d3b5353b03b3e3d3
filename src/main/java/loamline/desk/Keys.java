package loamline.desk;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.input.KeyCombination;
import loamline.desk.tool.ToolChoice;

/**
 * Every key of the window, in one list: what it does in words, and, for those that work anywhere in the window, the
 * doing itself.
 */
final class Keys {
    private Keys() {}

    /** A key that the map or a field listens to itself, for the list. */
    private record Local(String group, String told, String words) {}

    private static final List<Local> LOCAL = List.of(
            new Local("Map", "F", "Show the whole yard"),
            new Local("Map", "+ −", "Nearer, farther; so does the wheel"),
            new Local("Map", "← → ↑ ↓", "Move the map, or nudge what is selected"),
            new Local("Map", "Esc", "Step back once"),
            new Local("Map", "Backspace", "Take back the last point of a drawing"),
            new Local("Map", "Delete", "Remove what is selected"),
            new Local("Facts", "Enter", "Set what was typed"),
            new Local("Facts", "Esc", "Take back what was typed"),
            new Local("Pages", "Page Up, Page Down", "The page before, the next page"));

    /** A line of the help: keys and what they do. */
    record Line(String group, String told, String words) {}

    /** All keys as lines of the help, those of a group together. */
    static List<Line> lines(List<Key> keys) {
        Stream<Line> anywhere = keys.stream().map(key -> new Line(key.group(), key.told(), key.words()));
        Stream<Line> local = LOCAL.stream().map(key -> new Line(key.group(), key.told(), key.words()));
        Stream<Line> drawing = Arrays.stream(ToolChoice.values())
                .map(tool -> new Line("Draw", String.valueOf(tool.key()), tool.label()));
        return Stream.of(anywhere, local, drawing).flatMap(lines -> lines).toList();
    }

    /** Makes the keys work in a scene. */
    static void install(List<Key> keys, Scene scene) {
        for (Key key : keys) {
            key.keys().forEach(each -> scene.getAccelerators().put(KeyCombination.valueOf(each), key.action()));
        }
    }
}
