package loamline.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.sampling.CorePlan.Stratum;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.Zone;

/** Drafts cores anew: which zones share a bag, how many cores each, and where. */
final class NewCores {
    /** Steps between the seeds of zones, so that draws in one zone never repeat another's. */
    private static final long SEED_STEP = 1_000_003;

    private final PlanOptions options;
    private final List<Plot> plots = new ArrayList<>();
    private final List<Point> placed = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    /** A zone with ground for cores. */
    private record Plot(Zone zone, Region ground, long seed) {}

    private NewCores(Yard yard, List<Zone> zones, PlanOptions options) {
        this.options = options;
        EligibleGround eligible = EligibleGround.of(yard, options);
        for (Zone zone : zones) {
            Region ground = eligible.in(zone);
            if (ground.isEmpty()) {
                problems.add(noRoom(yard, zone));
            } else {
                plots.add(new Plot(zone, ground, options.seed() + SEED_STEP * plots.size()));
            }
        }
    }

    static Draft draft(Yard yard, List<Zone> zones, PlanOptions options) {
        return new NewCores(yard, zones, options).draft(yard);
    }

    private Draft draft(Yard yard) {
        List<Zone> zones = plots.stream().map(Plot::zone).toList();
        Grouping grouping = Grouping.of(ZoneTraits.of(yard, zones), options.kits());
        problems.addAll(grouping.problems());
        List<String> letters = Letters.forBags(
                grouping.groups().stream().map(Grouping.Bag::bound).toList());
        List<Draft.Bag> bags = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            List<String> names = grouping.groups().get(i).zones();
            bags.add(bag(
                    letters.get(i),
                    plots.stream().filter(p -> names.contains(p.zone().name())).toList()));
        }
        return new Draft(bags, grouping.merges(), problems);
    }

    private static Problem noRoom(Yard yard, Zone zone) {
        int index = yard.indexOf(yard.feature(zone.outlines().get(0)).orElseThrow());
        return Problem.warning(
                "ZONE_NO_ROOM",
                Where.feature(index),
                "Zone \"" + zone.name() + "\" has no ground left for a core once edges, heads and keep-away spots are"
                        + " stayed clear of. Make the edge buffer smaller, or leave the zone out of the samples.");
    }

    private Draft.Bag bag(String letter, List<Plot> members) {
        int[] shares = Allocation.shares(
                options.coresPerComposite(),
                members.stream().mapToDouble(p -> p.ground().areaM2()).toArray());
        List<Stratum> strata = new ArrayList<>();
        List<Draft.Spot> spots = new ArrayList<>();
        double worstCv = 0;
        for (int i = 0; i < shares.length; i++) {
            Plot plot = members.get(i);
            String name = plot.zone().name();
            ZoneStrata divided = ZoneStrata.of(plot.ground(), shares[i], plot.seed());
            worstCv = Math.max(worstCv, divided.areaCv());
            List<Draft.Spot> own = divided.spots(name, strata.size() + 1, options, plot.seed(), placed);
            spots.addAll(own);
            own.forEach(spot -> placed.add(spot.at()));
            divided.regions().forEach(ground -> strata.add(new Stratum(strata.size() + 1, name, ground)));
        }
        List<Region> grounds = members.stream().map(Plot::ground).toList();
        return new Draft.Bag(
                letter,
                members.stream().map(p -> p.zone().name()).toList(),
                members.stream().mapToDouble(p -> p.zone().netAreaM2()).sum(),
                grounds.stream().mapToDouble(Region::areaM2).sum(),
                OptionalDouble.of(worstCv),
                Spread.mssdM2(grounds, spots.stream().map(Draft.Spot::at).toList()),
                strata,
                spots);
    }
}
