package loamline.desk.start;

import java.util.function.Predicate;
import javafx.animation.AnimationTimer;
import javafx.collections.ListChangeListener;
import javafx.stage.Window;

/** Writes {@link #FRAME} when the first window's first frame is drawn, and {@link #DONE} when the window is done. */
final class FirstFrame extends AnimationTimer {
    static final String FRAME = "first frame";
    static final String DONE = "done";

    private final Window window;
    private final Predicate<Window> isDone;
    private int pulses;

    private FirstFrame(Window window, Predicate<Window> isDone) {
        this.window = window;
        this.isDone = isDone;
    }

    /** Waits for the first window; to be called before JavaFX starts. */
    static void await(Predicate<Window> isDone) {
        Window.getWindows().addListener((ListChangeListener<Window>) change -> {
            if (change.next() && change.wasAdded()) {
                new FirstFrame(change.getAddedSubList().get(0), isDone).start();
            }
        });
    }

    /** The toolkit begins a pulse only when the frame of the one before is drawn. */
    @Override
    public void handle(long now) {
        pulses++;
        if (pulses == 2) {
            System.out.println(FRAME);
        }
        if (pulses >= 2 && isDone.test(window)) {
            System.out.println(DONE);
            Runtime.getRuntime().halt(0);
        }
    }
}
