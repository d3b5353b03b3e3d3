package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.scene.Canvas;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.scene.Run;
import loamline.scene.Type;
import loamline.soil.Advice;
import loamline.soil.Lime;
import loamline.soil.Rating;
import loamline.soil.SampleResult;
import loamline.soil.SoilReport;

/**
 * Soil tests for a client: for each sample what the test says, what to spread and what was left open; then how the numbers
 * came about. No IO; the same report gives the same bytes.
 */
public record SoilSheet(SoilReport report, SheetOptions options) {
    private static final String CAUTION = "Advice, not a substitute for local extension guidance. The laboratory’s own"
            + " instructions come first; local code wins.";
    private static final double SECTION_MM = 4.2;
    private static final double ROW_MM = 5;
    private static final double TILE_MM = 11;
    private static final List<Table.Field> SPREAD = List.of(
            Table.Field.words("to spread", 30).strong(),
            Table.Field.number("in all", 30),
            Table.Field.words("in dressings", 46),
            Table.Field.words("how", 92).sized(7));
    private static final Type VALUE = Type.bold(12);
    private static final Type LABEL = Type.regular(7);
    private static final Type LEAD = Type.regular(10.5);

    /** All pages as a PDF. */
    public byte[] pdf() {
        Fonts fonts = new Fonts();
        Blocks blocks = new Blocks(fonts, options.palette());
        PaperRect upright = options.paper().upright();
        List<Page> pages = new ArrayList<>();
        report.samples().forEach(sample -> pages.addAll(sample(sample, blocks, upright)));
        pages.addAll(accounts(blocks, upright));
        return new Book("", "soil tests", options, fonts).pdf(pages);
    }

    private List<Page> sample(SampleResult sample, Blocks blocks, PaperRect paper) {
        SoilWords words = new SoilWords(sample, new Figures(options.units()));
        Column column = new Column()
                .add(0, blocks.paragraph(origin(sample), Blocks.SECOND, Role.SOFT))
                .add(3, tiles(words, sample, blocks))
                .add(4, blocks.paragraph(words.inShort(), LEAD, Role.INK));
        ratings(column, words, blocks);
        if (!words.soil().isEmpty()) {
            column.add(2.5, blocks.paragraph("Soil: " + words.soil() + ".", Blocks.SECOND, Role.SOFT));
        }
        Sections sections = new Sections(blocks, column, SECTION_MM, ROW_MM);
        sections.table(
                "What to spread", SPREAD, words.spread(), s -> List.of(s.what(), s.amount(), s.dressings(), s.how()));
        sections.bullets("What this test leaves open", words.open());
        column.add(SECTION_MM, blocks.caution(String.join(" ", sample.cautions())));
        return column.pages(paper, "Soil sample " + title(sample), CAUTION);
    }

    private static String title(SampleResult sample) {
        return sample.id() + (sample.zones().isEmpty() ? "" : " · " + String.join(", ", sample.zones()));
    }

    private static String origin(SampleResult sample) {
        List<String> parts = new ArrayList<>(sample.labs());
        sample.date().ifPresent(date -> parts.add("tested " + Figures.day(date)));
        return parts.isEmpty() ? "laboratory and date not told" : String.join(" · ", parts);
    }

    private Block tiles(SoilWords words, SampleResult sample, Blocks blocks) {
        Figures figures = words.figures();
        String ph = sample.waterPh().map(SoilWords::number).orElse("–");
        return Blocks.row(
                4,
                List.of(
                        tile(blocks, "pH in water", ph),
                        tile(
                                blocks,
                                "Lime",
                                dose(sample.lime().map(Lime::productKgM2).map(kg -> 1000 * kg), figures)),
                        tile(blocks, "Phosphate, P2O5", dose(sample.needs().p2o5GM2(), figures)),
                        tile(blocks, "Potash, K2O", dose(sample.needs().k2oGM2(), figures))));
    }

    private static String dose(Advice<Double> gM2, Figures figures) {
        return gM2.value()
                .map(amount -> amount == 0 ? "none" : figures.dose(amount))
                .orElse("open");
    }

