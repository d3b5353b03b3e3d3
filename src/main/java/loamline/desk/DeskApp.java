package loamline.desk;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import loamline.yard.Yard;

/** The JavaFX program round the window. */
public final class DeskApp extends Application {
    private static CompletableFuture<Optional<Yard>> first = CompletableFuture.completedFuture(Optional.empty());
    private static String program = "";

    /**
     * Opens the window on a yard and returns when it is closed.
     *
     * @param yard may still be on its way while the toolkit comes up; if it is empty, no window opens
     */
    public static void open(CompletableFuture<Optional<Yard>> yard, String programAndVersion) {
        first = yard;
        program = programAndVersion;
        launch(DeskApp.class);
    }

    @Override
    public void start(Stage stage) {
        first.join()
                .ifPresentOrElse(
                        yard -> new Window(stage, yard, program, FileDialogs.of(stage)).show(), Platform::exit);
    }
}
