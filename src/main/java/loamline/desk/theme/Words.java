package loamline.desk.theme;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Labels that show all their words, on as many lines as it takes. */
public final class Words {
    private Words() {}

    /** @param styles style classes */
    public static Label wrapped(String text, String... styles) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(styles);
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        return label;
    }
}
