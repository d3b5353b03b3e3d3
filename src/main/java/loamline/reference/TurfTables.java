package loamline.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.account.Source;

/**
 * Published tables about turf: grasses, nitrogen of a year, dates, pauses, mowing, caps of a dose, state laws. Immutable.
 *
 * <p>A user's table stands beside the published one of the same name: published rows of the same grass and region (and, for
 * nitrogen, use), of the same grass, cap, state or source are replaced, all others stay.
 */
public final class TurfTables {
    private static final List<String> NAMES = List.of(
            "turf-sources.csv",
            "turf-grasses.csv",
            "turf-nitrogen.csv",
            "turf-windows.csv",
            "turf-pauses.csv",
            "turf-mowing.csv",
            "turf-caps.csv",
            "turf-laws.csv");

    private final Map<String, List<NamedRow>> tables;

    /**
     * A grass.
     *
     * @param group {@code cool} or {@code warm}
     */
    public record Grass(String name, String group, NamedRow row) {}

    private TurfTables(Map<String, List<NamedRow>> tables) {
        this.tables = Collections.unmodifiableMap(tables);
    }

    private static final class Published {
        private static final TurfTables ALL =
                new TurfTables(NAMES.stream().collect(Collectors.toMap(name -> name, PublishedTable::rows)));
    }

    /** The tables that come with the program. */
    public static TurfTables published() {
        return Published.ALL;
    }

    /** The names of the tables, each the name of a file. */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * The same tables with rows of the user's.
     *
     * @throws IllegalArgumentException if there is no table of this name, or rows make no sense in it; the message has
     *     line and column of each
     */
    public TurfTables with(String table, List<NamedRow> own) {
        TurfForm form = TurfForm.of(table)
                .orElseThrow(() ->
                        new IllegalArgumentException("there is no table " + table + ": " + String.join(", ", NAMES)));
        List<String> wrong =
                own.stream().flatMap(row -> form.wrong(row).stream()).toList();
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", wrong));
        }
        Set<List<String>> replaced = own.stream().map(form::key).collect(Collectors.toSet());
        Map<String, List<NamedRow>> changed = new LinkedHashMap<>(tables);
        changed.put(
                table,
                Stream.concat(rows(table).stream().filter(row -> !replaced.contains(form.key(row))), own.stream())
                        .toList());
        return new TurfTables(changed);
    }

    /** The rows of a table, in order. */
    public List<NamedRow> rows(String table) {
        return tables.getOrDefault(table, List.of());
    }

    /** A source by its id; one that is in no table is the user's own. */
    public Source source(String id) {
        return rows("turf-sources.csv").stream()
                .filter(row -> row.text("source_id").equals(id))
                .map(row -> new Source(id, row.text("citation")))
                .findFirst()
                .orElseGet(() -> new Source(id, "your own table: " + id));
    }

    public Origin origin(NamedRow row) {
        return new Origin(row.text("status"), source(row.text("source_id")));
    }

    /** A grass by one of its names, whatever the case. */
    public Optional<Grass> grass(String name) {
        String wanted = name.strip();
        return rows("turf-grasses.csv").stream()
                .filter(row -> Stream.concat(Stream.of(row.text("grass")), row.list("names").stream())
                        .anyMatch(wanted::equalsIgnoreCase))
                .map(row -> new Grass(row.text("grass"), row.text("group"), row))
                .findFirst();
    }

    /** Rows of a table for a grass in a region: those for the grass itself, else those for its group. */
    public List<NamedRow> rows(String table, Grass grass, String region) {
        List<NamedRow> there = rows(table).stream()
                .filter(row -> row.text("region").equalsIgnoreCase(region.strip()))
                .toList();
        List<NamedRow> own = named(there, grass.name());
        return own.isEmpty() ? named(there, grass.group()) : own;
    }

    private static List<NamedRow> named(List<NamedRow> rows, String grass) {
        return rows.stream()
                .filter(row -> row.text("grass").equalsIgnoreCase(grass))
                .toList();
    }

    /** The row of a state's law, by its two letters. */
    public Optional<NamedRow> law(String state) {
        return rows("turf-laws.csv").stream()
                .filter(row -> row.text("state").equalsIgnoreCase(state.strip()))
                .findFirst();
    }

    /** The regions for which there are dates. */
    public List<String> regions() {
        return new ArrayList<>(rows("turf-windows.csv").stream()
                .map(row -> row.text("region"))
                .distinct()
                .toList());
    }
}
