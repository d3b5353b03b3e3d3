package loamline.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;
import loamline.reference.TurfTables;

/**
 * A folder with a user's own tables.
 *
 * <p>Each file has the name of a published table (such as {@code soil-ranges.csv}) and its columns, in any order. Rows
 * replace the published rows that are named the same (about soil: by their first cell; about turf: as {@link TurfTables}
 * says), so one file can change one guideline and leave the others; all else is added. Files of other names are left
 * alone. A table that makes no sense is reported and left out as a whole.
 */
public final class TableFolder {
    private TableFolder() {}

    /** The published tables about soil with those of a folder; problems name file and line. */
    public static Read<SoilTables> read(Path folder) {
        return read(folder, SoilTables.published(), SoilTables.names(), SoilTables::rows, SoilTables::with);
    }

    /** The published tables about turf with those of a folder; problems name file and line. */
    public static Read<TurfTables> turf(Path folder) {
        return read(folder, TurfTables.published(), TurfTables.names(), TurfTables::rows, TurfTables::with);
    }

    /** Puts rows into tables. */
    private interface Change<T> {
        T with(T tables, String name, List<NamedRow> rows);
    }

    private static <T> Read<T> read(
            Path folder,
            T published,
            List<String> names,
            BiFunction<T, String, List<NamedRow>> rows,
            Change<T> change) {
        List<Problem> problems = new ArrayList<>();
        T tables = published;
        try {
            for (Path file : inside(folder)) {
                String name = String.valueOf(file.getFileName());
                if (names.contains(name)) {
                    List<String> columns = List.copyOf(
                            rows.apply(published, name).get(0).cells().keySet());
                    tables = with(tables, name, own(name, columns, file, problems), change, problems);
                }
            }
            return new Read<>(Optional.of(tables), problems);
        } catch (IOException e) {
            return Read.failed(List.of(FileTrouble.of(e)));
        }
    }

    /** In the order of their names, since a source may be named by a later table. */
    private static Iterable<Path> inside(Path folder) throws IOException {
        TreeSet<Path> files = new TreeSet<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.csv")) {
            found.forEach(files::add);
        }
        return files;
    }

    private static List<NamedRow> own(String name, List<String> columns, Path file, List<Problem> problems) {
        List<CsvColumn<String>> keys = columns.stream().map(CsvColumn::text).toList();
        CsvTable read = CsvTable.read(file, List.copyOf(keys));
        read.problems()
                .forEach(p -> problems.add(new Problem(p.severity(), p.code(), p.where(), name + ": " + p.message())));
        return read.rows().stream().map(row -> named(name, row, columns, keys)).toList();
    }

    private static <T> T with(T tables, String name, List<NamedRow> rows, Change<T> change, List<Problem> problems) {
        try {
            return change.with(tables, name, rows);
        } catch (IllegalArgumentException e) {
            problems.add(Problem.error(
                    "TABLE_BAD", Where.WHOLE, name + ": " + e.getMessage() + "; the published table is used"));
            return tables;
        }
    }

    private static NamedRow named(String name, CsvRow row, List<String> columns, List<CsvColumn<String>> keys) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            cells.put(columns.get(i), row.get(keys.get(i)).orElse(""));
        }
        return new NamedRow(name, row.line(), cells);
    }
}
