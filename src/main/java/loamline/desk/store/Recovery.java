package loamline.desk.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import loamline.files.AtomicFiles;
import loamline.files.ProjectFile;
import loamline.files.YardFiles;

/**
 * Keeps the state of the window in a recovery file while the program runs, and finds what the last run left behind.
 * The file is replaced whole at each write and leaves no backups; the user's own files are not touched.
 */
final class Recovery {
    private final Slot slot;
    private final Autosave<Snapshot> autosave;

    private Recovery(Slot slot, Later later, Consumer<Optional<Exception>> outcome) {
        this.slot = slot;
        autosave = new Autosave<>(
                later, snapshot -> AtomicFiles.write(slot.file(), ProjectFile.write(snapshot.asYard())), outcome);
    }

    /**
     * Begins to keep a program's state.
     *
     * @param outcome is told after each write, on the thread that wrote; empty if all went well
     * @return empty if so many programs run that none is left
     * @throws IOException if the folder cannot be used
     */
    static Optional<Recovery> begin(Path folder, Later later, Consumer<Optional<Exception>> outcome)
            throws IOException {
        return Slot.claim(folder).map(slot -> new Recovery(slot, later, outcome));
    }

    /**
     * What a run that did not end cleanly left behind.
     *
     * @param state empty if it cannot be read
     * @param aside where the file is that cannot be read
     */
    record Found(Optional<Snapshot> state, Optional<Path> aside) {}

    /** What was left behind, to be asked before the first change; empty after a clean end. */
    Optional<Found> found() throws IOException {
        if (!slot.wasLeftBehind()) {
            return Optional.empty();
        }
        Optional<Snapshot> state = YardFiles.read(slot.file()).yard().map(Snapshot::of);
        return Optional.of(new Found(state, state.isPresent() ? Optional.empty() : Optional.of(slot.setAside())));
    }

    void changed(Snapshot snapshot) {
        autosave.changed(snapshot);
    }

    /** Ends cleanly: nothing is left behind. */
    void end() throws IOException {
        autosave.end();
        slot.end();
    }

    /** Ends as a killed program does; for tests within one program. */
    void abandon() throws IOException {
        autosave.end();
        slot.release();
    }
}
