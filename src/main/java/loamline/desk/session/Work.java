package loamline.desk.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Long work off the screen's thread.
 *
 * <p>Work of several sorts runs at once; of one sort only the newest. A job that is replaced or cancelled has its
 * thread interrupted, and whatever it still brings is dropped: a result is handed over only by the job that is
 * current at that moment, on the screen's thread. A job that fails or is cancelled leaves a {@link Job.Stopped}
 * until one of its sort is started again. All methods but {@link #tell} are called on
 * the screen's thread.
 */
public final class Work {
    /** Progress is shown in steps of this share, so that a busy job does not flood the screen. */
    private static final double SHOWN_STEP = 0.01;

    private final ReadOnlyObjectWrapper<List<Job>> running = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<Job.Stopped>> stopped = new ReadOnlyObjectWrapper<>(List.of());
    private final Map<String, Run<?>> current = new LinkedHashMap<>();
    private final Map<String, Job.Stopped> ended = new LinkedHashMap<>();
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

    /**
     * Work on given threads.
     *
     * @param onScreen runs something on the screen's thread, in the order given
     */
    public Work(ExecutorService threads, Consumer<Runnable> onScreen) {
        this.threads = threads;
        this.onScreen = onScreen;
    }

    /** As {@link #latest(String, String, String, Job.Task, Consumer)}, without progress. */
    public <T> void latest(String sort, String words, Callable<T> task, Consumer<T> then) {
        latest(sort, words, "Try again", progress -> task.call(), then);
    }

    /**
     * Does something in the background and hands its result over on the screen's thread.
     *
     * @param sort work of the same sort that still runs is given up
     * @param words what it does, for the foot
     * @param again what the button says that does it again once it was cancelled or failed
     */
    public <T> void latest(String sort, String words, String again, Job.Task<T> task, Consumer<T> then) {
        giveUp(sort);
        ended.remove(sort);
        Run<T> run = new Run<>(new Job(sort, words, OptionalDouble.empty()), again, task, then);
        current.put(sort, run);
        show();
        run.start();
    }

    /** Does something on the screen's thread; for work that has something to show before it is done. */
    public void tell(Runnable news) {
        onScreen.accept(news);
    }

    /** Gives up what runs of a sort and says so; nothing if none does. */
    public void cancel(String sort) {
        giveUp(sort).ifPresent(run -> run.stop(run.job.words() + " was cancelled; what was there before stays."));
    }

    /** Forgets that work of a sort ended without a result. */
    public void dismiss(String sort) {
        ended.remove(sort);
        show();
    }

    private Optional<Run<?>> giveUp(String sort) {
        Optional<Run<?>> older = Optional.ofNullable(current.remove(sort));
        older.ifPresent(run -> run.future.ifPresent(future -> future.cancel(true)));
        return older;
    }

    private void show() {
        running.set(current.values().stream().<Job>map(run -> run.job).toList());
        stopped.set(List.copyOf(ended.values()));
    }

    /** What runs, the longest first. */
    public ReadOnlyObjectProperty<List<Job>> running() {
        return running.getReadOnlyProperty();
    }

    /** What was cancelled or failed and not started again since. */
    public ReadOnlyObjectProperty<List<Job.Stopped>> stopped() {
        return stopped.getReadOnlyProperty();
    }

    /** One job from start to end. All fields belong to the screen's thread. */
    private final class Run<T> {
        private final String again;
        private final Job.Task<T> task;
        private final Consumer<T> then;
        private Job job;
        private Optional<Future<?>> future = Optional.empty();

        Run(Job job, String again, Job.Task<T> task, Consumer<T> then) {
            this.job = job;
            this.again = again;
            this.task = task;
            this.then = then;
        }

        void start() {
            future = Optional.of(threads.submit(this::compute));
        }

        private void compute() {
            double[] told = {-1};
            Job.Progress progress = share -> {
                if (Math.abs(share - told[0]) >= SHOWN_STEP) {
                    told[0] = share;
                    onScreen.accept(() -> reached(share));
                }
            };
            try {
                T made = task.run(progress);
                onScreen.accept(() -> end(() -> then.accept(made)));
            } catch (CancellationException e) {
                onScreen.accept(() -> end(() -> stop(job.words() + " was given up.")));
            } catch (Throwable e) { // also a full memory or stack is to be told, not to end in silence
                onScreen.accept(() -> end(() -> stop(failure(e))));
            }
        }

        private boolean isCurrent() {
            return current.get(job.sort()) == this;
        }

        private void reached(double share) {
            if (isCurrent()) {
                job = new Job(job.sort(), job.words(), OptionalDouble.of(share));
                show();
            }
        }

        /** Does what is to be done at the end, unless the job is no longer wanted. */
        private void end(Runnable last) {
            if (isCurrent()) {
                current.remove(job.sort());
                show();
                try {
                    last.run();
                } catch (RuntimeException e) {
                    stop(failure(e));
                }
            }
        }

        private void stop(String words) {
            ended.put(
                    job.sort(),
                    new Job.Stopped(
                            job.sort(), words, again, () -> latest(job.sort(), job.words(), again, task, then)));
            show();
        }

        private String failure(Throwable e) {
            String why = Optional.ofNullable(e.getMessage())
                    .map(message -> message + " (" + e.getClass().getSimpleName() + ")")
                    .orElse(e.getClass().getSimpleName());
            return job.words() + " failed: " + why
                    + ". Undo the last change or try again; what was there before stays.";
        }
    }
}
