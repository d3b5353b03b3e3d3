package loamline.desk.facts;

import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import loamline.desk.theme.Words;

/** A fact on a line: name, number flush right, unit in soft ink; behind Why, the account of the number. */
public final class RowView extends VBox {
    private final Label value = new Label();
    private final Label unit = new Label();
    private final VBox account = new VBox(6);
    private Row row;

    public RowView(Row row) {
        this.row = row;
        getStyleClass().add("fact");
        Label name = Words.wrapped(row.name());
        name.setMinWidth(0);
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        value.getStyleClass().add("fact-value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        unit.getStyleClass().add("soft");
        unit.setMinWidth(Region.USE_PREF_SIZE);
        HBox line = new HBox(4, name, value, unit);
        line.getStyleClass().add("fact-line");
        getChildren().add(line);
        if (row.why().isPresent()) {
            line.getChildren().add(why(row.name()));
            account.getStyleClass().add("why");
        }
        show(row);
    }

    private ToggleButton why(String name) {
        ToggleButton why = new ToggleButton("Why");
        why.getStyleClass().add("why-button");
        why.setMinWidth(Region.USE_PREF_SIZE);
        why.setAccessibleText("Why " + name);
        why.setAccessibleHelp("Shows how this number came about");
        why.selectedProperty().addListener((o, before, now) -> {
            if (now) {
                getChildren().add(account);
                explain();
            } else {
                getChildren().remove(account);
            }
        });
        return why;
    }

    void show(Row changed) {
        row = changed;
        value.setText(row.value());
        value.setWrapText(row.why().isEmpty() && row.unit().isEmpty());
        unit.setText(row.unit());
        unit.setManaged(!row.unit().isEmpty());
        if (getChildren().contains(account)) {
            explain();
        }
    }

    private void explain() {
        row.why()
                .ifPresent(why -> account.getChildren()
                        .setAll(
                                Words.wrapped(why.formula(), "formula"),
                                Words.wrapped(why.inputs(), "soft"),
                                Words.wrapped(why.note()),
                                Words.wrapped(why.sources(), "soft")));
    }
}
