package loamline.yard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Members of a file that this program does not understand, kept to be written back: a tree of maps, lists,
 * strings, numbers, booleans and null, in the order read. Whole numbers are Long or, if longer, BigInteger;
 * others are Double, or BigDecimal where no double is the same number.
 *
 * <p>What a file says beyond a feature is laid out as the feature itself is in GeoJSON: members of the feature
 * stand at the top, further properties under {@code properties}, members of its geometry under {@code
 * geometry}.
 *
 * @param members by name; deeply copied and unmodifiable
 */
public record Extras(Map<String, @Nullable Object> members) {
    public static final Extras NONE = new Extras(Map.of());

    public Extras {
        members = copyOf(members);
    }

    public boolean isEmpty() {
        return members.isEmpty();
    }

    private static Map<String, @Nullable Object> copyOf(Map<String, @Nullable Object> map) {
        Map<String, @Nullable Object> copy = new LinkedHashMap<>();
        map.forEach((name, value) -> copy.put(name, frozen(value)));
        return Collections.unmodifiableMap(copy);
    }

    private static @Nullable Object frozen(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> copy = new LinkedHashMap<>();
            map.forEach((name, inner) -> copy.put(String.valueOf(name), frozen(inner)));
            return Collections.unmodifiableMap(copy);
        }
        if (value instanceof List<?> list) {
            List<@Nullable Object> copy = new ArrayList<>();
            list.forEach(inner -> copy.add(frozen(inner)));
            return Collections.unmodifiableList(copy);
        }
        return value;
    }
}
