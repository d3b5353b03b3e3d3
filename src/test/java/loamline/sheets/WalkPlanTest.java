package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import loamline.geometry.Outline;
import loamline.place.Frame;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.scene.Palette;
import loamline.scene.PaperRect;
import loamline.scene.SamplePlan;
import loamline.scene.SampleYard;
import loamline.units.UnitSystem;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Turf;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WalkPlanTest {
    private static final SheetOptions LETTER = SheetOptions.usual(Paper.LETTER, UnitSystem.US, "Loamline 9.9.9");
    private static final SheetOptions A4 = SheetOptions.usual(Paper.A4, UnitSystem.METRIC, "Loamline 9.9.9");

    private static WalkPlan sample(SheetOptions options) {
        Yard yard = SampleYard.yard();
        return new WalkPlan(yard, Zones.of(yard), SamplePlan.twoBags(), options);
    }

    /** Six zones, each a bag of twelve, all names long and one in letters that no font here has. */
    private static WalkPlan sixZones(SheetOptions options) {
        Map<String, Outline> zones = new LinkedHashMap<>();
        for (int i = 0; i < 6; i++) {
            double x = i % 3 * 26;
            double y = i / 3 * 19;
            zones.put(
                    "Zone with a long name " + "under old oaks ".repeat(1) + i,
                    Outline.of(x, y, x + 24, y, x + 24, y + 17, x, y + 17));
        }
        List<Feature> turf = zones.entrySet().stream()
                .map(zone -> (Feature) turf(zone.getKey(), zone.getValue()))
                .toList();
        Yard yard = Yard.empty("The Long Meadow 🌳 at Upper Alder Lane 中", Frame.local())
                .withFeatures(turf);
        return new WalkPlan(yard, Zones.of(yard), SamplePlan.grid(zones, 12), options);
    }

    private static Turf turf(String zone, Outline outline) {
        OptionalDouble unknown = OptionalDouble.empty();
        return new Turf(zone, zone, "", unknown, unknown, Optional.empty(), outline, Extras.NONE);
    }

    private static WalkPlan oneCore(SheetOptions options) {
        Yard yard = Yard.empty("", Frame.local())
                .withFeatures(List.of(turf("Front", Outline.of(0, 0, 18, 0, 18, 11, 0, 11))));
        return new WalkPlan(yard, Zones.of(yard), SamplePlan.oneCore(), options);
    }

    /** Each plan is printed once; they are equal if they are the same plan. */
    private static final Map<WalkPlan, byte[]> PRINTED = new LinkedHashMap<>();

    private static byte[] pdf(WalkPlan plan) {
        return PRINTED.computeIfAbsent(plan, WalkPlan::pdf);
    }

    private static String text(WalkPlan plan) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(plan))) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static int pages(WalkPlan plan) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(plan))) {
            return document.getNumberOfPages();
        }
    }

    @Test
    void everyCoreAndSpareStandsInTheTally() throws IOException {
        for (WalkPlan plan : List.of(sample(LETTER), sixZones(A4))) {
            List<String> words = List.of(text(plan).split("\\s+"));
            assertThat(words)
                    .containsAll(
                            plan.plan().cores().stream().map(PlannedCore::id).toList());
        }
    }

    @Test
    void aPlanOfTwoBagsHasAMapTwoTalliesLabelsAndTheAccount() throws IOException {
        assertThat(pages(sample(LETTER))).isEqualTo(5);
        assertThat(text(sample(LETTER)))
                .contains("page 1 of 5", "page 5 of 5", "Loamline 9.9.9", "Alder Lane 12", "1:200")
                .contains("12 cores · 279 ft", "shortest possible walk", "within 3.2 % of the shortest walk")
                .contains("Call the utility locating service", "Never leave a number out")
                .contains("how these numbers came about", "Walvoort");
    }

    @Test
    void oneCoreMakesAPlan() throws IOException {
        assertThat(pages(oneCore(LETTER))).isEqualTo(4);
        assertThat(text(oneCore(LETTER))).contains("1 core", "core walk", "A1");
    }

    @Test
    void seventyTwoCoresInSixBagsMakeAPlan() throws IOException {
        WalkPlan plan = sixZones(A4);
        String text = text(plan);
        assertThat(text).contains("72 cores", "The Long Meadow □ at Upper Alder Lane □", "page 9 of 9");
        assertThat(List.of(text.split("\\s+")))
                .containsAll(plan.plan().cores().stream().map(PlannedCore::id).toList());
    }

    @Test
    void aDateIsPrintedIfGivenAndElseLeftToFillIn() throws IOException {
        assertThat(text(sample(LETTER.with(LocalDate.of(2027, 4, 14))))).contains("14 April 2027");
        assertThat(text(sample(LETTER))).doesNotContain("2027").contains("core walk date");
    }

    @Test
    void columnHeadsFollowTheUnits() throws IOException {
        assertThat(text(sample(LETTER))).contains("depth in", "thatch in", "ft²");
        assertThat(text(sample(A4))).contains("depth cm", "thatch mm", "m²").doesNotContain("ft²");
    }

    @Test
    void fontsAreEmbeddedAndCutDownAndThereAreNoImages() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(sample(LETTER)))) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                    assertThat(font.getName()).matches("[A-Z]{6}\\+DejaVuSansCondensed.*");
                }
                assertThat(StreamSupport.stream(
                                page.getResources().getXObjectNames().spliterator(), false))
                        .isEmpty();
            }
        }
        assertThat(pdf(sample(LETTER))).hasSizeLessThan(300_000);
    }

    @Test
    void theSamePlanGivesTheSameBytes() {
        assertThat(sample(LETTER).pdf()).isEqualTo(pdf(sample(LETTER)));
        assertThat(oneCore(A4).mapPng()).isEqualTo(oneCore(A4).mapPng());
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsPrintedInTheMargins(Paper paper) throws IOException {
        double dpi = 50.8; // 2 pixels to the millimetre
        int margin = (int) (2 * Paper.MARGIN_MM) - 1;
        SheetOptions options = SheetOptions.usual(paper, UnitSystem.US, "Loamline 9.9.9");
        for (WalkPlan plan : List.of(sample(options), sixZones(options))) {
            try (PDDocument document = Loader.loadPDF(pdf(plan))) {
                for (int page = 0; page < document.getNumberOfPages(); page++) {
                    BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, (float) dpi);
                    assertThat(inkedOutside(image, margin))
                            .as(paper + " page " + (page + 1))
                            .isZero();
                }
            }
        }
    }

    private static int inkedOutside(BufferedImage image, int margin) {
        int inked = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                boolean inside =
                        x >= margin && x < image.getWidth() - margin && y >= margin && y < image.getHeight() - margin;
                if (!inside && (image.getRGB(x, y) & 0xFFFFFF) != 0xFFFFFF) {
                    inked++;
                }
            }
        }
        return inked;
    }

    @ParameterizedTest
    @EnumSource
    void theMapHasSeventyPercentOfThePaper(Paper paper) {
        for (PaperRect sheet : List.of(paper.upright(), paper.onItsSide())) {
            PaperRect body = Page.body(sheet);
            double tilesMm = Tile.HEIGHT_MM + TiledMap.GAP_MM;
            double share = body.widthMm() * (body.heightMm() - tilesMm) / (sheet.widthMm() * sheet.heightMm());
            assertThat(share).isGreaterThanOrEqualTo(0.7);
        }
    }

    @Test
    void inGreyThereIsNoColour() throws IOException {
        WalkPlan plan = sample(LETTER.with(Palette.PRINT.grey()));
        try (PDDocument document = Loader.loadPDF(pdf(plan))) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 40);
            for (int i = 0; i < image.getWidth() * image.getHeight(); i++) {
                int rgb = image.getRGB(i % image.getWidth(), i / image.getWidth());
                assertThat(Math.abs((rgb >> 16 & 0xFF) - (rgb & 0xFF))).isLessThanOrEqualTo(1);
            }
        }
    }

    @Test
    void aBagThatIsCrowdedOnTheMapGetsALargerOne() throws IOException {
        Map<String, Outline> zones = new LinkedHashMap<>();
        zones.put("Near", Outline.of(0, 0, 18, 0, 18, 9, 0, 9));
        zones.put("Far", Outline.of(120, 60, 220, 60, 220, 130, 120, 130));
        Yard yard = Yard.empty("Two fields", Frame.local())
                .withFeatures(zones.entrySet().stream()
                        .map(zone -> (Feature) turf(zone.getKey(), zone.getValue()))
                        .toList());
        CorePlan plan = SamplePlan.grid(zones, 12);
        String text = text(new WalkPlan(yard, Zones.of(yard), plan, LETTER));
        assertThat(text).contains("1:1000", "bag A, Near", "1:100").doesNotContain("bag B, Far");
    }

    @Test
    void theMapAsAnImageHasTwoHundredPixelsToTheInch() throws IOException {
        BufferedImage image =
                ImageIO.read(new ByteArrayInputStream(sample(LETTER).mapPng()));
        PaperRect body = Page.body(Paper.LETTER.upright());
        assertThat(image.getWidth()).isEqualTo((int) Math.rint((body.widthMm() + 8) / 25.4 * 200));
    }
}
