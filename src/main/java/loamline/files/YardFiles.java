package loamline.files;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.yard.Yard;

/** Yards on the disk: read by what a file holds, written by how its name ends. */
public final class YardFiles {
    private YardFiles() {}

    /** A layout that a yard can be written in without loss. */
    public enum Format {
        PROJECT(ProjectFile.ENDING),
        GEOJSON(".geojson");

        private final String ending;

        Format(String ending) {
            this.ending = ending;
        }

        /** The format for a name's ending, in any case; empty for every other ending. */
        public static Optional<Format> of(Path file) {
            String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
            return Arrays.stream(values())
                    .filter(format -> name.endsWith(format.ending))
                    .findFirst();
        }

        String text(Yard yard) {
            return this == PROJECT ? ProjectFile.write(yard) : GeoJson.write(yard);
        }
    }

    /**
     * What came of opening a file.
     *
     * @param yard empty if the file as a whole could not be used
     * @param problems all of them, in the order met
     * @param backup the newest backup that can be read, where the file itself cannot
     */
    public record Opened(Optional<Yard> yard, List<Problem> problems, Optional<Path> backup) {
        public Opened {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a project file or GeoJSON, whichever the content is; every failure is among the problems.
     *
     * <p>Where a file is damaged or gone but has backups ({@code name~1~} the newest, to {@code name~3~}), the
     * newest that can be read is named.
     */
    public static Opened read(Path file) {
        Read<Yard> read = readOne(file);
        boolean isNewer = read.problems().stream().anyMatch(p -> p.code().equals(ProjectReader.SCHEMA_NEWER));
        if (read.value().isPresent() || isNewer) {
            return new Opened(read.value(), read.problems(), Optional.empty());
        }
        Optional<Path> backup = Backups.of(file).stream()
                .filter(candidate -> readOne(candidate).value().isPresent())
                .findFirst();
        List<Problem> problems = new ArrayList<>(read.problems());
        backup.ifPresent(path -> problems.add(Problem.info(
                "BACKUP_FOUND",
                Where.WHOLE,
                "the newest backup that can be read is " + path.getFileName()
                        + ": open it and save it under the old name")));
        return new Opened(Optional.empty(), problems, backup);
    }

    private static Read<Yard> readOne(Path file) {
        try {
            Optional<Problem> trouble = FileTrouble.beforeReading(file, JsonTree.MAX_BYTES);
            if (trouble.isPresent()) {
                return Read.failed(List.of(trouble.get()));
            }
            try (InputStream in = Files.newInputStream(file)) {
                return read(in);
            }
        } catch (IOException e) {
            return Read.failed(List.of(FileTrouble.of(e)));
        }
    }

    /** Reads a project or GeoJSON from a stream. */
    public static Read<Yard> read(InputStream in) throws IOException {
        ProblemLog log = new ProblemLog();
        Optional<Yard> yard = JsonTree.read(in, log)
                .flatMap(tree -> ProjectFile.FORMAT.equals(tree.get("format"))
                        ? new ProjectReader(Migrations.KNOWN, log).yard(tree)
                        : new GeoJsonReader(tree, log).yard());
        return new Read<>(yard, log.problems());
    }

    /**
     * Writes a yard in the format that the name's ending says; the file is replaced whole or not at all. A
     * project file that changes leaves its last state behind as a backup.
     *
     * @return what the file now holds
     * @throws IOException if it cannot be written; the old file is then untouched
     * @throws IllegalArgumentException if the ending is none of a {@link Format}
     */
    public static Fingerprint write(Yard yard, Path file) throws IOException {
        Format format = Format.of(file)
                .orElseThrow(() -> new IllegalArgumentException(file + " ends neither in .loam.json nor in .geojson"));
        byte[] bytes = format.text(yard).getBytes(StandardCharsets.UTF_8);
        Fingerprint written = Fingerprint.of(bytes);
        if (format == Format.PROJECT && Files.isRegularFile(file)) {
            if (holds(file, bytes)) {
                return written;
            }
            Backups.keep(file);
        }
        AtomicFiles.write(file, out -> out.write(bytes));
        return written;
    }

    /** Whether a format brings a yard back as a project file does; written and read back to see. */
    public static boolean keepsAll(Yard yard, Format format) {
        return format == Format.PROJECT || readBack(yard, format).equals(readBack(yard, Format.PROJECT));
    }

    private static Optional<Yard> readBack(Yard yard, Format format) {
        try {
            return read(new ByteArrayInputStream(format.text(yard).getBytes(StandardCharsets.UTF_8)))
                    .value();
        } catch (IOException e) {
            throw new UncheckedIOException("memory can be read", e);
        }
    }

    private static boolean holds(Path file, byte[] bytes) throws IOException {
        return Files.size(file) == bytes.length && Arrays.equals(Files.readAllBytes(file), bytes);
    }
}
