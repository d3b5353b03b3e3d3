package loamline.desk.start;

import javafx.application.Application;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import loamline.desk.store.Settings;
import loamline.desk.theme.Look;

/** A program that shows an empty stage in our theme: the least that JavaFX takes. */
public final class EmptyStart {
    private EmptyStart() {}

    public static void main(String[] args) {
        FirstFrame.await(window -> true);
        Application.launch(Empty.class, args);
    }

    /** The empty stage. */
    public static final class Empty extends Application {
        @Override
        public void start(Stage stage) {
            BorderPane root = new BorderPane();
            Scene scene = new Scene(root, 1280, 800);
            new Look(new SimpleObjectProperty<>(Settings.USUAL)).dress(scene);
            stage.setScene(scene);
            stage.show();
        }
    }
}
