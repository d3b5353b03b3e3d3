package loamline.sheets;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.scene.Run;
import loamline.scene.Type;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Pages bound together: every page gets its head and foot, and all become one PDF.
 *
 * @param yardName may be empty
 * @param subject what the document is, for its properties
 */
record Book(String yardName, String subject, SheetOptions options, Fonts fonts) {
    private static final double PT_PER_MM = 72 / 25.4;
    private static final Type TITLE = Type.bold(13);
    private static final Type PAGE_TITLE = Type.regular(13);
    private static final Type DATE = Type.regular(8.5);
    private static final Type FOOT = Type.regular(7);
    private static final double LEAST_TITLE_PT = 9;
    private static final double TITLE_BASELINE_MM = 4.2;
    private static final double RULE_MM = 6.2;
    /** What the page is may take this share of a title that is too long. */
    private static final double MOST_FOR_WHAT = 0.6;

    private static final double GAP_MM = 6;
    private static final double BLANK_MM = 28;
    private static final String SEPARATOR = " · ";

    private Blocks blocks() {
        return new Blocks(fonts, options.palette());
    }

    /** The PDF. The same pages give the same bytes. */
    byte[] pdf(List<Page> pages) {
        try (PDDocument document = new PDDocument()) {
            PdfResources resources = new PdfResources(document, fonts);
            for (int i = 0; i < pages.size(); i++) {
                add(document, resources, pages.get(i), "page " + (i + 1) + " of " + pages.size());
            }
            document.getDocumentInformation().setTitle(title(subject));
            document.getDocumentInformation().setCreator(options.program());
            document.getDocumentCatalog().setLanguage("en");
            document.setDocumentId(0L); // PDFBox would take the clock
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String title(String what) {
        return yardName.isBlank() ? what : yardName + SEPARATOR + what;
    }

    private void add(PDDocument document, PdfResources resources, Page page, String number) throws IOException {
        PaperRect paper = page.paper();
        PDPage sheet = new PDPage(
                new PDRectangle((float) (paper.widthMm() * PT_PER_MM), (float) (paper.heightMm() * PT_PER_MM)));
        document.addPage(sheet);
        try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
            PdfCanvas canvas = new PdfCanvas(out, resources, paper.heightMm());
            head(canvas, page);
            page.parts().forEach(part -> part.block().draw(canvas, part.room()));
            foot(canvas, page, number);
        }
    }

    private void head(Canvas canvas, Page page) {
        PaperRect inside = Page.printable(page.paper());
        double baseline = inside.topMm() + TITLE_BASELINE_MM;
        String date = options.date().map(Figures::day).orElse("date");
        double dateMm = fonts.widthMm(date, DATE) + (options.date().isPresent() ? 0 : 1.5 + BLANK_MM);
        title(canvas, new Point(inside.leftMm(), baseline), inside.widthMm() - dateMm - GAP_MM, page.title());
        canvas.write(Run.plain(new Point(inside.rightMm() - dateMm, baseline), date, DATE, ink(Role.SOFT)));
        if (options.date().isEmpty()) {
            Point end = new Point(inside.rightMm(), baseline + 0.4);
            blocks().rule(canvas, end.plus(-BLANK_MM, 0), end, Role.SOFT);
        }
        double y = inside.topMm() + RULE_MM;
        blocks().rule(canvas, new Point(inside.leftMm(), y), new Point(inside.rightMm(), y), Role.INK);
    }

    /** The yard's name and what the page is, in one size; where that is too long even so, both are cut off. */
    private void title(Canvas canvas, Point at, double widthMm, String what) {
        String rest = yardName.isBlank() ? what : SEPARATOR + what;
        double sizePt = TITLE.sizePt();
        while (sizePt > LEAST_TITLE_PT
                && fonts.widthMm(yardName, TITLE.sized(sizePt)) + fonts.widthMm(rest, PAGE_TITLE.sized(sizePt))
                        > widthMm) {
            sizePt -= 0.5;
        }
        double mostMm = yardName.isBlank() ? widthMm : MOST_FOR_WHAT * widthMm;
        Typesetter.Fitted behind = Typesetter.onOneLine(rest, PAGE_TITLE.sized(sizePt), LEAST_TITLE_PT, mostMm, fonts);
        double leftMm = widthMm - fonts.widthMm(behind.words(), behind.type());
        Typesetter.Fitted name = Typesetter.onOneLine(yardName, TITLE.sized(sizePt), LEAST_TITLE_PT, leftMm, fonts);
        canvas.write(Run.plain(at, name.words(), name.type(), ink(Role.INK)));
        double nameMm = fonts.widthMm(name.words(), name.type());
        canvas.write(Run.plain(at.plus(nameMm, 0), behind.words(), behind.type(), ink(Role.INK)));
    }

    private void foot(Canvas canvas, Page page, String number) {
        PaperRect inside = Page.printable(page.paper());
        double y = inside.bottomMm() - 3.8;
        blocks().rule(canvas, new Point(inside.leftMm(), y), new Point(inside.rightMm(), y), Role.LINE);
        double baseline = inside.bottomMm() - 0.8;
        String right = number + SEPARATOR + options.program();
        double rightMm = fonts.widthMm(right, FOOT);
        canvas.write(Run.plain(new Point(inside.rightMm() - rightMm, baseline), right, FOOT, ink(Role.SOFT)));
        Typesetter.Fitted caution =
                Typesetter.onOneLine(page.caution(), FOOT, 5.5, inside.widthMm() - rightMm - GAP_MM, fonts);
        canvas.write(Run.plain(new Point(inside.leftMm(), baseline), caution.words(), caution.type(), ink(Role.SOFT)));
    }

    private loamline.scene.Ink ink(Role role) {
        return options.palette().of(role);
    }
}
