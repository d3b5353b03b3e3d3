package loamline.reference;

import static loamline.reference.CellForm.CAP;
import static loamline.reference.CellForm.DAY;
import static loamline.reference.CellForm.DAY_OR_NONE;
import static loamline.reference.CellForm.GROUP;
import static loamline.reference.CellForm.NUMBER;
import static loamline.reference.CellForm.NUMBER_OR_NONE;
import static loamline.reference.CellForm.TEXT;
import static loamline.reference.CellForm.USE;
import static loamline.reference.CellForm.YES_NO;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How a table about turf is built.
 *
 * @param key columns that name a row; a user's rows take the place of the published ones with the same
 * @param cells forms of the columns that have one
 */
record TurfForm(List<String> key, Map<String, CellForm> cells) {
    /** All tables, each by the name of its file. */
    static final Map<String, TurfForm> BY_TABLE = Map.of(
            "turf-sources.csv", new TurfForm(List.of("source_id"), Map.of("source_id", TEXT, "citation", TEXT)),
            "turf-grasses.csv",
                    sourced(
                            List.of("grass"),
                            Map.of(
                                    "grass", TEXT,
                                    "group", GROUP,
                                    "new_low_lb", NUMBER_OR_NONE,
                                    "new_high_lb", NUMBER_OR_NONE,
                                    "seeds_lb", NUMBER_OR_NONE,
                                    "least_sun_h", NUMBER_OR_NONE)),
            "turf-nitrogen.csv",
                    sourced(
                            List.of("grass", "region", "use"),
                            Map.of(
                                    "grass", TEXT,
                                    "region", TEXT,
                                    "use", USE,
                                    "low_lb", NUMBER,
                                    "high_lb", NUMBER)),
            "turf-windows.csv",
                    sourced(
                            List.of("grass", "region"),
                            Map.of(
                                    "grass", TEXT,
                                    "region", TEXT,
                                    "day", DAY,
                                    "most_lb", NUMBER,
                                    "above_lb", NUMBER,
                                    "slow_only", YES_NO)),
            "turf-pauses.csv",
                    sourced(
                            List.of("grass", "region"),
                            Map.of("grass", TEXT, "region", TEXT, "from", DAY, "to", DAY, "words", TEXT)),
            "turf-mowing.csv",
                    sourced(
                            List.of("grass", "region"),
                            Map.of("grass", TEXT, "region", TEXT, "low_in", NUMBER, "high_in", NUMBER)),
            "turf-caps.csv", sourced(List.of("cap"), Map.of("cap", CAP, "most_lb_1000ft2", NUMBER)),
            "turf-laws.csv", law());

    /** Columns of which the first may not be above the second. */
    private static final Map<String, String> ORDERED =
            Map.of("low_lb", "high_lb", "new_low_lb", "new_high_lb", "low_in", "high_in");

    TurfForm {
        key = List.copyOf(key);
        cells = Map.copyOf(cells);
    }

    private static TurfForm law() {
        Map<String, CellForm> cells = new HashMap<>(Map.of("state", TEXT, "p_needs_test", YES_NO));
        Stream.of("home_from", "home_to", "pro_from", "pro_to").forEach(column -> cells.put(column, DAY_OR_NONE));
        Stream.of(
                        "test_months",
                        "total_n_lb",
                        "quick_n_lb",
                        "p2o5_dose_lb",
                        "p2o5_year_lb",
                        "organic_p_lb",
                        "least_slow_pct",
                        "setback_ft",
                        "reduced_ft")
                .forEach(column -> cells.put(column, NUMBER_OR_NONE));
        return sourced(List.of("state"), cells);
    }

    private static TurfForm sourced(List<String> key, Map<String, CellForm> own) {
        Map<String, CellForm> cells = new HashMap<>(own);
        cells.put("status", TEXT);
        cells.put("source_id", TEXT);
        return new TurfForm(key, cells);
    }

    /** What names a row, whatever its case. */
    List<String> key(NamedRow row) {
        return key.stream()
                .map(column -> row.text(column).toLowerCase(Locale.ROOT))
                .toList();
    }

    /** Everything that is wrong with a row, each with line and column. */
    List<String> wrong(NamedRow row) {
        List<String> wrong = new ArrayList<>();
        new TreeMap<>(cells).forEach((column, form) -> form.wrong(row, column).ifPresent(wrong::add));
        if (wrong.isEmpty()) {
            ORDERED.forEach((low, high) -> order(row, low, high).ifPresent(wrong::add));
        }
        return wrong;
    }

    private static Optional<String> order(NamedRow row, String low, String high) {
        OptionalDouble least = row.numberOrNone(low);
        OptionalDouble most = row.numberOrNone(high);
        return least.isPresent() && most.isPresent() && least.getAsDouble() > most.getAsDouble()
                ? Optional.of("line " + row.line() + ": " + low + " is above " + high)
                : Optional.empty();
    }
}
