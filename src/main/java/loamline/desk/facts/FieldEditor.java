package loamline.desk.facts;

import java.util.function.BiFunction;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * A fact that is edited in place: Enter or leaving the field sets it, Esc takes back what was typed. While a text is
 * refused the words why stand under it and the yard keeps the old value.
 */
final class FieldEditor extends VBox {
    private static final String SEVERAL = "several values";

    private final BiFunction<Field, String, String> set;
    private final Label complaint = new Label();
    private final TextField text = new TextField();
    private final ComboBox<String> choice = new ComboBox<>();
    private Field field;
    private boolean filling;

    /** @param set tries a text and gives the complaint against it; blank if it was taken */
    FieldEditor(Field field, BiFunction<Field, String, String> set) {
        this.field = field;
        this.set = set;
        getStyleClass().add("field");
        Control control = field.spec().entry().choices().isEmpty() ? text : choice;
        control.setAccessibleText(field.spec().label());
        control.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(control, Priority.ALWAYS);
        Label name = new Label(field.spec().label());
        name.getStyleClass().add("field-name");
        name.setLabelFor(control);
        if (!field.spec().help().isEmpty()) {
            control.setTooltip(new Tooltip(field.spec().help()));
            control.setAccessibleHelp(field.spec().help());
        }
        complaint.getStyleClass().add("refused");
        complaint.setWrapText(true);
        complaint.setMinHeight(USE_PREF_SIZE);
        HBox line = new HBox(8, name, control);
        line.getStyleClass().add("field-line");
        getChildren().addAll(line, complaint);
        listen();
        show(field);
    }

    private void listen() {
        choice.getItems().setAll(field.spec().entry().choices());
        choice.setOnAction(e -> commit(choice.getValue()));
        text.setOnAction(e -> commit(text.getText()));
        text.focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                commit(text.getText());
            }
        });
        text.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                fill();
                e.consume();
            }
        });
    }

    /** Shows the field as it is now; a refused text that is being corrected stays. */
    void show(Field now) {
        boolean moved = !now.shown().equals(field.shown()) || !now.keys().equals(field.keys());
        field = now;
        if (moved || complaint.getText().isEmpty()) {
            fill();
        }
    }

    private void fill() {
        filling = true;
        text.setText(field.shown());
        text.setPromptText(field.mixed() ? SEVERAL : "not known");
        choice.setPromptText(field.mixed() ? SEVERAL : "not known");
        choice.setValue(field.shown().isEmpty() ? null : field.shown());
        complain("");
        filling = false;
    }

    private void commit(String typed) {
        boolean same = typed == null || typed.equals(field.shown());
        if (!filling && (same || (field.mixed() && typed.isBlank()))) {
            complain("");
        } else if (!filling) {
            complain(set.apply(field, typed));
        }
    }

    private void complain(String words) {
        complaint.setText(words);
        complaint.setVisible(!words.isEmpty());
        complaint.setManaged(!words.isEmpty());
        getStyleClass().remove("field-refused");
        if (!words.isEmpty()) {
            getStyleClass().add("field-refused");
        }
    }
}
