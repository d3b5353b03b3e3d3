package loamline.desk.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loamline.files.Fingerprint;

/**
 * The file of the yard in the window.
 *
 * @param path empty for a yard that was never saved
 * @param known what the file held when it was last read or written here
 */
record YardFile(Optional<Path> path, Optional<Fingerprint> known) {
    static final YardFile NONE = new YardFile(Optional.empty(), Optional.empty());

    static YardFile of(Path path, Optional<Fingerprint> known) {
        return new YardFile(Optional.of(path), known);
    }

    /** What a path holds now; empty if nothing can be read there. */
    static Optional<Fingerprint> now(Path path) {
        try {
            return Files.isRegularFile(path) ? Optional.of(Fingerprint.of(path)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The name to show for the yard, without a folder. */
    Optional<String> name() {
        return path.map(YardFile::name);
    }

    static String name(Path path) {
        return String.valueOf(path.getFileName());
    }
}
