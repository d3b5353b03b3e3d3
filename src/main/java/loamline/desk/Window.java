package loamline.desk;

import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import loamline.desk.session.Session;
import loamline.desk.session.Work;
import loamline.desk.store.Asking;
import loamline.desk.store.Desk;
import loamline.desk.store.Home;
import loamline.desk.store.Later;
import loamline.desk.theme.Look;
import loamline.yard.Yard;

/** The window on the screen: it comes up bare, and is furnished and computes once it is seen. */
final class Window {
    private static final double WIDTH_PX = 1280;
    private static final double HEIGHT_PX = 800;
    private static final double LEAST_WIDTH_PX = 1000;
    private static final double LEAST_HEIGHT_PX = 640;

    private final Stage stage;
    private final String program;
    private final Asking asking;
    private final Session session;
    private final Desk desk;
    private final Look look;
    private final Shell shell;

    Window(Stage stage, Yard first, String program, Asking asking) {
        this.stage = stage;
        this.program = program;
        this.asking = asking;
        session = Session.resting(first, Work.ofWindow());
        desk = new Desk(session, Home.ofUser(), asking, Later.byTheClock(), Platform::runLater);
        look = new Look(desk.settings());
        shell = new Shell(first.name(), desk.settings().get().folded().contains(Interior.FACTS));
        session.begin();
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        Scene scene = new Scene(shell, Math.min(WIDTH_PX, screen.getWidth()), Math.min(HEIGHT_PX, screen.getHeight()));
        look.dress(scene);
        stage.setScene(scene);
        stage.setMinWidth(LEAST_WIDTH_PX);
        stage.setMinHeight(LEAST_HEIGHT_PX);
        stage.setTitle(first.name());
    }

    /**
     * Shows the window; what is in it follows when its first frame is drawn.
     *
     * @param file a yard to open in the place of the first
     */
    void show(Optional<Path> file) {
        stage.show();
        FirstFrame.then(() -> furnish(file));
    }

    private void furnish(Optional<Path> file) {
        desk.start(file);
        stage.titleProperty().bind(desk.store().title());
        stage.focusedProperty().addListener((o, before, now) -> desk.store().lookAtDisk());
        stage.setOnCloseRequest(request -> {
            if (!desk.close()) {
                request.consume();
            }
        });
        new Interior(session, desk, look, program, asking).moveInto(shell);
    }
}
