package loamline.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.account.Source;

/** Published tables about turf: grasses, nitrogen of a year, dates, caps of a dose, state laws. Immutable. */
public final class TurfTables {
    private static final List<String> NAMES = List.of(
            "turf-sources.csv",
            "turf-grasses.csv",
            "turf-nitrogen.csv",
            "turf-windows.csv",
            "turf-caps.csv",
            "turf-laws.csv");

    private final Map<String, List<NamedRow>> tables = new LinkedHashMap<>();

    /**
     * A grass.
     *
     * @param group {@code cool} or {@code warm}
     */
    public record Grass(String name, String group, NamedRow row) {}

    private TurfTables() {
        NAMES.forEach(name -> tables.put(name, PublishedTable.rows(name)));
    }

    private static final class Published {
        private static final TurfTables ALL = new TurfTables();
    }

    /** The tables that come with the program. */
    public static TurfTables published() {
        return Published.ALL;
    }

    /** The rows of a table, in order. */
    public List<NamedRow> rows(String table) {
        return tables.getOrDefault(table, List.of());
    }

    public Source source(String id) {
        return rows("turf-sources.csv").stream()
                .filter(row -> row.text("source_id").equals(id))
                .map(row -> new Source(id, row.text("citation")))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no source " + id));
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
        return rows.stream().filter(row -> row.text("grass").equals(grass)).toList();
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
