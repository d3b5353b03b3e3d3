package loamline.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loamline.account.Problem;

/**
 * A table read from comma-separated text.
 *
 * <p>Understood without being told: a comma, semicolon or tab between cells; decimal points and commas ({@link
 * NumberStyle} has the rule); quoted cells, with line feeds in them too; a byte-order mark; UTF-8, and Windows-1252
 * with a warning. The first line that is not blank names the columns, in any case and order. Blank lines and rows of
 * blank cells are passed over. A row with a cell that cannot be read is left out and reported with its line, every
 * such cell of it; columns that were not asked for are kept and reported once.
 *
 * @param rows the sound rows, in order
 * @param problems all of them: of the text, of the header, then row by row
 */
public record CsvTable(List<CsvRow> rows, List<Problem> problems) {
    /** Larger files are no list that somebody typed, or a laboratory sent. */
    static final int MAX_BYTES = 16 << 20;

    /** The same in rows. */
    static final int MAX_ROWS = 100_000;

    public CsvTable {
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
    }

    /** Reads a file; every failure is among the problems. */
    public static CsvTable read(Path file, List<CsvColumn<?>> columns) {
        try {
            Optional<Problem> trouble = FileTrouble.beforeReading(file, MAX_BYTES);
            return trouble.isPresent()
                    ? new CsvTable(List.of(), List.of(trouble.get()))
                    : parse(Files.readAllBytes(file), columns);
        } catch (IOException e) {
            return new CsvTable(List.of(), List.of(FileTrouble.of(e)));
        }
    }

    /**
     * Reads the content of a file.
     *
     * @param columns what is looked for; the keys to the rows
     */
    public static CsvTable parse(byte[] content, List<CsvColumn<?>> columns) {
        return new CsvParser(columns).parse(content);
    }
}
