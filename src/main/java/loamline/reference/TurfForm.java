package loamline.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How a table about turf is built.
 *
 * @param key columns that name a row; a user's rows take the place of the published ones with the same
 * @param cells forms of the columns that have one
 */
record TurfForm(List<String> key, Map<String, CellForm> cells) {
    TurfForm {
        key = List.copyOf(key);
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }

    /** The form of a table by the name of its file; empty if there is none of this name. */
    static Optional<TurfForm> of(String table) {
        TurfForm plain = new TurfForm(List.of(), Map.of());
        TurfForm sourced = plain.with(CellForm.TEXT, "status", "source_id");
        return switch (table) {
            case "turf-sources.csv" -> Optional.of(plain.by("source_id").with(CellForm.TEXT, "citation"));
            case "turf-grasses.csv" ->
                Optional.of(sourced.by("grass")
                        .with(CellForm.GROUP, "group")
                        .with(CellForm.NUMBER_OR_NONE, "new_low_lb", "new_high_lb", "seeds_lb", "least_sun_h"));
            case "turf-nitrogen.csv" ->
                Optional.of(sourced.by("grass", "region", "use")
                        .with(CellForm.USE, "use")
                        .with(CellForm.NUMBER, "low_lb", "high_lb"));
            case "turf-windows.csv" ->
                Optional.of(sourced.by("grass", "region")
                        .with(CellForm.DAY, "day")
                        .with(CellForm.NUMBER, "most_lb", "above_lb")
                        .with(CellForm.YES_NO, "slow_only"));
            case "turf-pauses.csv" ->
                Optional.of(sourced.by("grass", "region")
                        .with(CellForm.DAY, "from", "to")
                        .with(CellForm.TEXT, "words"));
            case "turf-mowing.csv" ->
                Optional.of(sourced.by("grass", "region").with(CellForm.NUMBER, "low_in", "high_in"));
            case "turf-caps.csv" ->
                Optional.of(sourced.by("cap").with(CellForm.CAP, "cap").with(CellForm.NUMBER, "most_lb_1000ft2"));
            case "turf-laws.csv" -> Optional.of(law(sourced));
            default -> Optional.empty();
        };
    }

    private static TurfForm law(TurfForm sourced) {
        return sourced.by("state")
                .with(CellForm.YES_NO, "p_needs_test")
                .with(CellForm.DAY_OR_NONE, "home_from", "home_to", "pro_from", "pro_to")
                .with(
                        CellForm.NUMBER_OR_NONE,
                        "test_months",
                        "total_n_lb",
                        "quick_n_lb",
                        "p2o5_dose_lb",
                        "p2o5_year_lb")
                .with(CellForm.NUMBER_OR_NONE, "organic_p_lb", "least_slow_pct", "setback_ft", "reduced_ft");
    }

    private TurfForm by(String... columns) {
        return new TurfForm(List.of(columns), with(CellForm.TEXT, columns).cells);
    }

    private TurfForm with(CellForm form, String... columns) {
        Map<String, CellForm> more = new LinkedHashMap<>(cells);
        Stream.of(columns).forEach(column -> more.put(column, form));
        return new TurfForm(key, more);
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
        cells.forEach((column, form) -> form.wrong(row, column).ifPresent(wrong::add));
        if (wrong.isEmpty()) {
            order(row, "low_lb", "high_lb").ifPresent(wrong::add);
            order(row, "new_low_lb", "new_high_lb").ifPresent(wrong::add);
            order(row, "low_in", "high_in").ifPresent(wrong::add);
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
