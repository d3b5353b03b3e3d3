package loamline.cancel;

import java.util.concurrent.CancellationException;

/**
 * Lets long computing be given up by the JDK's own means: whoever no longer wants the result interrupts the thread.
 *
 * <p>A loop that may run for more than a few milliseconds calls {@link #check} at its head. The call costs a few
 * nanoseconds, so it may stand in any loop but the innermost. It decides only whether there is a result, never
 * which.
 */
public final class Cancellation {
    private Cancellation() {}

    /**
     * Returns at once if the thread was not interrupted. Its interrupted status stays as it is, so every loop up the
     * stack stops as well.
     *
     * @throws CancellationException if it was
     */
    public static void check() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the result is no longer wanted");
        }
    }
}
