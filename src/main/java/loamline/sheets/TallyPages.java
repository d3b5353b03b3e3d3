package loamline.sheets;

import java.util.List;
import java.util.stream.Stream;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.units.UnitSystem;

/** For each bag a table to fill in on the walk, a row a core in the order of the walk. */
record TallyPages(WalkFacts facts, Blocks blocks, PaperRect paper) {
    private static final String CAUTION = "Never force the probe. Call the utility locating service before probing.";

    private static final double MOST_ROW_MM = 13;
    /** Height of all that stands over and under the rows. */
    private static final double ROUND_THE_ROWS_MM = 40;

    List<Page> pages() {
        return facts.bags().stream().flatMap(bag -> pages(bag).stream()).toList();
    }

    private List<Page> pages(Composite bag) {
        Table table = table(bag);
        List<Block> rows = facts.inWalkOrder(bag).stream()
                .map(core -> table.row(words(core)))
                .toList();
        return new Column()
                .add(0, blocks.paragraph(intro(bag), Blocks.SECOND, Role.SOFT))
                .add(2.5, table.head(), rows)
                .add(3, Blocks.row(6, hints()))
                .add(
                        3.5,
                        blocks.caution("Refused twice at the same depth: stop, never force the probe. Take the core’s"
                                + " spare (the small dashed sign with its number) and ring it here. Never leave a number out:"
                                + " equal plugs from every core keep the bag fair."))
                .pages(paper, "tally, bag " + bag.name(), CAUTION);
    }

    private List<Block> hints() {
        String layers = facts.figures().units() == UnitSystem.US ? "0–2 loam, 2–4 sand" : "0–5 loam, 5–10 sand";
        return Stream.of(
                        "wet: 1 dry, 2 slightly moist, 3 moist, 4 wet",
                        "spare: ring the one that was taken",
                        "layers: " + layers)
                .map(hint -> blocks.paragraph(hint, Blocks.SMALL, Role.SOFT))
                .toList();
    }

    private String intro(Composite bag) {
        int plugs = WalkFacts.plugsACore(bag);
        String walk = facts.walkOf(bag)
                .map(w -> " · walk " + facts.figures().length(w.lengthM()))
                .orElse("");
        return WalkFacts.zones(bag) + " · " + Figures.count(bag.cores(), "core") + walk + " · probe to "
                + facts.figures().small(bag.probe().depthM())
                + (plugs == 1 ? "" : " · " + plugs + " plugs at every core");
    }

    /** Rows take what a page has to give, within reason. */
    private Table table(Composite bag) {
        double spareMm = Page.body(paper).heightMm() - ROUND_THE_ROWS_MM;
        double rowMm = Math.max(Table.BY_HAND_MM, Math.min(MOST_ROW_MM, spareMm / Math.max(1, bag.cores())));
        boolean us = facts.figures().units() == UnitSystem.US;
        String unit = us ? " in" : " cm";
        List<Table.Field> fields = List.of(
                new Table.Field("core", 11, Blocks.Side.LEFT, Blocks.STRONG, Role.INK),
                Table.Field.words("zone", 27),
                Table.Field.words("depth" + unit, 16),
                Table.Field.words("refused at" + unit, 20),
                Table.Field.words("spare", 14).soft(),
                Table.Field.words("roots" + unit, 16),
                Table.Field.words(us ? "thatch in" : "thatch mm", 18),
                Table.Field.words("wet 1–4", 14),
                Table.Field.words("layers, note", 56));
        return new Table(blocks, fields, rowMm, true);
    }

    private List<String> words(PlannedCore core) {
        return List.of(core.id(), core.zone(), "", "", String.join(" ", facts.sparesOf(core)));
    }
}
