package loamline.reference;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loamline.account.Source;

/**
 * A row of a table, its cells by the names of their columns.
 *
 * @param table name of the file, for messages
 * @param line line in the file, counted from 1
 * @param cells text by column; a blank cell is an empty text
 */
public record NamedRow(String table, int line, Map<String, String> cells) {
    public NamedRow {
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }

    /** The text of a cell; empty if it is blank or the table has no such column. */
    public String text(String column) {
        return cells.getOrDefault(column, "");
    }

    /** The text of a cell as a list, its parts divided by {@code |}; empty if the cell is blank. */
    public List<String> list(String column) {
        return text(column).isEmpty()
                ? List.of()
                : Arrays.stream(text(column).split("\\|")).map(String::strip).toList();
    }

    /** Where the row comes from: its columns {@code source_id} and {@code citation}. */
    public Source source() {
        return new Source(text("source_id"), text("citation"));
    }

    /**
     * The number in a cell.
     *
     * @throws IllegalArgumentException naming file, line and column if it is blank, no number or below 0
     */
    public double number(String column) {
        return numberOrNone(column).orElseThrow(() -> wrong(column));
    }

    /**
     * The number in a cell that may be blank.
     *
     * @throws IllegalArgumentException naming file, line and column if it is no number or below 0
     */
    public OptionalDouble numberOrNone(String column) {
        if (text(column).isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double number = Double.parseDouble(text(column));
            if (number >= 0 && Double.isFinite(number)) {
                return OptionalDouble.of(number);
            }
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(wrong(column).getMessage(), e);
        }
        throw wrong(column);
    }

    private IllegalArgumentException wrong(String column) {
        return new IllegalArgumentException(table + " line " + line + ": " + column
                + " should be a number of 0 or more, not “" + text(column) + "”");
    }
}
