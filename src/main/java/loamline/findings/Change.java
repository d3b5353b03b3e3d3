package loamline.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A reading now against the visit before, over the cores that have it both times.
 *
 * @param n cores compared
 * @param before mean then
 * @param now mean now
 */
public record Change(Quantity quantity, int n, double before, double now) {
    private static final int LEAST = 3;

    /** Quantities that three cores or more have both times. */
    static List<Change> of(List<LoggedCore> before, List<LoggedCore> now) {
        Map<String, LoggedCore> then = new LinkedHashMap<>();
        before.forEach(core -> then.put(core.id(), core));
        List<Change> changes = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            List<LoggedCore> both = now.stream()
                    .filter(core -> core.value(quantity).isPresent()
                            && then.containsKey(core.id())
                            && then.getOrDefault(core.id(), core)
                                    .value(quantity)
                                    .isPresent())
                    .toList();
            if (both.size() >= LEAST) {
                changes.add(new Change(
                        quantity,
                        both.size(),
                        both.stream()
                                .mapToDouble(core -> then.getOrDefault(core.id(), core)
                                        .value(quantity)
                                        .orElse(Double.NaN))
                                .average()
                                .orElse(Double.NaN),
                        both.stream()
                                .mapToDouble(core -> core.value(quantity).orElse(Double.NaN))
                                .average()
                                .orElse(Double.NaN)));
            }
        }
        return List.copyOf(changes);
    }
}
