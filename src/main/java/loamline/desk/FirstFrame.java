package loamline.desk;

import javafx.animation.AnimationTimer;

/** Does something once, when a window that was just shown has been drawn. */
final class FirstFrame extends AnimationTimer {
    private final Runnable task;
    private int pulses;

    private FirstFrame(Runnable task) {
        this.task = task;
    }

    static void then(Runnable task) {
        new FirstFrame(task).start();
    }

    /** The toolkit begins a pulse only when the frame of the one before is drawn. */
    @Override
    public void handle(long now) {
        pulses++;
        if (pulses == 2) {
            stop();
            task.run();
        }
    }
}
