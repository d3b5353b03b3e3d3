package loamline.files;

import java.util.LinkedHashMap;
import java.util.Map;
import loamline.yard.Extras;
import org.jspecify.annotations.Nullable;

/**
 * What a file says beyond a feature, by where it says so; {@link Extras} describes how they are joined.
 *
 * @param feature members of the feature itself
 * @param properties further properties
 * @param geometry members of its geometry
 */
record FeatureExtras(
        Map<String, @Nullable Object> feature,
        Map<String, @Nullable Object> properties,
        Map<String, @Nullable Object> geometry) {
    static final String PROPERTIES = "properties";
    static final String GEOMETRY = "geometry";

    static FeatureExtras of(Extras extras) {
        Map<String, @Nullable Object> feature = new LinkedHashMap<>(extras.members());
        return new FeatureExtras(feature, taken(feature, PROPERTIES), taken(feature, GEOMETRY));
    }

    private static Map<String, @Nullable Object> taken(Map<String, @Nullable Object> feature, String name) {
        Map<String, @Nullable Object> inner = new LinkedHashMap<>();
        if (feature.remove(name) instanceof Map<?, ?> members) {
            members.forEach((key, value) -> inner.put(String.valueOf(key), value));
        }
        return inner;
    }

    Extras joined() {
        Map<String, @Nullable Object> all = new LinkedHashMap<>(feature);
        if (!properties.isEmpty()) {
            all.put(PROPERTIES, properties);
        }
        if (!geometry.isEmpty()) {
            all.put(GEOMETRY, geometry);
        }
        return all.isEmpty() ? Extras.NONE : new Extras(all);
    }
}
