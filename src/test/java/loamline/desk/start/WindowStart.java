package loamline.desk.start;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.stage.Window;
import loamline.Main;
import loamline.cli.Demo;
import loamline.cli.LoamlineCommand;
import loamline.desk.DeskApp;
import loamline.desk.map.MapProbe;
import loamline.desk.map.MapView;
import loamline.yard.Yard;

/** Our program on the demo yard; without a display, which the program itself refuses, its window alone. */
public final class WindowStart {
    private WindowStart() {}

    public static void main(String[] args) {
        FirstFrame.await(WindowStart::isDone);
        if (GraphicsEnvironment.isHeadless()) {
            DeskApp.open(CompletableFuture.supplyAsync(WindowStart::demo), Optional.empty(), LoamlineCommand.program());
        } else {
            Main.main(new String[0]);
        }
    }

    private static Optional<Yard> demo() {
        try {
            return Optional.of(Demo.yard());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isDone(Window window) {
        return window.getScene().getRoot().lookup(".map") instanceof MapView map
                && MapProbe.isCurrent(map)
                && MapProbe.session(map)
                        .results()
                        .get()
                        .filter(r -> r.plan().isPresent())
                        .isPresent();
    }
}
