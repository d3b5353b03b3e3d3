package loamline.sampling;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.account.Account;
import loamline.account.Problem;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.yard.Probe;

/**
 * Where the cores go and how they are walked.
 *
 * @param seed the seed it was made with
 * @param composites in order of their letters
 * @param cores all cores, then all spares, each in order of their ids
 * @param walks one a bag, or one for all
 * @param merges what it cost to put zones into one bag, in the order in which they were joined
 * @param problems what the planner could not do as asked
 * @param accounts how the numbers came about, by JSON pointer into the written result
 */
public record CorePlan(
        long seed,
        List<Composite> composites,
        List<PlannedCore> cores,
        List<Walk> walks,
        List<Merge> merges,
        List<Problem> problems,
        Map<String, Account> accounts) {

    public CorePlan {
        composites = List.copyOf(composites);
        cores = List.copyOf(cores);
        walks = List.copyOf(walks);
        merges = List.copyOf(merges);
        problems = List.copyOf(problems);
        accounts = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(accounts));
    }

    /**
     * One bag of soil.
     *
     * @param name A, B, C …, or the name its owner gave
     * @param zones names of the zones that share it
     * @param cores number of cores, spares not counted
     * @param areaM2 net turf of its zones, m²
     * @param eligibleM2 the part of it where cores may be taken, m²
     * @param stratumAreaCv standard deviation of the strata's areas over their mean, in the worst zone; empty for
     *     cores that were kept where they are, which have no strata
     * @param mssdM2 mean squared distance from the eligible ground to the nearest core of the bag, m²; empty
     *     without eligible ground
     * @param strata the ground each core stands for
     * @param probe the tool
     * @param volumeMl soil in the bag, ml
     */
    public record Composite(
            String name,
            List<String> zones,
            int cores,
            double areaM2,
            double eligibleM2,
            OptionalDouble stratumAreaCv,
            OptionalDouble mssdM2,
            List<Stratum> strata,
            Probe probe,
            double volumeMl) {
        public Composite {
            zones = List.copyOf(zones);
            strata = List.copyOf(strata);
        }
    }

    /**
     * The ground one core stands for.
     *
     * @param number counted from 1 within its composite
     * @param zone the zone it lies in
     * @param ground its cells, joined
     */
    public record Stratum(int number, String zone, Region ground) {}

    /**
     * A place to push the probe.
     *
     * @param id A1, A2 …; a spare has its core's id and an s
     * @param stratum number of its stratum in the composite, from 1; 0 if none
     * @param spareOf id of the core it stands in for; empty for a core
     * @param order position in its walk, from 1; empty for a spare
     */
    public record PlannedCore(
            String id,
            String composite,
            String zone,
            Point at,
            int stratum,
            Optional<String> spareOf,
            OptionalInt order) {}

    /**
     * A closed round: gate, every core once, gate.
     *
     * @param composite the bag's name; {@link #ALL} if all bags are walked in one round
     * @param lengthM m
     * @param lowerBoundM no round can be shorter, m
     * @param proven whether this round is proven to be the shortest
     * @param path every turn of the walk, the first point again at the end
     */
    public record Walk(String composite, double lengthM, double lowerBoundM, boolean proven, Polyline path) {
        /** The name of the round through all bags. */
        public static final String ALL = "all";
    }

    /**
     * Two groups of zones that were put into one bag.
     *
     * @param cost share of the differences between zones that the merge gives up, 0 to 1
     * @param why what differs most between them, in a sentence
     */
    public record Merge(List<String> left, List<String> right, double cost, String why) {
        public Merge {
            left = List.copyOf(left);
            right = List.copyOf(right);
        }
    }

    /** All cores that are not spares. */
    public List<PlannedCore> mainCores() {
        return cores.stream().filter(core -> core.spareOf().isEmpty()).toList();
    }

    public double totalWalkM() {
        return walks.stream().mapToDouble(Walk::lengthM).sum();
    }
}
