package loamline.desk.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import loamline.files.Fingerprint;

/**
 * Notices when another program changes, replaces or removes the yard's file. Each change is told once. Looking goes
 * by what the file holds; where neither its size nor its time changed since the last look, it is not read again.
 */
final class DiskWatch {
    private static final Stamp NEVER = new Stamp(Path.of(""), -1, FileTime.fromMillis(0));

    private final ReadOnlyObjectProperty<YardFile> file;
    private final Later later;
    private final Consumer<Runnable> onScreen;
    private final Told told;

    /** The state told last; on the screen's thread. */
    private Optional<Seen> toldOf = Optional.empty();

    private volatile Stamp last = NEVER;

    /** Who is told of a change, on the screen's thread. */
    @FunctionalInterface
    interface Told {
        void changed(Path path, boolean gone);
    }

    private record Stamp(Path path, long bytes, FileTime changed) {}

    /** What was seen of a file: empty if it is gone. */
    private record Seen(YardFile file, Optional<Fingerprint> now) {}

    DiskWatch(ReadOnlyObjectProperty<YardFile> file, Later later, Consumer<Runnable> onScreen, Told told) {
        this.file = file;
        this.later = later;
        this.onScreen = onScreen;
        this.told = told;
        file.addListener((o, before, now) -> last = NEVER);
    }

    /** Looks once, in the background. */
    void look() {
        YardFile looked = file.get();
        if (looked.known().isPresent()) {
            looked.path().ifPresent(path -> later.in(0, () -> look(looked, path)));
        }
    }

    private void look(YardFile looked, Path path) {
        Stamp stamp = stamp(path);
        if (!stamp.equals(last)) {
            last = stamp;
            Seen seen = new Seen(looked, YardFile.now(path));
            onScreen.accept(() -> compare(seen, path));
        }
    }

    private static Stamp stamp(Path path) {
        try {
            BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
            return new Stamp(path, now.size(), now.lastModifiedTime());
        } catch (IOException e) {
            return new Stamp(path, -1, NEVER.changed());
        }
    }

    private void compare(Seen seen, Path path) {
        boolean current = seen.file().equals(file.get());
        boolean changed = !seen.now().equals(seen.file().known());
        if (current && changed && !toldOf.equals(Optional.of(seen))) {
            toldOf = Optional.of(seen);
            told.changed(path, seen.now().isEmpty());
        }
    }
}
