package loamline.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Small JSON files of the program's own, such as its settings, as trees like those of {@link loamline.yard.Extras}. */
public final class JsonFile {
    /** A file of settings is a thousand times smaller; a larger one is something else. */
    private static final long MAX_BYTES = 1 << 20;

    private JsonFile() {}

    /** The members of the object in a file; empty if it is not there, cannot be read or is damaged. */
    public static Optional<Map<String, @Nullable Object>> read(Path file) {
        try {
            if (FileTrouble.beforeReading(file, MAX_BYTES).isPresent()) {
                return Optional.empty();
            }
            try (InputStream in = Files.newInputStream(file)) {
                return JsonTree.read(in, new ProblemLog());
            }
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /**
     * Writes an object whole or not at all; folders are made.
     *
     * @throws IOException if it cannot be written; an old file is then untouched
     * @throws IllegalArgumentException for values that are no JSON
     */
    public static void write(Path file, Map<String, @Nullable Object> members) throws IOException {
        Files.createDirectories(AtomicFiles.folderOf(file.toAbsolutePath()));
        AtomicFiles.write(file, JsonText.of(members));
    }
}
