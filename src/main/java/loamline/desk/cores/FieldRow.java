package loamline.desk.cores;

import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A name, a control, and beneath them what is wrong with what was written. */
final class FieldRow extends VBox {
    private static final double CONTROL_PX = 96;

    private final Control control;
    private final Label complaint = new Label();

    FieldRow(String name, Control control) {
        super(2);
        this.control = control;
        Label label = new Label(name);
        label.setLabelFor(control);
        label.setMinWidth(USE_PREF_SIZE);
        control.setAccessibleText(name);
        control.setMinWidth(CONTROL_PX);
        control.setMaxWidth(CONTROL_PX);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox line = new HBox(label, gap, control);
        line.setAlignment(javafx.geometry.Pos.BASELINE_LEFT);
        complaint.getStyleClass().add("refused");
        complaint.setWrapText(true);
        complaint.setMinHeight(USE_PREF_SIZE);
        complaint.managedProperty().bind(complaint.textProperty().isNotEmpty());
        complaint.visibleProperty().bind(complaint.managedProperty());
        getChildren().addAll(line, complaint);
    }

    Control control() {
        return control;
    }

    /** @param words blank if nothing is wrong */
    void complain(String words) {
        complaint.setText(words);
    }
}
