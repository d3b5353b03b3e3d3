package loamline.sheets;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Walk;

/** What pages tell about a core plan. */
record WalkFacts(CorePlan plan, Figures figures) {
    /** What a lab needs: two cups. Nathan & Fresenburg, University of Missouri Extension G6954: 1.5 to 2 cups. */
    static final double LAB_ML = 473;

    List<Composite> bags() {
        return plan.composites();
    }

    /** The cores of a bag in the order of the walk; those without an order come last. */
    List<PlannedCore> inWalkOrder(Composite bag) {
        return plan.mainCores().stream()
                .filter(core -> core.composite().equals(bag.name()))
                .sorted(Comparator.comparingInt(core -> core.order().orElse(Integer.MAX_VALUE)))
                .toList();
    }

    /** Ids of the spares of a core. */
    List<String> sparesOf(PlannedCore core) {
        return plan.cores().stream()
                .filter(spare -> spare.spareOf().equals(Optional.of(core.id())))
                .map(PlannedCore::id)
                .toList();
    }

    /** The bag's own walk; empty if all bags are walked in one round. */
    Optional<Walk> walkOf(Composite bag) {
        return plan.walks().stream()
                .filter(walk -> walk.composite().equals(bag.name()))
                .findFirst();
    }

    /** How near a walk is to the shortest there is. */
    static String verdict(Walk walk) {
        return verdict(walk.lengthM(), walk.lowerBoundM(), walk.proven());
    }

    /** The same for walks taken together. */
    static String verdict(double lengthM, double lowerBoundM, boolean proven) {
        if (proven) {
            return "shortest possible walk";
        }
        return lowerBoundM > 0
                ? "within " + Figures.percent(excess(lengthM, lowerBoundM), 1) + " of the shortest walk"
                : "no bound known";
    }

    /** By how much a walk may exceed the shortest, rounded up to a tenth of a percent. */
    private static double excess(double lengthM, double lowerBoundM) {
        return Math.ceil(1000 * (lengthM / lowerBoundM - 1) - ROUNDING) / 1000;
    }

    /** A share that is rounding of lengths, in tenths of a percent. */
    private static final double ROUNDING = 1e-6;

    /** Plugs to take at every core so that the bag holds what a lab needs: equal plugs keep the mix fair. */
    static int plugsACore(Composite bag) {
        return bag.volumeMl() > 0 ? (int) Math.max(1, Math.ceil(LAB_ML / bag.volumeMl())) : 1;
    }

    /** The bag with the least soil. */
    Optional<Composite> leanest() {
        return bags().stream().min(Comparator.comparingDouble(Composite::volumeMl));
    }

    static String zones(Composite bag) {
        return String.join(", ", bag.zones());
    }
}
