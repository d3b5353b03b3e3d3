package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.Walk;

/** The few numbers at the head of the first page. */
record Tiles(Blocks blocks, WalkFacts facts) {
    /** Letters of zone names that a tile has room for. */
    private static final int LONGEST_NAMES = 36;

    /** More bags than this, and a walk through all of them, are told together. */
    private static final int MOST_BAGS = 3;

    /** All tiles in a row. */
    Block row() {
        List<Block> tiles = new ArrayList<>();
        boolean oneByOne = facts.bags().size() <= MOST_BAGS
                && facts.bags().stream().allMatch(bag -> facts.walkOf(bag).isPresent());
        if (oneByOne) {
            facts.bags().forEach(bag -> tiles.add(bag(bag)));
        } else {
            tiles.add(allBags());
            if (!facts.plan().walks().isEmpty()) {
                tiles.add(allWalks());
            }
        }
        facts.leanest().ifPresent(bag -> {
            tiles.add(tile(
                    "Probe",
                    facts.figures().probe(bag.probe()),
                    "a plug holds " + facts.figures().volume(bag.probe().coreMl())));
            tiles.add(soil(bag));
        });
        return Blocks.row(Tile.GAP_MM, tiles);
    }

    private Block bag(Composite bag) {
        String cores = Figures.count(bag.cores(), "core");
        return facts.walkOf(bag)
                .filter(walk -> walk.lengthM() > 0)
                .map(walk -> tile(
                        "Bag " + bag.name() + " · " + zones(bag),
                        cores + " · " + facts.figures().length(walk.lengthM()),
                        WalkFacts.verdict(walk)))
                .orElseGet(() -> tile("Bag " + bag.name(), cores, zones(bag)));
    }

    /** The bag's zones by name, or their number where the names are too long for a tile. */
    private static String zones(Composite bag) {
        String names = WalkFacts.zones(bag);
        return names.length() <= LONGEST_NAMES
                ? names
                : Figures.count(bag.zones().size(), "zone");
    }

    private Block allBags() {
        int cores = facts.bags().stream().mapToInt(Composite::cores).sum();
        long zones = facts.bags().stream()
                .flatMap(bag -> bag.zones().stream())
                .distinct()
                .count();
        return tile(
                Figures.count(facts.bags().size(), "bag"),
                Figures.count(cores, "core"),
                "from " + Figures.count((int) zones, "zone"));
    }

    private Block allWalks() {
        List<Walk> walks = facts.plan().walks();
        boolean proven = walks.stream().allMatch(Walk::proven);
        double bound = walks.stream().mapToDouble(Walk::lowerBoundM).sum();
        double length = facts.plan().totalWalkM();
        return tile(
                walks.size() == 1 ? "One walk for all bags" : Figures.count(walks.size(), "walk") + ", bag by bag",
                facts.figures().length(length),
                WalkFacts.verdict(length, bound, proven));
    }

    private Block soil(Composite leanest) {
        int plugs = WalkFacts.plugsACore(leanest);
        String need = "lab needs " + facts.figures().volume(WalkFacts.LAB_ML)
                + (plugs == 1 ? ", 2 cups" : ": " + plugs + " plugs a core");
        String label = facts.bags().size() == 1 ? "Soil in the bag" : "Soil in bag " + leanest.name() + ", the least";
        boolean alike = facts.bags().stream().allMatch(bag -> bag.volumeMl() == leanest.volumeMl());
        return tile(
                alike && facts.bags().size() > 1 ? "Soil in each bag" : label,
                facts.figures().volume(leanest.volumeMl()),
                need);
    }

    private Block tile(String label, String value, String under) {
        return new Tile(blocks).of(label, value, under);
    }
}
