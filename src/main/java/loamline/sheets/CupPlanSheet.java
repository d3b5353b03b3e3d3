package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.scene.CupMap;
import loamline.scene.Role;
import loamline.water.cups.CupPlan;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * The sheet for a cup test: a map with the numbers of the cups, and a table to fill in.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 */
public record CupPlanSheet(Yard yard, List<Zone> zones, CupPlan plan, SheetOptions options) {
    private static final String CAUTION =
            "Cups measure this valve on this day: wind, pressure and hour belong to the result. Note them.";

    private static final int CUPS_A_ROW = 2;

    public CupPlanSheet {
        zones = List.copyOf(zones);
    }

    /** All pages as a PDF; the same bytes for the same input. */
    public byte[] pdf() {
        Fonts fonts = new Fonts();
        Blocks blocks = new Blocks(fonts, options.palette());
        List<Page> pages = new ArrayList<>();
        pages.add(new CupMapPage(yard, zones, CupMap.of(plan), Optional.empty(), options, blocks)
                .page("cup test, valve " + plan.valve(), CAUTION, tiles(blocks)));
        pages.addAll(column(blocks).pages(options.paper().upright(), "readings, valve " + plan.valve(), CAUTION));
        return new Book(yard.name(), "cup test", options, fonts).pdf(pages);
    }

    private List<Block> tiles(Blocks blocks) {
        Tile tile = new Tile(blocks);
        Figures figures = new Figures(options.units());
        return List.of(
                tile.of(
                        "Cups on an even grid",
                        Figures.count(plan.cups().size(), "cup"),
                        figures.length(plan.spacingM()) + " apart, edge cups 18 in inside the edge"),
                tile.of(
                        "Run the valve",
                        Figures.count(plan.minutes(), "minute"),
                        "for about 25 ml in a cup of " + Math.round(plan.throatCm2()) + " cm²"),
                tile.of(
                        "Why here",
                        plan.reasons().isEmpty() ? "asked for" : plan.reasons().get(0),
                        plan.reasons().size() > 1
                                ? "and "
                                        + String.join(
                                                ", ",
                                                plan.reasons()
                                                        .subList(
                                                                1,
                                                                plan.reasons().size()))
                                : "as mapped the cups get " + figures.rate(plan.modelMmH())));
    }

    private Column column(Blocks blocks) {
        Column column = new Column().add(0, blocks.paragraph("Before and while the valve runs", Blocks.HEAD, Role.INK));
        for (int i = 0; i < CupPlan.RULES.size(); i++) {
            Block words = blocks.paragraph(CupPlan.RULES.get(i), Blocks.BODY, Role.INK);
            column.add(0.6, blocks.hanging((i + 1) + ".", 5, words, Blocks.BODY));
        }
        column.add(
                3,
                Blocks.row(
                        5,
                        List.of(
                                blocks.blank("wind", Blocks.SECOND),
                                blocks.blank("pressure", Blocks.SECOND),
                                blocks.blank("minutes run", Blocks.SECOND),
                                blocks.blank("cup opening", Blocks.SECOND))));
        Table table = table(blocks);
        column.add(4, table.head(), rows(table));
        column.fill(5, 2 * Table.BY_HAND_MM, blocks.paragraph("Notes", Blocks.HEAD, Role.INK), blocks.writingLines());
        return column;
    }

    private Table table(Blocks blocks) {
        List<Table.Field> fields = new ArrayList<>();
        for (int i = 0; i < CUPS_A_ROW; i++) {
            fields.add(Table.Field.words("cup", 12).strong());
            fields.add(Table.Field.words("ml", 24));
            fields.add(Table.Field.words("what was odd", 58));
        }
        return new Table(blocks, fields, Table.BY_HAND_MM, true);
    }

    private List<Block> rows(Table table) {
        int rows = (plan.cups().size() + CUPS_A_ROW - 1) / CUPS_A_ROW;
        return IntStream.range(0, rows)
                .mapToObj(row -> {
                    int second = row + rows;
                    String right = second < plan.cups().size() ? Integer.toString(second + 1) : "";
                    return table.row(List.of(Integer.toString(row + 1), "", "", right));
                })
                .toList();
    }
}
