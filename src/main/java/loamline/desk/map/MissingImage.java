package loamline.desk.map;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** Says in a quiet sentence that the image cannot be shown, with a way to find it. */
final class MissingImage extends HBox {
    private final Label words = new Label();

    MissingImage(Runnable find) {
        super(12);
        getStyleClass().addAll("map-card", "map-missing");
        setAlignment(Pos.CENTER_LEFT);
        words.setWrapText(true);
        words.setMinWidth(0);
        Button button = new Button("Find it …");
        button.setAccessibleHelp("Choose the image file");
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(e -> find.run());
        getChildren().addAll(words, button);
        say("");
    }

    void say(String trouble) {
        words.setText(trouble);
        setVisible(!trouble.isEmpty());
        setManaged(!trouble.isEmpty());
    }
}
