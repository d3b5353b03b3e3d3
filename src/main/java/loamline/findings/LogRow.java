package loamline.findings;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loamline.geometry.Point;

/**
 * A row of a log: what somebody wrote down of one core.
 *
 * @param core its id, such as A3 or A3s
 * @param time as it was written; may be empty
 * @param day the day in it, if it holds one
 * @param values readings; none that is {@link Quantity#isModelled modelled}
 * @param refusal why the probe did not go down, in a word; empty if it did
 * @param colour may be empty
 * @param layers from the top
 * @param note may be empty
 * @param photos names of files, as they were written
 * @param at where the core stood, if the list says it
 * @param line line in the file, if it comes from one
 * @param others what stood in columns that are not known here
 */
public record LogRow(
        String core,
        String time,
        Optional<LocalDate> day,
        Map<Quantity, Double> values,
        Optional<String> refusal,
        String colour,
        List<SoilLayer> layers,
        String note,
        List<String> photos,
        Optional<Point> at,
        OptionalInt line,
        Map<String, String> others) {
    public LogRow {
        EnumMap<Quantity, Double> copy = new EnumMap<>(Quantity.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
        layers = List.copyOf(layers);
        photos = List.copyOf(photos);
        others = Collections.unmodifiableMap(new LinkedHashMap<>(others));
    }
}
