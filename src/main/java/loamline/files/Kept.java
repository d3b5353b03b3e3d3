package loamline.files;

import java.util.List;
import java.util.Map;
import loamline.yard.Extras;
import org.jspecify.annotations.Nullable;

/** What may be kept of a file without being understood. */
final class Kept {
    /** Half of what can be read: wrapped in a file of another layout it can still be read. */
    static final int MAX_DEPTH = JsonTree.MAX_DEPTH / 2;

    private Kept() {}

    /** A whole feature; without content, which is reported, if it is nested too deep. */
    static Extras extras(Map<String, @Nullable Object> feature, String pointer, ProblemLog log) {
        if (isTooDeep(feature)) {
            log.error("FEATURE_TOO_DEEP", pointer, "nested too deep to be kept; its content is left out");
            return Extras.NONE;
        }
        return new Extras(feature);
    }

    static boolean isTooDeep(@Nullable Object value) {
        return isDeeper(value, MAX_DEPTH);
    }

    private static boolean isDeeper(@Nullable Object value, int levels) {
        if (value instanceof Map<?, ?> members) {
            return levels == 0 || members.values().stream().anyMatch(v -> isDeeper(v, levels - 1));
        }
        return value instanceof List<?> list && (levels == 0 || list.stream().anyMatch(v -> isDeeper(v, levels - 1)));
    }
}
