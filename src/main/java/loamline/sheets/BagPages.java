package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import loamline.sampling.CorePlan.Composite;
import loamline.scene.Paint;
import loamline.scene.PaperRect;
import loamline.scene.Pen;
import loamline.scene.Role;
import loamline.scene.Type;

/** What happens at the bucket, what goes into each bag, and labels to cut out. */
record BagPages(String yardName, WalkFacts facts, Blocks blocks, PaperRect paper) {
    private static final String CAUTION = "The lab’s own instruction wins wherever it differs from this page.";
    private static final double LABEL_GAP_MM = 5;
    private static final double PADDING_MM = 4;
    private static final int LABELS_A_ROW = 2;

    List<Page> pages() {
        Table table = table();
        List<Block> rows =
                facts.bags().stream().map(bag -> table.row(words(bag))).toList();
        Column column = new Column().add(0, heading("At the bucket"));
        List<String> steps = steps();
        for (int i = 0; i < steps.size(); i++) {
            Block words = blocks.paragraph(steps.get(i), Blocks.BODY, Role.INK);
            column.add(0.8, blocks.hanging((i + 1) + ".", 5, words, Blocks.BODY));
        }
        column.add(6, Blocks.stack(1, List.of(heading("What goes into each bag"), table.head())), rows);
        column.add(6, heading("Labels to cut out"));
        for (int i = 0; i < facts.bags().size(); i += LABELS_A_ROW) {
            List<Block> labels = new ArrayList<>();
            for (int j = i; j < i + LABELS_A_ROW; j++) {
                labels.add(
                        j < facts.bags().size() ? label(facts.bags().get(j)) : new Blocks.Drawn(w -> 0, (c, r) -> {}));
            }
            column.add(i == 0 ? 2 : LABEL_GAP_MM, Blocks.row(LABEL_GAP_MM, labels));
        }
        column.fill(7, 3 * Table.BY_HAND_MM, heading("Notes"), blocks.writingLines());
        return column.pages(paper, "bags and labels", CAUTION);
    }

    private Block heading(String words) {
        return blocks.paragraph(words, Blocks.HEAD, Role.INK);
    }

    private static List<String> steps() {
        return List.of(
                "Use one clean plastic bucket for each bag. No metal: it can add zinc and manganese.",
                "Probe to the full depth at every core. Take thatch and living plants off the top of each plug; keep the"
                        + " soil.",
                "Put the same number of plugs from every core into the bucket, the spare’s plug for a refused core.",
                "Crumble the plugs, take out stones and roots, and mix well.",
                "Air-dry overnight on clean paper, without heat. Fill the lab’s bag with about 2 cups of the mix and put"
                        + " the label on it.");
    }

    private Table table() {
        return new Table(
                blocks,
                List.of(
                        Table.Field.words("bag", 10).strong(),
                        Table.Field.words("zones", 60),
                        Table.Field.number("cores", 14),
                        Table.Field.number("depth", 16),
                        Table.Field.number("soil, 1 plug a core", 28),
                        Table.Field.number("lab needs about", 26),
                        Table.Field.number("plugs at every core", 28)),
                6.4,
                false);
    }

    private List<String> words(Composite bag) {
        Figures figures = facts.figures();
        return List.of(
                bag.name(),
                WalkFacts.zones(bag),
                Integer.toString(bag.cores()),
                figures.small(bag.probe().depthM()),
                figures.volume(bag.volumeMl()),
                figures.volume(WalkFacts.LAB_ML),
                Integer.toString(WalkFacts.plugsACore(bag)));
    }

    private Block label(Composite bag) {
        Figures figures = facts.figures();
        int plugs = bag.cores() * WalkFacts.plugsACore(bag);
        String contents = Figures.count(plugs, "plug") + " from " + Figures.count(bag.cores(), "core") + ", 0–"
                + figures.small(bag.probe().depthM()) + ", thatch off";
        Block inside = Blocks.stack(
                0.6,
                List.of(
                        blocks.line("Bag " + bag.name(), Type.bold(15), Role.INK, Blocks.Side.LEFT),
                        blocks.paragraph(yardName.isBlank() ? " " : yardName, Blocks.STRONG, Role.INK),
                        blocks.paragraph(WalkFacts.zones(bag), Blocks.SECOND, Role.INK),
                        blocks.paragraph(contents, Blocks.SECOND, Role.INK),
                        Blocks.row(4, List.of(blocks.blank("taken", Blocks.SECOND), blocks.blank("by", Blocks.SECOND))),
                        blocks.blank("lab number", Blocks.SECOND)));
        Pen dashes = Pen.dashed(blocks.ink(Role.SOFT), 0.3, 1.6, 1.2);
        return Blocks.boxed(Paint.line(dashes), PADDING_MM, inside);
    }
}
