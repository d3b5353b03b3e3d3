package loamline.desk;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.tool.Command;
import loamline.desk.tool.Commands;
import loamline.desk.tool.Picking;
import loamline.desk.tool.PointerTool;
import loamline.desk.tool.ToolChoice;
import loamline.desk.tool.ToolHost;
import loamline.geometry.Point;
import loamline.yard.Feature;

/** How the commands of the editing tools are given: by keys, by letters over the map, by the right-click menu. */
final class Editing {
    /** Letter that puts any tool down. */
    private static final char POINTER = 'V';

    private final ToolHost host;

    Editing(ToolHost host) {
        this.host = host;
    }

    /** The commands that have a key which works anywhere in the window. */
    List<Key> keys() {
        return Commands.all().stream()
                .filter(command -> command.shortcut().startsWith("Ctrl+"))
                .map(command -> Key.of("Edit", portable(command), command.label(), () -> host.run(command)))
                .toList();
    }

    private static String portable(Command command) {
        return command.shortcut()
                .replace("Ctrl", "Shortcut")
                .replace("[", "Open_Bracket")
                .replace("]", "Close_Bracket");
    }

    /** The same keys for a menu, which tells a quoted character as it is and a key by its name. */
    private static String told(Command command) {
        return command.shortcut().replace("Ctrl", "Shortcut").replaceAll("[\\[\\]]", "'$0'");
    }

    /** A letter typed over the map that the tool in hand left alone: takes up a tool. */
    boolean letter(char typed) {
        char letter = Character.toUpperCase(typed);
        Optional<ToolChoice> choice = ToolChoice.of(letter);
        Optional<Command> command = Commands.all().stream()
                .filter(each -> each.shortcut().equals(String.valueOf(letter)))
                .findFirst();
        choice.ifPresent(chosen -> host.take(chosen.tool()));
        command.ifPresent(host::run);
        if (letter == POINTER) {
            host.putDown();
        }
        return choice.isPresent() || command.isPresent() || letter == POINTER;
    }

    /**
     * What a click selects that the tool left alone, and a right click: what is drawn there while the pointer is in
     * hand, else what was computed there. A feature that is selected along with others stays so.
     */
    Selection pick(Point place, double reachM, Results results) {
        Optional<Feature> drawn = host.current().get() instanceof PointerTool
                ? Picking.at(results.yard(), place, reachM)
                : Optional.empty();
        Selection now = host.context().selection();
        return drawn.map(feature ->
                        now.keys().contains(feature.key()) ? now : Selection.ofFeatures(List.of(feature.key())))
                .orElseGet(() -> Selection.at(place, reachM, results));
    }

    /** What can be done to what is selected; changes of kind in a menu of their own. */
    Optional<ContextMenu> menu() {
        ContextMenu menu = new ContextMenu();
        Menu kinds = new Menu("Change to");
        for (Command command : Commands.all()) {
            MenuItem item = item(command);
            if (Commands.isChangeOfKind(command)) {
                item.setText(command.label().replaceFirst("Change to ", ""));
                kinds.getItems().add(item);
            } else {
                menu.getItems().add(item);
            }
        }
        kinds.setDisable(kinds.getItems().stream().allMatch(MenuItem::isDisable));
        menu.getItems().addAll(new SeparatorMenuItem(), kinds);
        return Optional.of(menu);
    }

    private MenuItem item(Command command) {
        MenuItem item = new MenuItem(command.label());
        item.setOnAction(e -> host.run(command));
        item.setDisable(!command.isEnabled(host.context()));
        if (!command.shortcut().isEmpty()) {
            item.setAccelerator(KeyCombination.valueOf(told(command)));
        }
        return item;
    }
}
