package loamline.sheets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.geometry.Box;
import loamline.scene.Layer;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.scene.SceneOptions;
import loamline.scene.Type;
import loamline.scene.View;
import loamline.scene.YardScene;
import loamline.season.Season;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * The season for a client: what was found and what each part of the lawn needs beside its map, then what to do by month and
 * what to buy; behind it a note to the company that fertilizes too, and how the numbers came about. No IO; the same season
 * gives the same bytes.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 */
public record ClientPlan(Yard yard, List<Zone> zones, Season season, SheetOptions options) {
    private static final String CAUTION =
            "The label is the law; local code wins. None on dormant, frozen, soaked or drought-stressed turf, nor before"
                    + " heavy rain.";
    private static final double SECTION_MM = 4.2;
    private static final double ROW_MM = 5;
    private static final Type LEAD = Type.regular(10.5);
    /** Height of the map on the first page, mm. */
    private static final double MAP_MM = 92;

    public ClientPlan {
        zones = List.copyOf(zones);
    }

    /** All pages as a PDF. */
    public byte[] pdf() {
        Fonts fonts = new Fonts();
        Blocks blocks = new Blocks(fonts, options.palette());
        PaperRect upright = options.paper().upright();
        SeasonWords words = new SeasonWords(season, new Figures(options.units()));
        List<Page> pages = new ArrayList<>();
        pages.addAll(findings(words, blocks).pages(upright, "your lawn this season", CAUTION));
        pages.addAll(plan(words, blocks).pages(upright, "what to do and what to buy", CAUTION));
        if (!season.inputs().visits().isEmpty()) {
            pages.addAll(note(words, blocks).pages(upright, "note to the company that fertilizes", CAUTION));
        }
        pages.addAll(accounts(blocks).pages(upright, "how these numbers came about", CAUTION));
        return new Book(yard.name(), "season plan", options, fonts).pdf(pages);
    }

    private Column findings(SeasonWords words, Blocks blocks) {
        Column column = new Column()
                .add(0, Blocks.row(Tile.GAP_MM, tiles(words, blocks)))
                .add(4, blocks.paragraph(words.inShort(), LEAD, Role.INK))
                .add(3, map(blocks));
        Table table = new Table(
                blocks,
                List.of(
                        Table.Field.words("part of the lawn", 34).strong(),
                        Table.Field.number("size", 24),
                        Table.Field.words("what we found", 74),
                        Table.Field.words("what it still needs this season", 66)),
                ROW_MM,
                false);
        column.add(
                SECTION_MM,
                Blocks.stack(0.6, List.of(heading(blocks, "What we found, part by part"), table.head())),
                season.zones().stream().map(words::zone).map(table::row).toList());
        column.add(SECTION_MM, heading(blocks, "Good to know"), bullets(words.hints(), blocks));
        column.add(SECTION_MM, blocks.caution(String.join(" ", season.cautions())));
        return column;
    }

    private List<Block> tiles(SeasonWords words, Blocks blocks) {
        Tile tile = new Tile(blocks);
        return words.tiles().stream()
                .map(t -> tile.of(t.label(), t.value(), t.under()))
                .toList();
    }

    private static final Set<Layer> LAYERS = EnumSet.of(
            Layer.BOUNDARY, Layer.TURF, Layer.COVERS, Layer.BUILDINGS, Layer.BARRIERS, Layer.TREES, Layer.LABELS);

    private Block map(Blocks blocks) {
        return new Blocks.Drawn(widthMm -> MAP_MM, (canvas, room) -> {
            View any = new View(new Box(-5, -5, 5, 5), 1);
            Furniture furniture = new Furniture(List.of(), sceneOptions(any, blocks), true);
            Box ground = yard.box().orElse(new Box(-5, -5, 5, 5));
            MapFit fit = MapFit.largest(
                    ground, Stream.of(new MapFit.Place(options.paper().upright(), room, furniture)));
            new MapBlock(
                            YardScene.of(yard, zones, Optional.empty(), sceneOptions(fit.view(), blocks)),
                            fit.denominator(),
                            furniture)
                    .draw(canvas, room);
        });
    }

