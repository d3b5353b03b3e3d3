package loamline.desk;

import java.util.Optional;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import loamline.desk.session.Session;
import loamline.desk.store.RecentFiles;
import loamline.desk.store.Store;
import loamline.desk.theme.Icons;
import loamline.desk.theme.Look;
import loamline.yard.History;
import org.kordamp.ikonli.feather.Feather;

/** The line over the map: the yard's name, undo and redo by name, the file, print, the look, help. */
final class TopBar extends HBox {
    private final Session session;
    private final Store store;

    TopBar(Session session, Store store, Look look, YardName name, Runnable print, Runnable help) {
        super(8);
        this.session = session;
        this.store = store;
        getStyleClass().add("top");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button printing =
                Icons.button(Feather.PRINTER, "Print walk plan", "Save the walk plan as a PDF (Ctrl+P)", print);
        printing.getStyleClass().add("print-button");
        getChildren()
                .addAll(
                        name,
                        gap,
                        step(Feather.CORNER_UP_LEFT, "Undo", "Ctrl+Z", session::undo, History::undoLabel),
                        step(Feather.CORNER_UP_RIGHT, "Redo", "Ctrl+Y", session::redo, History::redoLabel),
                        file(),
                        printing,
                        Icons.button(
                                Feather.MOON, "Theme", "Switch between light and dark (Ctrl+T)", look::switchTheme),
                        Icons.button(Feather.HELP_CIRCLE, "Help", "Show the keys (F1)", help));
        getChildren().stream()
                .filter(node -> node instanceof Button && !node.getStyleClass().contains("step-back"))
                .forEach(node -> ((Button) node).setMinWidth(USE_PREF_SIZE));
    }

    /** Undo or redo, with the name of what it would take back or do again. */
    private Button step(
            Feather icon, String word, String keys, Runnable action, Function<History, Optional<String>> label) {
        Button button = new Button(word, Icons.of(icon));
        button.getStyleClass().add("step-back");
        button.setOnAction(e -> action.run());
        button.setTooltip(new Tooltip());
        Function<History, String> words = history ->
                label.apply(history).map(what -> word + " “" + what + "”").orElse(word);
        button.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> words.apply(session.history().get()), session.history()));
        button.getTooltip().textProperty().bind(button.textProperty().concat(" (" + keys + ")"));
        button.accessibleHelpProperty().bind(button.getTooltip().textProperty());
        button.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> label.apply(session.history().get()).isEmpty(), session.history()));
        return button;
    }

    private MenuButton file() {
        MenuButton file = new MenuButton("_File", Icons.of(Feather.FILE));
        file.setMinWidth(USE_PREF_SIZE);
        file.setAccessibleHelp("New, open, recent, save (Alt+F)");
        Menu recent = new Menu("Open recent");
        file.getItems()
                .setAll(
                        item("New yard", "Ctrl+N", store::newYard),
                        item("Open …", "Ctrl+O", store::open),
                        recent,
                        new SeparatorMenuItem(),
                        item("Save", "Ctrl+S", store::save),
                        item("Save as …", "Ctrl+Shift+S", store::saveAs),
                        item("Save a copy …", "", store::saveCopy));
        file.setOnShowing(e -> fill(recent));
        return file;
    }

    /** The keys are told only; the window listens to them. */
    private static MenuItem item(String words, String keys, Runnable action) {
        MenuItem item = new MenuItem(keys.isEmpty() ? words : words + "   " + keys);
        item.setOnAction(e -> action.run());
        return item;
    }

    private void fill(Menu recent) {
        recent.getItems()
                .setAll(store.recent().entries().stream().map(this::recent).toList());
        recent.setDisable(recent.getItems().isEmpty());
    }

    private MenuItem recent(RecentFiles.Entry entry) {
        MenuItem item = new MenuItem(entry.file().getFileName() + (entry.missing() ? " (not there now)" : ""));
        item.setMnemonicParsing(false);
        item.setDisable(entry.missing());
        item.setOnAction(e -> store.open(entry.file()));
        return item;
    }
}
