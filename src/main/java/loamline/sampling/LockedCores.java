package loamline.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.yard.Core;
import loamline.yard.OwnCore;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * Drafts cores anew, but for those that are locked: they stay with their ids and spares, and their strata get no other.
 *
 * <p>A locked core belongs to the bag of the zone it lies in; off all zones, to the bag of its name; else it is left out.
 */
final class LockedCores {
    private final List<Zone> zones;
    private final EligibleGround eligible;
    private final List<OwnCore> locked;

    private LockedCores(Yard yard, List<Zone> zones, PlanOptions options) {
        this.zones = zones;
        this.eligible = EligibleGround.of(yard, options);
        this.locked =
                OwnCore.of(yard).stream().filter(own -> own.core().locked()).toList();
    }

    static Draft draft(Yard yard, List<Zone> zones, PlanOptions options) {
        Draft fresh = NewCores.draft(yard, zones, options);
        LockedCores cores = new LockedCores(yard, zones, options);
        return new Draft(fresh.bags().stream().map(cores::within).toList(), fresh.merges(), fresh.problems());
    }

    private Draft.Bag within(Draft.Bag bag) {
        List<OwnCore> own = locked.stream().filter(o -> isOf(bag, o.core())).toList();
        if (own.isEmpty()) {
            return bag;
        }
        List<Point> fixed = own.stream().map(o -> o.core().at()).toList();
        int[] homes = Homes.of(bag.strata(), bag.places(), fixed);
        List<Draft.Spot> spots = new ArrayList<>(bag.spots());
        for (int i = 0; i < homes.length; i++) {
            int home = homes[i];
            Optional<Draft.Spot> planned =
                    bag.spots().stream().filter(s -> s.stratum() == home).findFirst();
            spots.removeIf(spot -> spot.stratum() == home);
            spots.add(spot(bag, own.get(i), home, planned));
        }
        List<Region> grounds = zones.stream()
                .filter(zone -> bag.zones().contains(zone.name()))
                .map(eligible::in)
                .toList();
        return bag.with(
                spots, Spread.mssdM2(grounds, spots.stream().map(Draft.Spot::at).toList()));
    }

    private boolean isOf(Draft.Bag bag, Core core) {
        return zones.stream()
                .filter(zone -> zone.net().covers(core.at()))
                .findFirst()
                .map(zone -> bag.zones().contains(zone.name()))
                .orElseGet(() -> bag.name().equals(KeptCores.bagOf(core)));
    }

    /** The locked core in its stratum, with the spares it has, or else those planned there. */
    private static Draft.Spot spot(Draft.Bag bag, OwnCore own, int home, Optional<Draft.Spot> planned) {
        Core core = own.core();
        List<Point> spares = own.spares().isEmpty()
                ? planned.map(Draft.Spot::spares).orElse(List.of())
                : own.spares().stream().map(Core::at).toList();
        boolean keepsId = bag.name().equals(KeptCores.bagOf(core)) && !core.id().isBlank();
        return new Draft.Spot(
                planned.map(Draft.Spot::zone).orElse(core.zone()),
                home,
                core.at(),
                spares,
                keepsId ? Optional.of(core.id()) : Optional.empty());
    }
}
