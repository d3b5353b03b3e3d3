package loamline.findings;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.sampling.CorePlan.PlannedCore;

/**
 * A planned core and what the log says of it.
 *
 * @param core where it was planned
 * @param values readings and what is modelled at its place
 * @param refusal why the probe did not go down; empty if it did
 * @param words colour and notes; may be empty
 * @param layers from the top
 * @param photos names of files
 * @param waterMeasured whether cups speak for the water here; else it is modelled, if known
 */
public record LoggedCore(
        PlannedCore core,
        Map<Quantity, Double> values,
        Optional<String> refusal,
        List<String> words,
        List<SoilLayer> layers,
        List<String> photos,
        boolean waterMeasured) {
    public LoggedCore {
        EnumMap<Quantity, Double> copy = new EnumMap<>(Quantity.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
        words = List.copyOf(words);
        layers = List.copyOf(layers);
        photos = List.copyOf(photos);
    }

    /**
     * A core of which several rows may speak: readings are their means, the depth is the deepest, and it counts as
     * refused only if every row says so.
     *
     * @param rows one or more
     */
    static LoggedCore of(PlannedCore core, List<LogRow> rows) {
        Map<Quantity, Double> values = new LinkedHashMap<>();
        for (Quantity quantity : Quantity.values()) {
            List<Double> read = rows.stream()
                    .flatMap(row -> Optional.ofNullable(row.values().get(quantity)).stream())
                    .toList();
            OptionalDouble one = quantity == Quantity.DEPTH
                    ? read.stream().mapToDouble(v -> v).max()
                    : read.stream().mapToDouble(v -> v).average();
            one.ifPresent(value -> values.put(quantity, value));
        }
        boolean refused = rows.stream().allMatch(row -> row.refusal().isPresent());
        Set<String> words = rows.stream()
                .flatMap(row -> Stream.of(row.colour(), row.note()))
                .filter(word -> !word.isBlank())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        List<SoilLayer> layers = rows.stream()
                .map(LogRow::layers)
                .filter(list -> !list.isEmpty())
                .findFirst()
                .orElse(List.of());
        Optional<String> refusal = refused
                ? Optional.of(rows.stream()
                        .flatMap(row -> row.refusal().stream())
                        .distinct()
                        .collect(Collectors.joining(", ")))
                : Optional.empty();
        List<String> photos =
                rows.stream().flatMap(row -> row.photos().stream()).distinct().toList();
        return new LoggedCore(core, values, refusal, List.copyOf(words), layers, photos, false);
    }

    public String id() {
        return core.id();
    }

    public boolean isRefused() {
        return refusal.isPresent();
    }

    public OptionalDouble value(Quantity quantity) {
        Double value = values.get(quantity);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    LoggedCore with(Quantity quantity, OptionalDouble value) {
        Map<Quantity, Double> more = new LinkedHashMap<>(values);
        value.ifPresent(v -> more.put(quantity, v));
        return new LoggedCore(core, more, refusal, words, layers, photos, waterMeasured);
    }

    LoggedCore withWater(OptionalDouble share, boolean measured) {
        LoggedCore known = with(Quantity.WATER, share);
        return new LoggedCore(core, known.values, refusal, words, layers, photos, measured && share.isPresent());
    }

    /** All that was written of it, in small letters. */
    String text() {
        return Stream.concat(words.stream(), refusal.stream())
                .collect(Collectors.joining("; "))
                .toLowerCase(Locale.ROOT);
    }
}
