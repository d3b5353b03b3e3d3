package loamline.season.blend;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A date on which a plot may be treated.
 *
 * @param mostGM2 what one dose may bring, by quantity; what is missing has no limit
 * @param materials positions of the materials that may be used
 * @param wantedNGM2 nitrogen that the calendar would like to have here; 0 or more, no limit
 */
public record Slot(LocalDate date, Map<Quantity, Double> mostGM2, Set<Integer> materials, double wantedNGM2) {
    public Slot {
        Map<Quantity, Double> kept = new EnumMap<>(Quantity.class);
        mostGM2.forEach((quantity, most) -> {
            if (!(most >= 0)) {
                throw new IllegalArgumentException(date + " allows " + most + " of " + quantity);
            }
            kept.put(quantity, most);
        });
        mostGM2 = Collections.unmodifiableMap(kept);
        materials = Collections.unmodifiableSortedSet(new TreeSet<>(materials));
    }

    /** Whether the same may be done on both dates. */
    boolean isLike(Slot other) {
        return mostGM2.equals(other.mostGM2) && materials.equals(other.materials);
    }
}
