package loamline.desk.zones;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loamline.desk.session.Results;
import loamline.desk.tool.Effect;
import loamline.sampling.CorePlan;
import loamline.yard.PlanOptions;
import loamline.yard.Turf;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.ZoneEdits;

/**
 * The zones of a yard by the bags that they share.
 *
 * @param yard what it was made of
 * @param bags in order of their names; zones in none, for want of ground or of a plan, come last in a bag without a name
 * @param merges what putting zones together gives up, a sentence each
 */
public record ZoneBags(Yard yard, List<Bag> bags, List<String> merges) {
    public ZoneBags {
        bags = List.copyOf(bags);
        merges = List.copyOf(merges);
    }

    /**
     * Zones that share a bag.
     *
     * @param name blank for zones that are in none
     */
    public record Bag(String name, List<Zone> zones) {
        public Bag {
            zones = List.copyOf(zones);
        }

        public double areaM2() {
            return zones.stream().mapToDouble(Zone::netAreaM2).sum();
        }
    }

    /** What can be done, or why not. */
    public record Answer(Optional<Effect.Edit> edit, String refusal) {
        static Answer edit(String label, Yard after) {
            return new Answer(Optional.of(new Effect.Edit(label, after)), "");
        }

        static Answer refused(String words) {
            return new Answer(Optional.empty(), words);
        }
    }

    public static ZoneBags of(Results results) {
        Map<String, List<Zone>> byBag = new LinkedHashMap<>();
        for (Zone zone : results.zones()) {
            String bag = results.plan()
                    .map(plan -> bagOf(zone, plan))
                    .orElse(zone.bag().orElse(""));
            byBag.computeIfAbsent(bag, name -> new ArrayList<>()).add(zone);
        }
        List<Bag> bags = byBag.entrySet().stream()
                .map(entry -> new Bag(entry.getKey(), entry.getValue()))
                .sorted(java.util.Comparator.comparing((Bag bag) -> bag.name().isEmpty())
                        .thenComparing(bag -> bag.name().length())
                        .thenComparing(Bag::name))
                .toList();
        List<String> merges = results.plan().stream()
                .flatMap(plan -> plan.merges().stream())
                .map(ZoneBags::sentence)
                .toList();
        return new ZoneBags(results.yard(), bags, merges);
    }

    private static String bagOf(Zone zone, CorePlan plan) {
        return plan.composites().stream()
                .filter(composite -> composite.zones().contains(zone.name()))
                .map(CorePlan.Composite::name)
                .findFirst()
                .orElse("");
    }

    private static String sentence(CorePlan.Merge merge) {
        List<String> zones = new ArrayList<>(merge.left());
        zones.addAll(merge.right());
        return "Putting " + listed(zones) + " together gives up " + Math.round(100 * merge.cost())
                + " % of the differences between zones. " + merge.why();
    }

    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** Names of the bags, and one more that is free. */
    public List<String> choices() {
        List<String> names = bags.stream()
                .map(Bag::name)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(ArrayList::new));
        IntStream.rangeClosed('A', 'Z')
                .mapToObj(letter -> String.valueOf((char) letter))
                .filter(letter -> !names.contains(letter))
                .findFirst()
                .ifPresent(names::add);
        return names;
    }

    /** Why the zones share bags as they do, in a sentence. */
    public String why() {
        long named = bags.stream().filter(bag -> !bag.name().isEmpty()).count();
        boolean bound = yard.all(Turf.class).anyMatch(turf -> turf.bag().isPresent());
        if (named == 0) {
            return "Zones that share a bag are mixed into one lab sample.";
        }
        if (bound) {
            return "You chose which zones share a bag.";
        }
        return merges.isEmpty()
                ? "Every zone has a bag, and so a lab sample, of its own."
                : "Zones that are least unlike share a bag, so that " + named
                        + (named == 1 ? " lab sample does" : " lab samples do") + " for all.";
    }

    /** Moves a zone to a bag; all zones are bound to the bags they are in, so that nothing else moves. */
    public Optional<Effect.Edit> move(String zone, String bag) {
        Map<String, String> bound = new LinkedHashMap<>();
        bags.stream()
                .filter(b -> !b.name().isEmpty())
                .forEach(b -> b.zones().forEach(z -> bound.put(z.name(), b.name())));
        if (bag.equals(bound.put(zone, bag))) {
            return Optional.empty();
        }
        Yard after = ZoneEdits.bound(yard, bound);
        return after.equals(yard)
                ? Optional.empty()
                : Optional.of(new Effect.Edit("put zone " + zone + " into bag " + bag, after));
    }

    /**
     * Lets the planner choose the bags under a budget.
     *
     * @param samples what was written: how many lab samples may be sent
     */
    public Answer propose(String samples) {
        int kits;
        try {
            kits = Integer.parseInt(samples.strip());
        } catch (NumberFormatException e) {
            kits = 0;
        }
        if (kits < 1) {
            return Answer.refused("A number of lab samples is a whole number from 1 on.");
        }
        PlanOptions o = yard.planning().orElse(PlanOptions.USUAL);
        PlanOptions asked = new PlanOptions(
                OptionalInt.of(kits),
                o.coresPerComposite(),
                o.edgeBufferM(),
                o.trunkBufferM(),
                o.headBufferM(),
                o.place(),
                o.sparesPerStratum(),
                o.seed(),
                o.walk(),
                o.probe(),
                o.extras());
        return Answer.edit(
                "propose " + kits + (kits == 1 ? " bag" : " bags"),
                ZoneEdits.unbound(yard).withPlanning(asked));
    }

    /** Frees all zones of the bags they were bound to; nothing if none is. */
    public Optional<Effect.Edit> forget() {
        Yard after = ZoneEdits.unbound(yard);
        return after.equals(yard) ? Optional.empty() : Optional.of(new Effect.Edit("forget the bags", after));
    }

    /** Renames a zone. */
    public Answer rename(String zone, String written) {
        String name = written.strip();
        if (name.isEmpty()) {
            return Answer.refused("A zone needs a name.");
        }
        boolean taken = !name.equals(zone)
                && yard.all(Turf.class).anyMatch(turf -> turf.zone().equals(name));
        return taken
                ? Answer.refused("There is a zone of that name; join the two on the map to make them one.")
                : Answer.edit("rename zone " + zone, ZoneEdits.renamed(yard, zone, name));
    }

    /** Says what grows in a zone; blank if that is not known. */
    public Effect.Edit grass(String zone, String written) {
        return new Effect.Edit("grass of zone " + zone, ZoneEdits.withGrass(yard, zone, written.strip()));
    }
}
