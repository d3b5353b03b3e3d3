package loamline.desk.session;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** Long work off the screen's thread: what runs is named, and newer work of a sort takes the place of older. */
public final class Work {
    private final ReadOnlyStringWrapper running = new ReadOnlyStringWrapper("");
    private final Map<String, Future<?>> jobs = new HashMap<>();
    private final ExecutorService threads;
    private final Consumer<Runnable> onScreen;

    /** Work of the running window. */
    public static Work ofWindow() {
        ExecutorService threads = Executors.newCachedThreadPool(task -> {
            Thread thread = new Thread(task, "loamline work");
            thread.setDaemon(true);
            return thread;
        });
        return new Work(threads, Platform::runLater);
    }

    public Work(ExecutorService threads, Consumer<Runnable> onScreen) {
        this.threads = threads;
        this.onScreen = onScreen;
    }

    /**
     * Does something in the background and hands its result over on the screen's thread.
     *
     * @param sort work of the same sort that still runs is given up
     * @param words what it does, for the foot
     */
    public <T> void latest(String sort, String words, Callable<T> task, Consumer<T> then) {
        Future<?> older = jobs.get(sort);
        if (older != null) {
            older.cancel(true);
        }
        running.set(words);
        jobs.put(sort, threads.submit(() -> {
            T made = task.call();
            boolean current = !Thread.currentThread().isInterrupted();
            if (current) {
                onScreen.accept(() -> {
                    running.set("");
                    then.accept(made);
                });
            }
            return made;
        }));
    }

    /** What runs, in words; blank if nothing does. */
    public ReadOnlyStringProperty running() {
        return running.getReadOnlyProperty();
    }
}
