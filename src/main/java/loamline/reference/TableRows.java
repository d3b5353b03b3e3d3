package loamline.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loamline.account.Source;

/**
 * The rows of a table that comes with the program: cells without commas, then a source id, then the citation in
 * quotation marks to the end of the line. The first line names the columns.
 */
final class TableRows {
    /** One row: its cells before the source, and the source. */
    record Row(List<String> cells, Source source) {
        String text(int column) {
            return cells.get(column);
        }

        double number(int column) {
            return Double.parseDouble(cells.get(column));
        }

        /** The numbers from a column on, so many of them. */
        List<Double> numbers(int from, int count) {
            return cells.subList(from, from + count).stream()
                    .map(Double::parseDouble)
                    .toList();
        }
    }

    private TableRows() {}

    /** @param table name of the file under {@code /loamline/reference} */
    static List<Row> of(String table) {
        try (InputStream in = Optional.ofNullable(TableRows.class.getResourceAsStream("/loamline/reference/" + table))
                        .orElseThrow(() -> new IllegalStateException(table + " is not in the program"));
                BufferedReader rows = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return rows.lines().skip(1).map(TableRows::row).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(table, e);
        }
    }

    private static Row row(String line) {
        int quote = line.indexOf('"');
        List<String> cells = Arrays.asList(line.substring(0, quote - 1).split(","));
        int last = cells.size() - 1;
        String citation = line.substring(quote + 1, line.length() - 1);
        return new Row(List.copyOf(cells.subList(0, last)), new Source(cells.get(last), citation));
    }
}
