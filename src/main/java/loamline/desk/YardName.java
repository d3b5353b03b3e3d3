package loamline.desk;

import javafx.beans.InvalidationListener;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import loamline.desk.session.Session;
import loamline.yard.Yard;

/** The yard's name; a double click or F2 edits it in place, Enter sets it, Esc leaves it. */
final class YardName extends StackPane {
    private static final String NONE = "Yard without a name";

    private final Session session;
    private final Label label = new Label();
    private final TextField field = new TextField();

    YardName(Session session) {
        this.session = session;
        getStyleClass().add("yard-name-box");
        label.getStyleClass().add("yard-name");
        label.setMaxWidth(Double.MAX_VALUE);
        label.setTooltip(new Tooltip());
        label.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                edit();
            }
        });
        field.setAccessibleText("Name of the yard");
        field.setPromptText(NONE);
        field.setOnAction(e -> take());
        field.focusedProperty().addListener((o, before, now) -> {
            if (!now && isEditing()) {
                take();
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                close();
                e.consume();
            }
        });
        InvalidationListener changed = o -> show();
        session.shown().addListener(changed);
        show();
        close();
    }

    /** Begins to edit. */
    void edit() {
        field.setText(session.shown().get().name());
        getChildren().setAll(field);
        field.requestFocus();
        field.selectAll();
    }

    private boolean isEditing() {
        return getChildren().contains(field);
    }

    private void take() {
        close();
        Yard yard = session.history().get().now();
        String name = field.getText().strip();
        session.edit("name the yard “" + name + "”", yard.withName(name));
    }

    private void close() {
        getChildren().setAll(label);
    }

    private void show() {
        String name = session.shown().get().name();
        label.setText(name.isBlank() ? NONE : name);
        label.getTooltip().setText(label.getText() + " (F2 renames)");
    }
}
