package loamline.desk;

import javafx.application.Application;
import javafx.stage.Stage;
import loamline.yard.Yard;

/** The JavaFX program round the window. */
public final class DeskApp extends Application {
    private static Yard yard = Yard.empty("", loamline.place.Frame.local());
    private static String program = "";

    /** Opens the window on a yard and returns when it is closed. */
    public static void open(Yard first, String programAndVersion) {
        yard = first;
        program = programAndVersion;
        launch(DeskApp.class);
    }

    @Override
    public void start(Stage stage) {
        new Window(stage, yard, program, FileDialogs.of(stage)).show();
    }
}
