package loamline.desk.session;

import java.util.OptionalDouble;

/**
 * Work in the background while it runs.
 *
 * @param sort its sort, by which it is cancelled
 * @param words what it does, as in "Planning the cores"
 * @param share how much of it is done, 0 to 1; empty where that is not known
 */
public record Job(String sort, String words, OptionalDouble share) {
    /** Tells how far a job is; may be called from the job's thread as often as it likes. */
    @FunctionalInterface
    public interface Progress {
        /** @param share 0 to 1 */
        void at(double share);
    }

    /** What a job computes; throws {@link java.util.concurrent.CancellationException} when given up. */
    @FunctionalInterface
    public interface Task<T> {
        T run(Progress progress) throws Exception;
    }

    /**
     * Work that ended without a result.
     *
     * @param sort its sort
     * @param words what happened and what to do, in a sentence or two
     * @param again what the button says that does it again, as in "Plan again"
     * @param redo does it again
     */
    public record Stopped(String sort, String words, String again, Runnable redo) {}
}
