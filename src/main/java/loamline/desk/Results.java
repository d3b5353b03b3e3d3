package loamline.desk;

import java.util.ArrayList;
import java.util.List;
import loamline.account.Problem;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.sampling.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.YardCheck;
import loamline.yard.Zone;
import loamline.yard.Zones;

/** Everything computed from a yard. */
record Results(Yard yard, PlanOptions options, List<Zone> zones, CorePlan plan, List<Problem> problems) {
    /** Computes it all; takes a second or so for a large yard. */
    static Results of(Yard yard, PlanOptions options) {
        CorePlan plan = CorePlanner.plan(yard, options);
        List<Problem> problems = new ArrayList<>(YardCheck.of(yard));
        problems.addAll(plan.problems());
        return new Results(yard, options, Zones.of(yard), plan, List.copyOf(problems));
    }
}
