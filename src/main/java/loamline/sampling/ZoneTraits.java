package loamline.sampling;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Point;
import loamline.yard.Head;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * What is known of a zone that may set its soil apart.
 *
 * @param areaM2 its weight, m²
 * @param trouble 0 to 1, if known
 * @param slopePct per cent, if known
 * @param valve the valve that most heads in it belong to, if any stands there
 * @param grass if known
 * @param bag the composite it is bound to, if any
 * @param centre where it lies
 */
record ZoneTraits(
        String name,
        double areaM2,
        OptionalDouble trouble,
        OptionalDouble slopePct,
        Optional<String> valve,
        Optional<String> grass,
        Optional<String> bag,
        Point centre) {

    /** The traits of zones that have ground, in order. */
    static List<ZoneTraits> of(Yard yard, List<Zone> zones) {
        return zones.stream()
                .filter(zone -> !zone.net().isEmpty())
                .map(zone -> new ZoneTraits(
                        zone.name(),
                        zone.netAreaM2(),
                        zone.trouble(),
                        zone.slopePct(),
                        mainValve(yard, zone),
                        Optional.of(zone.grass()).filter(grass -> !grass.isBlank()),
                        zone.bag(),
                        zone.net().centroid().orElseThrow()))
                .toList();
    }

    /** Heads stand on the border as often as not, so a head this near counts as in the zone. */
    private static final double BESIDE_M = 0.3;

    private static Optional<String> mainValve(Yard yard, Zone zone) {
        Map<String, Integer> heads = new LinkedHashMap<>();
        yard.all(Head.class)
                .filter(head -> !head.valve().isBlank())
                .filter(head -> zone.net().covers(head.at()) || zone.net().distanceToEdge(head.at()) <= BESIDE_M)
                .forEach(head -> heads.merge(head.valve(), 1, Integer::sum));
        return heads.entrySet().stream()
                .max(Comparator.comparingInt(Map.Entry<String, Integer>::getValue)
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey);
    }
}
