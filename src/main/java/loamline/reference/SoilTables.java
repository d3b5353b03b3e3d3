package loamline.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.account.Source;
import loamline.reference.SoilRange.Band;

/**
 * Everything that is published about what a soil test means, as rows with their {@link Origin}. Immutable.
 *
 * <p>A user's table stands beside the published one of the same name: rows whose first cell the user's table has too are
 * replaced by the user's, all others stay.
 */
public final class SoilTables {
    private static final List<String> NAMES = List.of(
            "soil-sources.csv",
            "soil-guidelines.csv",
            "soil-ranges.csv",
            "soil-needs.csv",
            "soil-rates.csv",
            "soil-equivalents.csv",
            "soil-indexes.csv",
            "soil-plausible.csv",
            "base-saturation.csv",
            "cec-by-texture.csv",
            "lime-methods.csv",
            "lime-tables.csv",
            "lime-fineness.csv",
            "lime-materials.csv",
            "lime-caps.csv",
            "sulfur-rates.csv",
            "sulfur-caps.csv",
            "salt-tolerance.csv",
            "phosphorus-laws.csv");

    private final Map<String, List<NamedRow>> tables;
    private final Map<String, Source> sources;
    private final List<Guideline> guidelines;
    private final List<SoilRange> ranges;
    private final Map<String, List<SoilRange>> rangesByElement;

    /**
     * A guideline.
     *
     * @param usual whether it is used where nobody names one; the first in the table's order that fits wins
     */
    public record Guideline(String name, String title, boolean usual, Source source) {}

    private SoilTables(Map<String, List<NamedRow>> tables) {
        this.tables = Collections.unmodifiableMap(tables);
        this.sources = rows("soil-sources.csv").stream()
                .collect(Collectors.toMap(
                        row -> row.text("source_id"),
                        row -> new Source(row.text("source_id"), row.text("citation")),
                        (first, second) -> second));
        this.guidelines = rows("soil-guidelines.csv").stream()
                .map(row -> new Guideline(
                        row.text("guideline"),
                        row.text("title"),
                        row.text("default").equals("yes"),
                        source(row.text("source_id"))))
                .toList();
        this.ranges = readRanges();
        this.rangesByElement = ranges.stream().collect(Collectors.groupingBy(SoilRange::element));
    }

    private static final class Published {
        private static final SoilTables ALL = read();

        private static SoilTables read() {
            Map<String, List<NamedRow>> tables = new LinkedHashMap<>();
            NAMES.forEach(name -> tables.put(name, PublishedTable.rows(name)));
            return new SoilTables(tables);
        }
    }

    /** The tables that come with the program. */
    public static SoilTables published() {
        return Published.ALL;
    }

    /** The names of the tables, each the name of a file. */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * The same tables with rows of the user's.
     *
     * @throws IllegalArgumentException if there is no table of this name, or the rows make no sense in it
     */
    public SoilTables with(String table, List<NamedRow> own) {
        if (!NAMES.contains(table)) {
            throw new IllegalArgumentException("there is no table " + table + ": " + String.join(", ", NAMES));
        }
        Set<String> replaced = own.stream().map(SoilTables::key).collect(Collectors.toSet());
        Map<String, List<NamedRow>> changed = new LinkedHashMap<>(tables);
        changed.put(
                table,
                Stream.concat(rows(table).stream().filter(row -> !replaced.contains(key(row))), own.stream())
                        .toList());
        return new SoilTables(changed);
    }

    private static String key(NamedRow row) {
        return row.cells().values().stream().findFirst().orElse("");
    }

    /** The rows of a table, in order. */
    public List<NamedRow> rows(String table) {
        return tables.getOrDefault(table, List.of());
    }

    /** Where a row comes from. */
    public Origin origin(NamedRow row) {
        return new Origin(row.text("status"), source(row.text("source_id")));
    }

    /** A source by its id; one that is in no table is the user's own. */
    public Source source(String id) {
        return Optional.ofNullable(sources.get(id)).orElseGet(() -> new Source(id, "your own table: " + id));
    }

    /** All guidelines, the usual ones in the order in which they are tried. */
    public List<Guideline> guidelines() {
        return guidelines;
    }

    /** A guideline by its name, whatever its case. */
    public Optional<Guideline> guideline(String name) {
        return guidelines.stream()
                .filter(g -> g.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    /** All ranges, in the table's order. */
    public List<SoilRange> ranges() {
        return ranges;
    }

    /** The ranges of an element, by its key, in the table's order. */
    public List<SoilRange> ranges(String element) {
        return rangesByElement.getOrDefault(element, List.of());
    }

    private List<SoilRange> readRanges() {
        Map<List<String>, List<NamedRow>> grouped = new LinkedHashMap<>();
        for (NamedRow row : rows("soil-ranges.csv")) {
            List<String> key =
                    List.of(row.text("guideline"), row.text("test"), row.text("element"), row.text("condition"));
            grouped.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
        }
        return grouped.values().stream().map(this::range).toList();
    }

    private SoilRange range(List<NamedRow> rows) {
        NamedRow first = rows.get(0);
        return new SoilRange(
                first.text("guideline"),
                first.text("test"),
                first.text("element"),
                first.list("condition"),
                first.text("unit"),
                first.number("step"),
                rows.stream().map(SoilTables::band).toList(),
                origin(first));
    }

    private static Band band(NamedRow row) {
        OptionalDouble high = row.numberOrNone("high");
        return new Band(row.text("class"), row.number("low"), high, level(row));
    }

    private static int level(NamedRow row) {
        String text = row.text("level");
        if (!text.matches("-?\\d{1,2}")) {
            throw new IllegalArgumentException(
                    row.table() + " line " + row.line() + ": level should be a whole number, not “" + text + "”");
        }
        return Integer.parseInt(text);
    }
}
