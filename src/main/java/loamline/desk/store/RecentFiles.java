package loamline.desk.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import loamline.files.JsonFile;
import org.jspecify.annotations.Nullable;

/** The yards opened or saved last, newest first, kept in a file that windows of the program share. */
public final class RecentFiles {
    /** How many are remembered. */
    public static final int MOST = 10;

    private final Path file;

    RecentFiles(Path file) {
        this.file = file;
    }

    /**
     * A yard's file.
     *
     * @param missing whether it is not there now
     */
    public record Entry(Path file, boolean missing) {}

    /** All of them, newest first. Looks at the disk. */
    public List<Entry> entries() {
        return paths().stream()
                .map(path -> new Entry(path, !Files.isRegularFile(path)))
                .toList();
    }

    void add(Path opened) throws IOException {
        change(all -> Stream.concat(Stream.of(opened.toAbsolutePath().normalize()), all));
    }

    /** Takes a file off the list; the file itself stays. */
    public void remove(Path gone) throws IOException {
        change(all -> all.filter(path -> !path.equals(gone)));
    }

    private List<Path> paths() {
        Map<String, @Nullable Object> members = JsonFile.read(file).orElse(Map.of());
        List<?> list = members.get("recent") instanceof List<?> l ? l : List.of();
        return list.stream().flatMap(text -> Settings.path(text).stream()).toList();
    }

    /** Reads the list anew first, since another window may have changed it. */
    private void change(UnaryOperator<Stream<Path>> change) throws IOException {
        List<String> changed = change.apply(paths().stream())
                .distinct()
                .limit(MOST)
                .map(Path::toString)
                .toList();
        JsonFile.write(file, Map.of("recent", changed));
    }
}
