package loamline.sampling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import loamline.geometry.Point;
import loamline.sampling.CorePlan.PlannedCore;

/**
 * Numbers a bag's cores: in the order in which the walk meets them, then those it cannot reach. An id that a core
 * has already is kept, and no other core gets it.
 */
final class Numbering {
    private final Draft.Bag bag;
    private final IdentityHashMap<Draft.Spot, Integer> order = new IdentityHashMap<>();
    private final Set<String> taken = new HashSet<>();
    private int next = 1;

    private Numbering(Draft.Bag bag, List<Round> rounds) {
        this.bag = bag;
        for (Round round : rounds) {
            for (int i = 0; i < round.spots().size(); i++) {
                order.put(round.spots().get(i), i + 1);
            }
        }
        bag.spots().forEach(spot -> spot.id().ifPresent(taken::add));
    }

    static Numbering of(Draft.Bag bag, List<Round> rounds) {
        return new Numbering(bag, rounds);
    }

    /** Adds the bag's cores and spares, each in order of their numbers. */
    void addTo(List<PlannedCore> cores, List<PlannedCore> spares) {
        List<Draft.Spot> walked = new ArrayList<>(bag.spots());
        walked.sort(Comparator.comparingInt(spot -> order.getOrDefault(spot, Integer.MAX_VALUE)));
        for (Draft.Spot spot : walked) {
            String id = spot.id().orElseGet(this::freeId);
            OptionalInt place = order.containsKey(spot) ? OptionalInt.of(order.get(spot)) : OptionalInt.empty();
            cores.add(core(id, spot, spot.at(), Optional.empty(), place));
            for (int i = 0; i < spot.spares().size(); i++) {
                String spareId = id + "s" + (i == 0 ? "" : i + 1);
                spares.add(core(spareId, spot, spot.spares().get(i), Optional.of(id), OptionalInt.empty()));
            }
        }
    }

    private PlannedCore core(String id, Draft.Spot spot, Point at, Optional<String> spareOf, OptionalInt place) {
        return new PlannedCore(id, bag.name(), spot.zone(), at, spot.stratum(), spareOf, place);
    }

    private String freeId() {
        String id = bag.name() + next++;
        return taken.contains(id) ? freeId() : id;
    }
}
