package loamline.sampling;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.account.Account;
import loamline.account.Source;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Walk;
import loamline.yard.PlanOptions;

/** How the numbers of a core plan came about, by JSON pointer into the written result. */
final class PlanAccounts {
    private static final Source STRATA = new Source(
            "walvoort-2010",
            "Walvoort, Brus & de Gruijter 2010, An R package for spatial coverage sampling and random sampling from"
                    + " compact geographical strata by k-means, Computers & Geosciences 36:1261-1267");
    private static final Source HELD_KARP = new Source(
            "held-karp-1962",
            "Held & Karp 1962, A dynamic programming approach to sequencing problems, J. SIAM 10:196-210");
    private static final Source ONE_TREE = new Source(
            "held-karp-1971",
            "Held & Karp 1971, The traveling-salesman problem and minimum spanning trees: part II,"
                    + " Mathematical Programming 1:6-25");
    private static final Source CORES = new Source(
            "missouri-g6954", "Nathan & Fresenburg, University of Missouri Extension G6954: 12 cores or more");
    private static final Source GEOMETRY = new Source("cylinder", "Volume of a cylinder");

    private final Map<String, Account> accounts = new LinkedHashMap<>();

    private final boolean kept;

    private PlanAccounts(boolean kept) {
        this.kept = kept;
    }

    /** @param kept whether the cores are the yard's own, left where they are */
    static Map<String, Account> of(
            List<Composite> composites, List<PlannedCore> cores, List<Walk> walks, PlanOptions options, boolean kept) {
        PlanAccounts all = new PlanAccounts(kept);
        for (int i = 0; i < composites.size(); i++) {
            all.composite("/composites/" + i, composites.get(i), options);
            all.errors("/composites/" + i, composites.get(i));
        }
        for (int i = 0; i < cores.size(); i++) {
            all.core("/cores/" + i, cores.get(i), composites, options);
        }
        for (int i = 0; i < walks.size(); i++) {
            all.walk("/walks/" + i, walks.get(i));
        }
        Account total = Account.of("total = Σ lengthM", "All rounds together.");
        for (Walk walk : walks) {
            total = total.with(walk.composite() + "_m", walk.lengthM());
        }
        all.accounts.put("/totalWalkM", total);
        return all.accounts;
    }

    private void composite(String at, Composite bag, PlanOptions options) {
        accounts.put(
                at + "/areaM2",
                Account.of("A = Σ net area of the zones", "Net turf; cores keep to the eligible part of it.")
                        .with("zones", String.join(", ", bag.zones()))
                        .with("eligible_m2", bag.eligibleM2())
                        .with("edgeBuffer_m", options.edgeBufferM()));
        accounts.put(
                at + "/cores",
                Account.of(
                                "n shared by eligible area, largest remainder, at least one a zone",
                                "More cores make the mean surer: its error falls with the root of n.",
                                CORES,
                                Allocation.LARGEST_REMAINDER)
                        .with("n", bag.cores()));
        accounts.put(
                at + "/probe/volumeMl",
                Account.of("V = n · π/4 · d² · depth", "Plugs as cut, before roots and thatch are taken off.", GEOMETRY)
                        .with("n", bag.cores())
                        .with("d_m", bag.probe().diameterM())
                        .with("depth_m", bag.probe().depthM()));
        bag.stratumAreaCv()
                .ifPresent(cv -> accounts.put(
                        at + "/stratumAreaCv",
                        Account.of(
                                        "cv = sd(stratum areas) / mean, in the zone where it is largest",
                                        "Equal strata make equal plugs an unbiased mean.",
                                        STRATA)
                                .with("strata", bag.strata().size())));
        bag.mssdM2()
                .ifPresent(mssd -> accounts.put(
                        at + "/mssdM2",
                        Account.of(
                                        "mean over cells of min |cell − core|²",
                                        "The smaller, the better the cores are spread.",
                                        STRATA)
                                .with("cell_m", Spread.CELL_M)
                                .with("eligible_m2", bag.eligibleM2())
                                .with("n", bag.cores())));
    }

    private void errors(String at, Composite bag) {
        List<ExpectedError> errors = ExpectedError.of(bag.cores());
        for (int i = 0; i < errors.size(); i++) {
            accounts.put(
                    at + "/expectedErrors/" + i + "/halfWidthPct", errors.get(i).account());
        }
    }

    private void core(String at, PlannedCore core, List<Composite> composites, PlanOptions options) {
        if (core.stratum() == 0) {
            accounts.put(at, Account.of("kept", "The yard's own core, left where it is."));
            return;
        }
        Composite bag = composites.stream()
                .filter(c -> c.name().equals(core.composite()))
                .findFirst()
                .orElseThrow();
        accounts.put(
                at,
                Account.of(how(core, options), "Stands for a = A / n of the bag's turf.", STRATA)
                        .with("stratum", core.stratum())
                        .with("A_m2", bag.areaM2())
                        .with("n", bag.cores())
                        .with("a_m2", bag.areaM2() / bag.cores())
                        .with("seed", options.seed()));
    }

    private String how(PlannedCore core, PlanOptions options) {
        if (kept) {
            return "kept where it was set";
        }
        if (core.spareOf().isPresent()) {
            return "the place in the stratum farthest from all cores and from its border";
        }
        return options.place() == PlanOptions.Place.CENTRE
                ? "centre of gravity of its stratum, moved into it where it lies outside"
                : "random place in its stratum";
    }

    private void walk(String at, Walk walk) {
        String note = walk.proven()
                ? "No shorter round exists."
                : "No round can be shorter than the bound; this one is at most so much longer.";
        accounts.put(
                at + "/lengthM",
                Account.of("shortest closed round over obstacle-avoiding distances", note, HELD_KARP, ONE_TREE)
                        .with("lowerBound_m", walk.lowerBoundM())
                        .with("turns", walk.path().points().size()));
        accounts.put(
                at + "/lowerBoundM",
                Account.of(
                        walk.proven() ? "the length of the round, proven shortest" : "1-tree bound by subgradient",
                        note,
                        HELD_KARP,
                        ONE_TREE));
    }
}
