package loamline.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import loamline.desk.store.Dialogs;
import loamline.yard.Yard;

/** The JavaFX program round the window. */
public final class DeskApp extends Application {
    private static CompletableFuture<Optional<Yard>> first = CompletableFuture.completedFuture(Optional.empty());
    private static Optional<Path> file = Optional.empty();
    private static String program = "";

    /**
     * Opens the window and returns when it is closed.
     *
     * @param yard the yard to begin with; may still be on its way while the toolkit comes up; if it is empty, no
     *     window opens
     * @param toOpen a file to be opened in its place
     */
    public static void open(CompletableFuture<Optional<Yard>> yard, Optional<Path> toOpen, String programAndVersion) {
        first = yard;
        file = toOpen;
        program = programAndVersion;
        launch(DeskApp.class);
    }

    @Override
    public void start(Stage stage) {
        first.join()
                .ifPresentOrElse(
                        yard -> new Window(stage, yard, program, new Dialogs(stage)).show(file), Platform::exit);
    }
}