    private static Block tile(Blocks blocks, String label, String value) {
        return blocks.barred(Role.ACCENT, new Blocks.Drawn(widthMm -> TILE_MM, (canvas, room) -> {
            write(blocks, canvas, room, 2.8, label, LABEL, Role.SOFT);
            write(blocks, canvas, room, 8.6, value, VALUE, Role.INK);
        }));
    }

    private static void write(
            Blocks blocks, Canvas canvas, PaperRect room, double down, String words, Type type, Role role) {
        Typesetter.Fitted fitted =
                Typesetter.onOneLine(words, type, 0.6 * type.sizePt(), room.widthMm(), blocks.text());
        canvas.write(Run.plain(room.corner().plus(0, down), fitted.words(), fitted.type(), blocks.ink(role)));
    }

    private static Block heading(Blocks blocks, String words) {
        return blocks.paragraph(words, Blocks.HEAD, Role.INK);
    }

    private static void ratings(Column column, SoilWords words, Blocks blocks) {
        if (words.rated().isEmpty()) {
            return;
        }
        boolean compared = words.rated().stream().anyMatch(r -> r.change().isPresent());
        Table table = new Table(
                blocks,
                List.of(
                        Table.Field.words("measured", 30).strong(),
                        Table.Field.number("value", 23),
                        Table.Field.words("by", 25).soft(),
                        Table.Field.words("among the classes of its guideline", 60),
                        Table.Field.words("so it is", 38),
                        Table.Field.words(compared ? "since the last test" : "", compared ? 32 : 14)
                                .soft()),
                ROW_MM,
                false);
        Block head = Blocks.stack(0.6, List.of(heading(blocks, "What the test says"), table.head()));
        column.add(
                SECTION_MM,
                head,
                words.rated().stream().map(r -> rating(table, r, blocks)).toList());
    }

    private static Block rating(Table table, Rating rating, Blocks blocks) {
        Rating.Standing standing = rating.standing().value().orElseThrow();
        List<Table.Field> fields = table.fields();
        return table.rowOf(List.of(
                table.cell(fields.get(0), SoilWords.name(rating.value().element())),
                table.cell(fields.get(1), SoilWords.value(rating.value())),
                table.cell(fields.get(2), SoilWords.test(rating.value())),
                new RatingBar(blocks, standing),
                Blocks.stack(
                        0,
                        List.of(
                                table.cell(fields.get(4), standing.band().name()),
                                table.cell(fields.get(5), guideline(rating, standing)))),
                table.cell(fields.get(5), rating.change().map(SoilWords::change).orElse(""))));
    }

    /** The guideline, and its unit where it is another than the value's. */
    private static String guideline(Rating rating, Rating.Standing standing) {
        String unit = standing.range().unit();
        boolean same = standing.value() == rating.value().value();
        return rating.guideline()
                + (same ? "" : ": " + SoilWords.number(standing.value()) + " " + unit)
                + (standing.range().origin().isFromMemory() ? ", from memory" : "");
    }

    private List<Page> accounts(Blocks blocks, PaperRect paper) {
        Citations citations = new Citations();
        Sections sections = new Sections(blocks, new Column(), SECTION_MM, ROW_MM);
        sections.table(
                "Formulas",
                List.of(
                        Sections.formula(84),
                        Table.Field.words("what it says", 88).sized(Sections.DENSE_PT),
                        Table.Field.words("source", 18).soft()),
                report.samples().stream()
                        .flatMap(SoilSheet::accounts)
                        .filter(a -> !a.sources().isEmpty())
                        .map(a -> List.of(a.formula(), a.note(), citations.marks(a.sources())))
                        .distinct()
                        .toList(),
                row -> row);
        sections.sources(citations);
        return sections.column().pages(paper, "how these numbers came about", CAUTION);
    }

    private static Stream<Account> accounts(SampleResult sample) {
        Stream<Advice<?>> acted = Stream.of(
                sample.lime(),
                sample.sulfur(),
                sample.gypsum(),
                sample.needs().p2o5GM2(),
                sample.needs().k2oGM2(),
                sample.exchange());
        Stream<Advice<?>> rated = sample.ratings().stream().map(Rating::standing);
        return Stream.concat(acted, rated).flatMap(advice -> advice.account().stream());
    }
}
