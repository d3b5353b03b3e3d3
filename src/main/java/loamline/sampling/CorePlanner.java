package loamline.sampling;

import java.util.ArrayList;
import java.util.List;
import loamline.account.Problem;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.yard.PlanOptions;
import loamline.yard.Probe;
import loamline.yard.Yard;
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

    /** The plan for a yard, its own cores left out of account. The same yard and options give the same plan. */
    public static CorePlan plan(Yard yard, PlanOptions options) {
        return walked(yard, NewCores.draft(yard, Zones.of(yard), options), options, false);
    }

    /** The yard's own cores where they are, and the walk to them. */
    public static CorePlan keep(Yard yard, PlanOptions options) {
        return walked(yard, KeptCores.draft(yard, Zones.of(yard), options), options, true);
    }

    /** The plan that stands: the yard's own cores if it has any, else planned as the yard says or as is usual. */
    public static CorePlan standing(Yard yard) {
        PlanOptions options = yard.planning().orElse(PlanOptions.USUAL);
        return HandChanges.isByHand(yard) ? keep(yard, options) : plan(yard, options);
    }

    /** Planned as the yard says, but its locked cores stay; a stratum that has one gets no other. */
    public static CorePlan planRest(Yard yard) {
        PlanOptions options = yard.planning().orElse(PlanOptions.USUAL);
        return walked(yard, LockedCores.draft(yard, Zones.of(yard), options), options, false);
    }

    private static CorePlan walked(Yard yard, Draft draft, PlanOptions options, boolean kept) {
        List<Round> rounds = Rounds.walk(yard, draft.bags(), options);
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
                PlanAccounts.of(composites, cores, walks, options, kept));
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
