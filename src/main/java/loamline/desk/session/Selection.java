package loamline.desk.session;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loamline.geometry.Point;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.yard.Zone;

/**
 * What is selected: drawn features, or a planned core, or a zone, or nothing.
 *
 * @param keys keys of features, in the order in which they were chosen
 * @param core id of a planned core, or blank
 * @param zone name of a zone, or blank
 */
public record Selection(List<String> keys, String core, String zone) {
    public static final Selection NOTHING = new Selection(List.of(), "", "");

    public Selection {
        keys = List.copyOf(keys);
    }

    public static Selection ofFeatures(List<String> keys) {
        return new Selection(keys, "", "");
    }

    public static Selection ofCore(String id) {
        return new Selection(List.of(), id, "");
    }

    public static Selection ofZone(String name) {
        return new Selection(List.of(), "", name);
    }

    /** The same without features that are no longer there. */
    public Selection within(Set<String> present) {
        return new Selection(keys.stream().filter(present::contains).toList(), core, zone);
    }

    /** What was computed at a place: a core within reach, else the zone there. */
    public static Selection at(Point place, double reachM, Results results) {
        Optional<PlannedCore> core = results.plan().stream()
                .flatMap(plan -> plan.cores().stream())
                .filter(c -> c.at().distanceTo(place) <= reachM)
                .min(Comparator.comparingDouble(c -> c.at().distanceTo(place)));
        if (core.isPresent()) {
            return ofCore(core.get().id());
        }
        return results.zones().stream()
                .filter(zone -> zone.net().covers(place))
                .map(Zone::name)
                .findFirst()
                .map(Selection::ofZone)
                .orElse(NOTHING);
    }
}
