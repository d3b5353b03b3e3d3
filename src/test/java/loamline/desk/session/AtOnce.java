package loamline.desk.session;

import java.util.List;
import java.util.concurrent.AbstractExecutorService;
import java.util.concurrent.TimeUnit;

/** Runs every task where it is given, before it returns: background work without a background. */
public final class AtOnce extends AbstractExecutorService {
    /** Work that is done as soon as it is asked for. */
    public static Work work() {
        return new Work(new AtOnce(), Runnable::run);
    }

    @Override
    public void execute(Runnable task) {
        task.run();
    }

    @Override
    public void shutdown() {
        // nothing runs
    }

    @Override
    public List<Runnable> shutdownNow() {
        return List.of();
    }

    @Override
    public boolean isShutdown() {
        return false;
    }

    @Override
    public boolean isTerminated() {
        return false;
    }

    @Override
    public boolean awaitTermination(long timeout, TimeUnit unit) {
        return true;
    }
}
