package loamline.desk.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.account.Problem;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.yard.Yard;
import loamline.yard.YardCheck;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * What was computed from a yard. Zones and problems come first, within a moment; the plan of the cores follows.
 *
 * @param yard what it was computed from
 * @param zones turf parts with their net areas
 * @param plan cores and walks; empty while they are being planned
 * @param problems what is wrong with the yard, and with the plan once it is there
 */
public record Results(Yard yard, List<Zone> zones, Optional<CorePlan> plan, List<Problem> problems) {
    public Results {
        zones = List.copyOf(zones);
        problems = List.copyOf(problems);
    }

    /** Zones and problems of a yard, quick enough to follow a drag. */
    public static Results ground(Yard yard) {
        return new Results(yard, Zones.of(yard), Optional.empty(), YardCheck.of(yard));
    }

    /** The same with the cores planned; takes a second or so for a large yard. */
    public Results planned() {
        CorePlan made = CorePlanner.standing(yard);
        List<Problem> all = new ArrayList<>(problems);
        all.addAll(made.problems());
        return new Results(yard, zones, Optional.of(made), all);
    }
}
