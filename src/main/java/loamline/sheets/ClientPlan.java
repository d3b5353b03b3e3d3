package loamline.sheets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
 * The season for a client: what was found and what each part of the lawn needs below its map, then what to do by month, what
 * to buy and what to know for it; behind it a note to the company that fertilizes too, and how the numbers came about. No IO; the same season
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
    private static final double MAP_MM = 120;

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
        pages.addAll(accounts(words, blocks).pages(upright, "how these numbers came about", CAUTION));
        return new Book(yard.name(), "season plan", options, fonts).pdf(pages);
    }

    private Column findings(SeasonWords words, Blocks blocks) {
        Column column = new Column()
                .add(0, Blocks.row(Tile.GAP_MM, tiles(words, blocks)))
                .add(4, blocks.paragraph(words.inShort(), LEAD, Role.INK))
                .add(3, map(blocks));
        sections(blocks, column)
                .table(
                        "What we found, part by part",
                        List.of(
                                Table.Field.words("part of the lawn", 40).strong(),
                                Table.Field.number("size", 22),
                                Table.Field.words("what we found", 64),
                                Table.Field.words("what it still needs this season", 72)),
                        season.zones(),
                        words::zone);
        return column.add(SECTION_MM, blocks.caution(String.join(" ", season.cautions())));
    }

    private static Sections sections(Blocks blocks, Column column) {
        return new Sections(blocks, column, SECTION_MM, ROW_MM);
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
        Sections sections = sections(blocks, new Column());
        if (!season.isOptimal()) {
            sections.part("What is in the way", List.of(blocks.caution(String.join(" ", season.blocking()))));
        }
        List<Table.Field> tasks = List.of(
                Table.Field.words("day", 16).strong(),
                Table.Field.words("what", 56),
                Table.Field.words("where", 46),
                Table.Field.number("in all", 20),
                Table.Field.number("each way", 26),
                Table.Field.number("pan", 14));
        words.months().forEach((month, rows) -> sections.table(month, tasks, rows, row -> row));
        sections.table(
                "What to buy",
                List.of(
                        Table.Field.words("what to buy", 70).strong(),
                        Table.Field.number("how much", 30),
                        Table.Field.number("spread", 26),
                        Table.Field.number("left over", 26),
                        Table.Field.number("cost", 20)),
                words.shopping(),
                row -> row);
        if (!words.money().isEmpty()) {
            sections.column().add(2, blocks.paragraph(words.money(), Blocks.SECOND, Role.SOFT));
        }
        sections.bullets("Good to know", words.hints());
        return sections.column();
    }

    private Column note(SeasonWords words, Blocks blocks) {
        Sections sections = sections(blocks, new Column().add(0, blocks.paragraph(words.noteLead(), LEAD, Role.INK)));
        sections.table(
                "What we saw",
                List.of(
                        Table.Field.words("part of the lawn", 40).strong(),
                        Table.Field.words("nutrient", 24),
                        Table.Field.number("the lawn needs", 30),
                        Table.Field.number("your visits bring", 30),
                        Table.Field.words("so", 60)),
                words.ledger(),
                row -> row);
        sections.bullets("What we ask for", words.requests());
        return sections.column();
    }

    private Column accounts(SeasonWords words, Blocks blocks) {
        Citations citations = new Citations();
        Sections sections = sections(blocks, new Column());
        sections.table(
                "Formulas",
                List.of(
                        Table.Field.words("number", 34).sized(Sections.DENSE_PT).strong(),
                        Sections.formula(50),
                        Table.Field.words("values put in", 44).sized(Sections.DENSE_PT),
                        Table.Field.words("what it says", 56).sized(Sections.DENSE_PT),
                        Table.Field.words("source", 14).soft()),
                words.reckoned(),
                r -> List.of(
                        r.number(),
                        r.account().formula(),
                        SeasonWords.values(r.account()),
                        r.account().note(),
                        citations.marks(r.account().sources())));
        sections.sources(citations);
        return sections.column();
    }
}
