package loamline.season.blend;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Ground treated alike.
 *
 * @param areaM2 above 0
 * @param season what it gets in the season in all, by quantity; what is missing has no limits
 * @param slots its dates, in order
 */
public record Plot(String name, double areaM2, Map<Quantity, Range> season, List<Slot> slots) {
    /** @throws IllegalArgumentException if the area is not above 0 */
    public Plot {
        if (!(areaM2 > 0 && Double.isFinite(areaM2))) {
            throw new IllegalArgumentException(name + " has " + areaM2 + " m²");
        }
        Map<Quantity, Range> kept = new EnumMap<>(Quantity.class);
        kept.putAll(season);
        season = Collections.unmodifiableMap(kept);
        slots = List.copyOf(slots);
    }

    /** Weight of a rate on it, kg. */
    double kg(double gM2) {
        return gM2 * areaM2 / 1000;
    }
}
