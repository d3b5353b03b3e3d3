package loamline.sampling;

import java.util.ArrayList;
import java.util.List;
import loamline.account.Problem;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * Plans cores and the walk to them.
 *
 * <p>Case by case: without turf there are no composites, and that is no error here. A zone too narrow for a core
 * is left out, with a warning. A core that cannot be reached on foot stays in the plan without an order, with an
 * error. Cores are numbered in the order of the walk.
 */
public final class CorePlanner {
    private CorePlanner() {}

    /** The plan for a yard. The same yard and options give the same plan. */
    public static CorePlan plan(Yard yard, PlanOptions options) {
        List<Zone> zones = Zones.of(yard);
        Draft draft = options.keep() ? KeptCores.draft(yard, zones, options) : NewCores.draft(yard, zones, options);
        List<Round> rounds = Rounds.walk(yard, draft.bags(), options);
        return assembled(draft, rounds, options);
    }

    private static CorePlan assembled(Draft draft, List<Round> rounds, PlanOptions options) {
        List<PlannedCore> cores = new ArrayList<>();
        List<PlannedCore> spares = new ArrayList<>();
        for (Draft.Bag bag : draft.bags()) {
            Numbering.of(bag, rounds).addTo(cores, spares);
        }
        cores.addAll(spares);
        List<Problem> problems = new ArrayList<>(draft.problems());
        rounds.forEach(round -> problems.addAll(round.problems()));
        List<Composite> composites = draft.bags().stream()
                .map(bag -> composite(bag, options.probe()))
                .toList();
        List<CorePlan.Walk> walks = rounds.stream().map(Round::walk).toList();
        return new CorePlan(
                options.seed(),
                composites,
                cores,
                walks,
                draft.merges(),
                problems,
                PlanAccounts.of(composites, cores, walks, options));
    }

    private static Composite composite(Draft.Bag bag, Probe probe) {
        return new Composite(
                bag.name(),
                bag.zones(),
                bag.spots().size(),
                bag.areaM2(),
                bag.eligibleM2(),
                bag.stratumAreaCv(),
                bag.mssdM2(),
                bag.strata(),
                probe,
                bag.spots().size() * probe.coreMl());
    }
}
