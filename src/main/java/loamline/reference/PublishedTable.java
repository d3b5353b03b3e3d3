package loamline.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a table that comes with the program: a line of names, then a row a line, cells quoted where they hold commas. */
final class PublishedTable {
    private PublishedTable() {}

    /** @param table name of the file under {@code /loamline/reference} */
    static List<NamedRow> rows(String table) {
        try (InputStream in = Optional.ofNullable(
                                PublishedTable.class.getResourceAsStream("/loamline/reference/" + table))
                        .orElseThrow(() -> new IllegalStateException(table + " is not in the program"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            List<String> names = cells(lines.readLine());
            List<NamedRow> rows = new ArrayList<>();
            for (String line : lines.lines().toList()) {
                rows.add(row(table, rows.size() + 2, names, cells(line)));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(table, e);
        }
    }

    private static NamedRow row(String table, int line, List<String> names, List<String> cells) {
        if (cells.size() != names.size()) {
            throw new IllegalStateException(table + " line " + line + " has " + cells.size() + " cells");
        }
        Map<String, String> byName = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            byName.put(names.get(i), cells.get(i));
        }
        return new NamedRow(table, line, byName);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
