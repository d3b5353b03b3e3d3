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
import loamline.yard.Core;
import loamline.yard.Yard;
import loamline.yard.Zone;

/** Takes the yard's own cores as they stand: bag, zone and id are kept where given. */
final class KeptCores {
    private KeptCores() {}

    static Draft draft(Yard yard, List<Zone> zones, PlanOptions options) {
        Map<String, List<Core>> byBag = yard.all(Core.class)
                .collect(Collectors.groupingBy(
                        core -> core.composite().isBlank() ? Letters.letter(0) : core.composite(),
                        LinkedHashMap::new,
                        Collectors.toList()));
        EligibleGround eligible = EligibleGround.of(yard, options);
        List<Draft.Bag> bags = new ArrayList<>();
        byBag.forEach((name, cores) -> bags.add(bag(name, cores, zones, eligible)));
        List<Problem> problems = bags.isEmpty()
                ? List.of(Problem.error(
                        "NO_CORES",
                        Where.WHOLE,
                        "The yard has no cores to keep. Plan them first, or leave out --keep."))
                : List.of();
        return new Draft(bags, List.of(), problems);
    }

    private static Draft.Bag bag(String name, List<Core> cores, List<Zone> zones, EligibleGround eligible) {
        List<Draft.Spot> spots = cores.stream()
                .map(core -> new Draft.Spot(
                        zoneOf(core, zones),
                        0,
                        core.at(),
                        List.of(),
                        Optional.of(core.id()).filter(id -> !id.isBlank())))
                .toList();
        List<Zone> covered = zones.stream()
                .filter(zone -> spots.stream().anyMatch(spot -> spot.zone().equals(zone.name())))
                .toList();
        List<Region> grounds = covered.stream().map(eligible::in).toList();
        List<Point> points = spots.stream().map(Draft.Spot::at).toList();
        return new Draft.Bag(
                name,
                covered.stream().map(Zone::name).toList(),
                covered.stream().mapToDouble(Zone::netAreaM2).sum(),
                grounds.stream().mapToDouble(Region::areaM2).sum(),
                OptionalDouble.empty(),
                Spread.mssdM2(grounds, points),
                List.of(),
                spots);
    }

    private static String zoneOf(Core core, List<Zone> zones) {
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
