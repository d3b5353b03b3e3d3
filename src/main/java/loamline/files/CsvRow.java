package loamline.files;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.account.Where;

/** A sound row of a {@link CsvTable}. Immutable. */
public final class CsvRow {
    private final int line;
    private final Map<String, String> cells;
    private final Map<String, String> others;
    private final NumberStyle style;

    /**
     * @param cells text by header, of the known columns; blank cells left out
     * @param others the same of the unknown columns
     */
    CsvRow(int line, Map<String, String> cells, Map<String, String> others, NumberStyle style) {
        this.line = line;
        this.cells = cells;
        this.others = Collections.unmodifiableMap(others);
        this.style = style;
    }

    /** The line on which the row starts, counted from 1. */
    public int line() {
        return line;
    }

    /** The row as the place of a problem. */
    public Where where() {
        return Where.line(line);
    }

    /** The value in a column; empty if the cell is blank or the table has no such column. */
    public <T> Optional<T> get(CsvColumn<T> column) {
        return filled(column).stream().findFirst().flatMap(header -> read(column, header));
    }

    /**
     * The value in a required column.
     *
     * @throws IllegalArgumentException if the column was not required when the table was read
     */
    public <T> T need(CsvColumn<T> column) {
        return get(column)
                .orElseThrow(() -> new IllegalArgumentException(column.name() + " is not required in this table"));
    }

    /** What stands in columns that were not asked for, by header; blank cells left out. */
    public Map<String, String> others() {
        return others;
    }

    /** The headers of a column under which something stands. */
    List<String> filled(CsvColumn<?> column) {
        return column.headers().stream().filter(cells::containsKey).toList();
    }

    <T> Optional<T> read(CsvColumn<T> column, String header) {
        return column.read(header, cells.getOrDefault(header, ""), style);
    }

    String text(String header) {
        return cells.getOrDefault(header, "");
    }
}
