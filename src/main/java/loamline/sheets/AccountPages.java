package loamline.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.account.Source;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.Merge;
import loamline.sampling.CorePlan.Walk;
import loamline.sampling.ExpectedError;
import loamline.scene.PaperRect;
import loamline.yard.Zone;

/** How the numbers of a walk plan came about: areas, bags, walks, then formulas and their sources. */
record AccountPages(List<Zone> zones, WalkFacts facts, Blocks blocks, PaperRect paper) {
    private static final String CAUTION =
            "Areas come from tracing and carry its error. Advice, not a substitute for local extension guidance.";
    private static final double ROW_MM = 4.6;
    private static final double SECTION_MM = 3.6;

    /** Where the practice on the other pages comes from. */
    private static final List<Source> PRACTICE = List.of(
            new Source(
                    "missouri-g6954",
                    "Nathan & Fresenburg, University of Missouri Extension G6954: plastic bucket,"
                            + " thatch off, air-dry, 1.5 to 2 cups to the lab"),
            new Source(
                    "georgia-plank",
                    "Plank, University of Georgia, Sampling and Sample Preparation: clean plastic, no metal"));

    List<Page> pages() {
        Sections sections = new Sections(blocks, new Column(), SECTION_MM, ROW_MM);
        sections.table("Turf", zoneTable(), zones, this::words);
        sections.table("Bags", bagTable(), facts.bags(), this::words);
        sections.table("Walks", walkTable(), facts.plan().walks(), this::words);
        sections.table("Zones that share a bag", mergeTable(), facts.plan().merges(), AccountPages::words);
        sections.doubts(facts.plan().problems());
        Citations citations = new Citations();
        sections.table("Formulas", formulaTable(), formulas(citations), row -> row);
        PRACTICE.forEach(citations::number);
        sections.sources(citations);
        return sections.column().pages(paper, "how these numbers came about", CAUTION);
    }

    private List<Table.Field> zoneTable() {
        return List.of(
                Table.Field.words("zone", 40).strong(),
                Table.Field.number("outlined", 26),
                Table.Field.words("taken out", 74),
                Table.Field.number("net ± standard error", 40));
    }

    private List<String> words(Zone zone) {
        Figures figures = facts.figures();
        String minus = zone.minusM2().entrySet().stream()
                .map(taken -> taken.getKey().word() + " " + figures.area(taken.getValue()))
                .collect(Collectors.joining(", "));
        return List.of(
                zone.name(),
                figures.area(zone.grossM2()),
                minus.isEmpty() ? "–" : minus,
                figures.area(zone.netAreaM2(), zone.areaSeM2()));
    }

    private List<Table.Field> bagTable() {
        return List.of(
                Table.Field.words("bag", 8).strong(),
                Table.Field.words("zones, cores each", 52).sized(Sections.DENSE_PT),
                Table.Field.number("cores", 12),
                Table.Field.number("turf", 20),
                Table.Field.number("a core for", 20),
                Table.Field.number("strata vary", 20),
                Table.Field.number("rms to core", 20),
                Table.Field.words("expected error of the mean", 44).sized(Sections.DENSE_PT));
    }

    private List<String> words(Composite bag) {
        Figures figures = facts.figures();
        Map<String, Long> shares = facts.inWalkOrder(bag).stream()
                .collect(Collectors.groupingBy(core -> core.zone(), LinkedHashMap::new, Collectors.counting()));
        String zonesAndCores = bag.zones().stream()
                .map(zone -> zone + " " + shares.getOrDefault(zone, 0L))
                .collect(Collectors.joining(", "));
        return List.of(
                bag.name(),
                zonesAndCores,
                Integer.toString(bag.cores()),
                figures.area(bag.areaM2()),
                bag.cores() == 0 ? "–" : figures.area(bag.areaM2() / bag.cores()),
                bag.stratumAreaCv().isPresent()
                        ? Figures.percent(bag.stratumAreaCv().getAsDouble(), 1)
                        : "–",
                bag.mssdM2().isPresent() ? figures.length(Math.sqrt(bag.mssdM2().getAsDouble())) : "–",
                ExpectedError.of(bag.cores()).stream()
                        .map(error -> error.element() + " " + Figures.percent(error.halfWidthPct() / 100, 0))
                        .collect(Collectors.joining(", ")));
    }

    private List<Table.Field> walkTable() {
        return List.of(
                Table.Field.words("bag", 40).strong(),
                Table.Field.number("length", 30),
                Table.Field.number("no round is shorter than", 46),
                Table.Field.words("so this one is", 74));
    }

    private List<String> words(Walk walk) {
        Figures figures = facts.figures();
        return List.of(
                walk.composite(),
                figures.length(walk.lengthM()),
                walk.lowerBoundM() > 0 ? figures.length(walk.lowerBoundM()) : "–",
                WalkFacts.verdict(walk));
    }

    private List<Table.Field> mergeTable() {
        return List.of(
                Table.Field.words("joined", 60),
                Table.Field.number("differences given up", 34),
                Table.Field.words("because", 96));
    }

    private static List<String> words(Merge merge) {
        return List.of(
                String.join(", ", merge.left()) + " + " + String.join(", ", merge.right()),
                Figures.percent(merge.cost(), 1),
                merge.why());
    }

    private List<Table.Field> formulaTable() {
        return List.of(
                Table.Field.words("number", 24).sized(Sections.DENSE_PT).strong(),
                Sections.formula(82),
                Table.Field.words("what it says", 76).sized(Sections.DENSE_PT),
                Table.Field.words("source", 12).soft());
    }

    /** Each formula once with what it says, under the name of the first number that it gave. */
    private List<List<String>> formulas(Citations citations) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        Stream.concat(
                        zones.stream().flatMap(zone -> zone.accounts().entrySet().stream()),
                        facts.plan().accounts().entrySet().stream())
                .forEach(entry -> {
                    Account account = entry.getValue();
                    rows.computeIfAbsent(
                            account.formula() + account.note(),
                            saidOnce -> List.of(
                                    nameOf(entry.getKey()),
                                    account.formula(),
                                    account.note(),
                                    citations.marks(account.sources())));
                });
        return List.copyOf(rows.values());
    }

    /** The name of a number, from the end of its JSON pointer. */
    private static String nameOf(String pointer) {
        String key = pointer.substring(pointer.lastIndexOf('/') + 1);
        return switch (key) {
            case "netAreaM2" -> "net area";
            case "areaSeM2" -> "standard error";
            case "areaM2" -> "turf of a bag";
            case "cores" -> "cores";
            case "volumeMl" -> "soil";
            case "stratumAreaCv" -> "strata vary";
            case "halfWidthPct" -> "expected error";
            case "mssdM2" -> "rms to core";
            case "lengthM" -> "walk";
            case "lowerBoundM" -> "least walk";
            case "totalWalkM" -> "all walks";
            default -> key.chars().allMatch(Character::isDigit) ? "place of a core" : key;
        };
    }
}
