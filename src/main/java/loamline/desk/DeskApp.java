package loamline.desk;

import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Application;
import javafx.stage.Stage;
import loamline.yard.Yard;

/** The JavaFX program round the window. */
public final class DeskApp extends Application {
    private static Yard yard = Yard.empty("", loamline.place.Frame.local());
    private static Optional<Path> file = Optional.empty();
    private static String program = "";

    /**
     * Opens the window and returns when it is closed.
     *
     * @param first the yard to begin with
     * @param toOpen its file; empty for a yard without one
     */
    public static void open(Yard first, Optional<Path> toOpen, String programAndVersion) {
        yard = first;
        file = toOpen;
        program = programAndVersion;
        launch(DeskApp.class);
    }

    @Override
    public void start(Stage stage) {
        new Window(stage, yard, program).show(file);
    }
}
