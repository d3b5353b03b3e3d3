package loamline.desk;

import java.util.Comparator;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.yard.Zone;

/**
 * What is selected: a core, a zone or nothing.
 *
 * @param core id of a core, or blank
 * @param zone name of a zone, or blank
 */
record Selection(String core, String zone) {
    static final Selection NOTHING = new Selection("", "");

    /** What lies at a place: a core within reach, else the zone there. */
    static Selection at(Point place, double reachM, Results results) {
        Optional<PlannedCore> core = results.plan().cores().stream()
                .filter(c -> c.at().distanceTo(place) <= reachM)
                .min(Comparator.comparingDouble(c -> c.at().distanceTo(place)));
        if (core.isPresent()) {
            return new Selection(core.get().id(), "");
        }
        return results.zones().stream()
                .filter(zone -> zone.net().covers(place))
                .map(Zone::name)
                .findFirst()
                .map(name -> new Selection("", name))
                .orElse(NOTHING);
    }
}
