package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loamline.files.ReadingsFile;
import loamline.files.YardFiles;
import loamline.units.UnitSystem;
import loamline.water.cups.Concern;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupPlanner;
import loamline.water.cups.CupTest;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CupSheetTest {
    private static final Yard YARD =
            YardFiles.read(Path.of("maps/plover-court.geojson")).yard().orElseThrow();
    private static final double PT_PER_MM = 72 / 25.4;

    private static SheetOptions options(Paper paper) {
        return SheetOptions.usual(paper, paper == Paper.A4 ? UnitSystem.METRIC : UnitSystem.US, "Loamline 9.9.9");
    }

    private static String text(byte[] pdf, Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            document.getPages()
                    .forEach(page -> assertThat(page.getMediaBox().getWidth()
                                    + page.getMediaBox().getHeight())
                            .isCloseTo(
                                    (float) (PT_PER_MM
                                            * (paper.upright().widthMm()
                                                    + paper.upright().heightMm())),
                                    org.assertj.core.api.Assertions.within(1f)));
            return new PDFTextStripper().getText(document);
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theResultsTellHeadsReadingsAndHowNumbersCameAbout(Paper paper) throws IOException {
        var cups = ReadingsFile.read(Path.of("demo-data/plover-court/cups-valve-2.csv"), YARD.frame())
                .value()
                .orElseThrow();
        CupTest test = CupTest.of(YARD, "2", cups, Optional.empty());
        String text = text(new CupSheet(YARD, Zones.of(YARD), test, options(paper)).pdf(), paper);
        assertThat(text).contains("cup test, valve 2", "h10 weak", "infinite (a dry hole)", "Christiansen", "Sources");
        assertThat(text).contains("Longer watering does not mend a hole");
        assertThat(text).doesNotContain("NaN").doesNotContain("need a watering");
        assertThat(text).contains(paper == Paper.A4 ? "mm/h" : "in/h");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theSheetForTheTestHasARowForEveryCupAndTheRules(Paper paper) throws IOException {
        CupPlan plan = CupPlanner.of(YARD, "2", Concern.troubles(YARD), 100);
        String text = text(new CupPlanSheet(YARD, Zones.of(YARD), plan, options(paper)).pdf(), paper);
        assertThat(text).contains("trouble spot “dry, thin”", plan.minutes() + " minutes");
        CupPlan.RULES.forEach(rule -> assertThat(text.replace("\n", " ")).contains(rule.substring(0, 30)));
        assertThat(text.lines()).contains("1 13", "12 24");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void aTestWithoutCatchesStillMakesPages(Paper paper) throws IOException {
        CupTest test = CupTest.of(YARD, "2", List.of(), Optional.empty());
        assertThat(text(new CupSheet(YARD, Zones.of(YARD), test, options(paper)).pdf(), paper))
                .contains("not judged", "no cup can be used");
    }
}
