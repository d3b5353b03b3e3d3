package loamline.desk.store;

import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Does things after a while, off the screen's thread; tests bring their own time. */
@FunctionalInterface
public interface Later {
    /** @param ms milliseconds from now, 0 or more */
    void in(long ms, Runnable task);

    /** By the clock, on two threads that do not keep the program alive: a slow disk shall not hold up the other. */
    static Later byTheClock() {
        ScheduledExecutorService threads = Executors.newScheduledThreadPool(2, task -> {
            Thread thread = new Thread(task, "loamline store");
            thread.setDaemon(true);
            return thread;
        });
        return (ms, task) -> {
            Future<?> unused = threads.schedule(task, ms, TimeUnit.MILLISECONDS);
        };
    }
}
