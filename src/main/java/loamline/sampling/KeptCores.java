package loamline.sampling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.sampling.CorePlan.Stratum;
import loamline.yard.Core;
import loamline.yard.OwnCore;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * Takes the yard's own cores as they stand: bag, zone and id are kept where given, spares stay with their cores. Where
 * the yard says how it is planned, each core is set beside the strata that the planner would make.
 */
final class KeptCores {
    private final Yard yard;
    private final List<Zone> zones;
    private final EligibleGround eligible;
    private final Optional<Draft> fresh;
    private final List<Problem> problems = new ArrayList<>();

    private KeptCores(Yard yard, List<Zone> zones, PlanOptions options) {
        this.yard = yard;
        this.zones = zones;
        this.eligible = EligibleGround.of(yard, options);
        this.fresh = yard.planning().map(said -> NewCores.draft(yard, zones, options));
    }

    static Draft draft(Yard yard, List<Zone> zones, PlanOptions options) {
        return new KeptCores(yard, zones, options).draft();
    }

    /** The name of a core's bag: its own, or A. */
    static String bagOf(Core core) {
        return core.composite().isBlank() ? Letters.letter(0) : core.composite();
    }

    private Draft draft() {
        Map<String, List<OwnCore>> byBag = OwnCore.of(yard).stream()
                .collect(Collectors.groupingBy(own -> bagOf(own.core()), LinkedHashMap::new, Collectors.toList()));
        List<Draft.Bag> bags = new ArrayList<>();
        byBag.forEach((name, cores) -> bags.add(bag(name, cores)));
        if (bags.isEmpty()) {
            problems.add(Problem.error(
                    "NO_CORES", Where.WHOLE, "The yard has no cores to keep. Plan them first, or leave out --keep."));
        }
        fresh.ifPresent(draft -> problems.addAll(draft.problems()));
        return new Draft(bags, fresh.map(Draft::merges).orElse(List.of()), problems);
    }

    private Draft.Bag bag(String name, List<OwnCore> cores) {
        Optional<Draft.Bag> divided = fresh.flatMap(draft ->
                draft.bags().stream().filter(bag -> bag.name().equals(name)).findFirst());
        List<Stratum> strata = divided.map(Draft.Bag::strata).orElse(List.of());
        List<Point> points = cores.stream().map(own -> own.core().at()).toList();
        int[] homes = Homes.of(strata, divided.map(Draft.Bag::places).orElse(List.of()), points);
        List<Draft.Spot> spots = new ArrayList<>();
        for (int i = 0; i < homes.length; i++) {
            spots.add(spot(cores.get(i), homes[i]));
        }
        if (fresh.isPresent()) {
            problems.addAll(new Astray(yard, zones, eligible).of(name, cores, homes, strata));
        }
        List<Zone> covered = zones.stream()
                .filter(zone -> spots.stream().anyMatch(spot -> spot.zone().equals(zone.name())))
                .toList();
        List<Region> grounds = covered.stream().map(eligible::in).toList();
        return new Draft.Bag(
                name,
                covered.stream().map(Zone::name).toList(),
                covered.stream().mapToDouble(Zone::netAreaM2).sum(),
                grounds.stream().mapToDouble(Region::areaM2).sum(),
                divided.map(Draft.Bag::stratumAreaCv).orElse(OptionalDouble.empty()),
                Spread.mssdM2(grounds, points),
                strata,
                spots);
    }

    private Draft.Spot spot(OwnCore own, int home) {
        Core core = own.core();
        return new Draft.Spot(
                zoneOf(core),
                home,
                core.at(),
                own.spares().stream().map(Core::at).toList(),
                Optional.of(core.id()).filter(id -> !id.isBlank()));
    }

    private String zoneOf(Core core) {
        if (!core.zone().isBlank()) {
            return core.zone();
        }
        return zones.stream()
                .filter(zone -> zone.net().covers(core.at()))
                .map(Zone::name)
                .findFirst()
                .orElse("");
    }
}
