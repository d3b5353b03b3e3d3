package loamline.yard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.geometry.Region;

/**
 * Turf that is treated alike, as ground: what was outlined, less what lies on it.
 *
 * @param name the zone's name
 * @param grossM2 area outlined as this zone's turf, overlaps with zones listed before taken out
 * @param net the turf itself
 * @param minusM2 area taken out by each kind that lies on it, largest first; ground covered twice counts for
 *     the first of building, water, deck, paving, gravel, bed
 * @param areaSeM2 standard error of the net area, m²
 * @param grass what grows there; may be empty
 * @param trouble how poor it looks, 0 (sound) to 1; area-weighted over the zone's outlines
 * @param slopePct per cent; area-weighted
 * @param bag the composite it is bound to
 * @param outlines keys of the turf features that make it up
 * @param accounts how the area and its error came about, by output key
 */
public record Zone(
        String name,
        double grossM2,
        Region net,
        Map<Kind, Double> minusM2,
        double areaSeM2,
        String grass,
        OptionalDouble trouble,
        OptionalDouble slopePct,
        Optional<String> bag,
        List<String> outlines,
        Map<String, Account> accounts) {

    public Zone {
        minusM2 = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(minusM2));
        outlines = List.copyOf(outlines);
        accounts = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(accounts));
    }

    public double netAreaM2() {
        return net.areaM2();
    }
}
