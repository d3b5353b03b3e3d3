package loamline.season.blend;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Something sold in bags.
 *
 * @param bagKg above 0
 * @param bagPrice above 0
 * @param content share of its weight, by quantity; 0 to 1, salt to 2; what is missing is 0
 */
public record Material(String name, double bagKg, double bagPrice, Map<Quantity, Double> content) {
    /** @throws IllegalArgumentException if weight or price is not above 0, or a content is below 0 */
    public Material {
        if (!(bagKg > 0 && bagPrice > 0 && Double.isFinite(bagKg) && Double.isFinite(bagPrice))) {
            throw new IllegalArgumentException(name + " has bags of " + bagKg + " kg for " + bagPrice);
        }
        Map<Quantity, Double> kept = new EnumMap<>(Quantity.class);
        content.forEach((quantity, share) -> {
            if (!(share >= 0 && Double.isFinite(share))) {
                throw new IllegalArgumentException(name + " has " + share + " of " + quantity);
            }
            kept.put(quantity, share);
        });
        content = Collections.unmodifiableMap(kept);
    }

    public double of(Quantity quantity) {
        return content.getOrDefault(quantity, 0.0);
    }
}