    private SceneOptions sceneOptions(View view, Blocks blocks) {
        return SceneOptions.usual(view, blocks.text())
                .with(options.palette())
                .with(options.units())
                .with(LAYERS);
    }

    private Column plan(SeasonWords words, Blocks blocks) {
        Column column = new Column();
        if (!season.isOptimal()) {
            column.add(
                    0,
                    heading(blocks, "What is in the way"),
                    List.of(blocks.caution(String.join(" ", season.blocking()))));
        }
        Table tasks = new Table(
                blocks,
                List.of(
                        Table.Field.words("day", 22).strong(),
                        Table.Field.words("what", 62),
                        Table.Field.words("where", 28),
                        Table.Field.number("in all", 22),
                        Table.Field.number("each way", 26),
                        Table.Field.number("pan", 14)),
                ROW_MM,
                false);
        words.months()
                .forEach((month, rows) -> column.add(
                        SECTION_MM,
                        Blocks.stack(0.6, List.of(heading(blocks, month), tasks.head())),
                        rows.stream().map(tasks::row).toList()));
        Table shopping = new Table(
                blocks,
                List.of(
                        Table.Field.words("what to buy", 70).strong(),
                        Table.Field.number("how much", 30),
                        Table.Field.number("spread", 26),
                        Table.Field.number("left over", 26),
                        Table.Field.number("cost", 20)),
                ROW_MM,
                false);
        column.add(
                SECTION_MM,
                Blocks.stack(0.6, List.of(heading(blocks, "What to buy"), shopping.head())),
                words.shopping().stream().map(shopping::row).toList());
        column.add(2, blocks.paragraph(words.money(), Blocks.SECOND, Role.SOFT));
        return column;
    }

    private Column note(SeasonWords words, Blocks blocks) {
        Column column = new Column().add(0, blocks.paragraph(words.noteLead(), LEAD, Role.INK));
        Table table = new Table(
                blocks,
                List.of(
                        Table.Field.words("part of the lawn", 34).strong(),
                        Table.Field.words("nutrient", 30),
                        Table.Field.number("the lawn needs", 30),
                        Table.Field.number("your visits bring", 30),
                        Table.Field.words("so", 60)),
                ROW_MM,
                false);
        column.add(
                SECTION_MM,
                Blocks.stack(0.6, List.of(heading(blocks, "What we saw"), table.head())),
                words.ledger().stream().map(table::row).toList());
        column.add(SECTION_MM, heading(blocks, "What we ask for"), bullets(words.requests(), blocks));
        return column;
    }

    private static List<Block> bullets(List<String> lines, Blocks blocks) {
        return lines.stream()
                .map(line -> blocks.hanging("·", 3, blocks.paragraph(line, Blocks.SECOND, Role.INK), Blocks.SECOND))
                .toList();
    }

    private Column accounts(Blocks blocks) {
        Citations citations = new Citations();
        Table table = new Table(
                blocks,
                List.of(
                        new Table.Field("formula", 84, Blocks.Side.LEFT, Type.oblique(7.5), Role.INK),
                        Table.Field.words("what it says", 88).sized(7.5),
                        Table.Field.words("source", 18).soft()),
                ROW_MM,
                false);
        List<Block> rows = Stream.concat(
                        season.zones().stream().flatMap(zone -> zone.accounts().values().stream()),
                        season.accounts().values().stream())
                .map(a -> row(a, citations))
                .distinct()
                .map(table::row)
                .toList();
        return new Column()
                .add(0, Blocks.stack(0.6, List.of(heading(blocks, "Formulas"), table.head())), rows)
                .add(SECTION_MM, heading(blocks, "Sources"), citations.lines(blocks));
    }

    private static List<String> row(Account account, Citations citations) {
        return List.of(account.formula(), account.note(), citations.marks(account.sources()));
    }

    private static Block heading(Blocks blocks, String words) {
        return blocks.paragraph(words, Blocks.HEAD, Role.INK);
    }
}
