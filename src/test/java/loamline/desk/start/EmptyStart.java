package loamline.desk.start;

import java.util.Objects;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import loamline.desk.DeskApp;

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
            root.getStyleClass().addAll("desk", "light");
            Scene scene = new Scene(root, 1280, 800);
            scene.getStylesheets()
                    .add(Objects.requireNonNull(DeskApp.class.getResource("/loamline/desk/desk.css"))
                            .toExternalForm());
            stage.setScene(scene);
            stage.show();
        }
    }
}
