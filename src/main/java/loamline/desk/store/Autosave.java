package loamline.desk.store;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Writes what changes soon after it changes. The first change starts a wait, and at its end the newest state is
 * written; so many changes at once are one write, and none waits longer than {@link #DELAY_MS} and the write before.
 *
 * @param <S> the state, immutable
 */
final class Autosave<S> {
    /** From a change to its write; with the write itself well under the second that may be lost. */
    static final long DELAY_MS = 400;

    /** From a write that failed to the next try. */
    private static final long RETRY_MS = 5000;

    /** Brings a state to the disk. */
    @FunctionalInterface
    interface Writer<S> {
        void write(S state) throws IOException;
    }

    private final Later later;
    private final Writer<S> writer;
    private final Consumer<Optional<Exception>> outcome;

    /** Held while writing, so that there is one write at a time and none after the end. */
    private final Object turn = new Object();

    private Optional<S> waiting = Optional.empty();
    private boolean ended;

    /** @param outcome is told after each write, on the thread that wrote; empty if all went well */
    Autosave(Later later, Writer<S> writer, Consumer<Optional<Exception>> outcome) {
        this.later = later;
        this.writer = writer;
        this.outcome = outcome;
    }

    void changed(S state) {
        keep(state, DELAY_MS);
    }

    private synchronized void keep(S state, long delayMs) {
        boolean idle = waiting.isEmpty();
        waiting = Optional.of(state);
        if (idle) {
            later.in(delayMs, this::write);
        }
    }

    private synchronized Optional<S> take() {
        Optional<S> taken = waiting;
        waiting = Optional.empty();
        return taken;
    }

    private synchronized boolean hasNewer() {
        return waiting.isPresent();
    }

    private void write() {
        synchronized (turn) {
            Optional<S> state = take();
            if (ended || state.isEmpty()) {
                return;
            }
            try {
                writer.write(state.get());
                outcome.accept(Optional.empty());
            } catch (IOException | RuntimeException e) {
                outcome.accept(Optional.of(e));
                if (!hasNewer()) {
                    keep(state.get(), RETRY_MS);
                }
            }
        }
    }

    /** Waits for a write that is under way; afterwards there is none. */
    void end() {
        synchronized (turn) {
            ended = true;
        }
    }
}
