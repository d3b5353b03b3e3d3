package loamline.desk;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** A sheet of paper over the map, put away by its button or Esc; what lies under it goes on. */
final class Card extends BorderPane {
    private final Button away = new Button();
    private Runnable onAway = () -> setVisible(false);

    Card(String title, String awayWords, Node content) {
        getStyleClass().add("card");
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        Label heading = new Label(title);
        heading.getStyleClass().add("card-title");
        heading.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(heading, Priority.ALWAYS);
        away.setText(awayWords);
        away.setAccessibleHelp(awayWords + ": " + title + " (Esc)");
        away.setOnAction(e -> onAway.run());
        HBox head = new HBox(8, heading, away);
        head.getStyleClass().add("card-head");
        setTop(head);
        setCenter(content);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                onAway.run();
                e.consume();
            }
        });
        managedProperty().bind(visibleProperty());
    }

    /** What is done to put the card away; without it the card hides itself. */
    void setOnAway(Runnable changed) {
        onAway = changed;
    }

    @Override
    public void requestFocus() {
        away.requestFocus();
    }
}
