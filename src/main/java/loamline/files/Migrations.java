package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Steps from the project file's first schema to its newest, on the tree as read. The step at position i leads
 * from schema i + 1 to i + 2; a new schema is a new step at the end.
 *
 * @param steps each gives a changed tree; it need not touch {@code schema}
 */
record Migrations(List<UnaryOperator<Map<String, @Nullable Object>>> steps) {
    /** The steps of this program. */
    static final Migrations KNOWN = new Migrations(List.of());

    Migrations {
        steps = List.copyOf(steps);
    }

    /** The newest schema, which is also the one written. */
    int newest() {
        return steps.size() + 1;
    }

    /**
     * A tree brought to the newest schema.
     *
     * @param schema the tree's own, 1 to {@link #newest}
     */
    Map<String, @Nullable Object> toNewest(Map<String, @Nullable Object> tree, int schema) {
        Map<String, @Nullable Object> changed = tree;
        for (UnaryOperator<Map<String, @Nullable Object>> step : steps.subList(schema - 1, steps.size())) {
            changed = step.apply(new LinkedHashMap<>(changed));
        }
        return changed;
    }
}
