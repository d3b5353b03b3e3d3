package loamline.desk;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import loamline.desk.store.Settings;
import loamline.desk.theme.Words;

/** The cards that may lie on the map: the welcome and the help. */
final class Cards {
    private Cards() {}

    /** Three lines for the first time; gone for good once it is put away. */
    static Node welcome(ObjectProperty<Settings> settings) {
        VBox lines = new VBox(
                8,
                Words.wrapped("1.  Trace the yard once: over an image, or by known lengths."),
                Words.wrapped("2.  Follow the steps at the left in any order; each says what it lacks."),
                Words.wrapped("3.  Click anything on the map: its facts stand at the right, with a Why under the"
                        + " numbers. F1 lists the keys."));
        lines.getStyleClass().add("welcome");
        Card card = new Card("Welcome to Loamline", "Got it", lines);
        card.setOnAway(() -> settings.set(settings.get().welcomedNow()));
        card.visibleProperty()
                .bind(Bindings.createBooleanBinding(() -> !settings.get().welcomed(), settings));
        StackPane.setAlignment(card, Pos.TOP_LEFT);
        StackPane.setMargin(card, new Insets(12));
        return card;
    }

    /** All keys by group; hidden at first. */
    static Node help(List<Keys.Line> keys) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("keys");
        String group = "";
        int row = 0;
        for (Keys.Line key : keys) {
            if (!key.group().equals(group)) {
                group = key.group();
                Label heading = new Label(group);
                heading.getStyleClass().add("group-title");
                grid.add(heading, 0, row++, 2, 1);
            }
            Label told = new Label(key.told());
            told.getStyleClass().add("key");
            told.setMinWidth(Region.USE_PREF_SIZE);
            grid.addRow(row++, told, Words.wrapped(key.words()));
        }
        ScrollPane scroll = new ScrollPane(grid);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("keys-scroll");
        Card card = new Card("Keys", "Close", scroll);
        card.setVisible(false);
        return card;
    }
}
