package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.soil.Element;
import loamline.soil.LabValue;
import loamline.soil.SoilOptions;
import loamline.soil.SoilReport;
import loamline.units.UnitSystem;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

class SoilSheetTest {
    private static final double PT_PER_MM = 72 / 25.4;

    private static LabValue value(String sample, String element, double value, String unit, String test) {
        Element measured = Element.of(element).orElseThrow();
        boolean nutrient = measured.isNutrient();
        return new LabValue(
                sample,
                List.of("a zone with a very long name under the old oaks by the lane", "Back lawn"),
                measured,
                value,
                LabValue.Made.of(measured, unit, nutrient ? test : "", nutrient ? "" : test, OptionalDouble.of(0.1)),
                "A laboratory",
                Optional.empty(),
                2);
    }

    /** Every element by every extractant: more rows than a page holds. */
    private static SoilReport crowded() {
        List<LabValue> values = new ArrayList<>();
        for (String test : List.of("Mehlich-3", "Mehlich-1", "modified Morgan", "Bray P1", "resin")) {
            for (String element : List.of("P", "K", "Ca", "Mg", "S", "Zn", "Mn")) {
                values.add(value("A sample with a long name", element, 40, "ppm", test));
            }
        }
        values.add(value("A sample with a long name", "pH", 4.6, "", "water"));
        values.add(value("A sample with a long name", "bufferPH", 5.2, "", "SMP"));
        return SoilReport.of(values, SoilOptions.USUAL);
    }

    private static PDDocument pdf(Paper paper, UnitSystem units, SoilReport report) throws IOException {
        return Loader.loadPDF(new SoilSheet(report, SheetOptions.usual(paper, units, "Loamline 9.9.9")).pdf());
    }

    @Test
    void nothingIsSetInTheMarginsOfEitherPaper() throws IOException {
        for (Paper paper : Paper.values()) {
            try (PDDocument document = pdf(paper, UnitSystem.METRIC, crowded())) {
                List<TextPosition> letters = new ArrayList<>();
                PDFTextStripper stripper = new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition text) {
                        letters.add(text);
                    }
                };
                stripper.getText(document);
                double margin = (Paper.MARGIN_MM - 0.5) * PT_PER_MM;
                double width = document.getPage(0).getMediaBox().getWidth();
                double height = document.getPage(0).getMediaBox().getHeight();
                assertThat(document.getNumberOfPages()).isGreaterThan(2);
                assertThat(letters)
                        .isNotEmpty()
                        .allMatch(
                                l -> l.getXDirAdj() >= margin && l.getXDirAdj() + l.getWidthDirAdj() <= width - margin)
                        .allMatch(l -> l.getYDirAdj() >= margin && l.getYDirAdj() <= height - margin);
            }
        }
    }

    @Test
    void metricPagesTellMetricDoses() throws IOException {
        try (PDDocument document = pdf(Paper.A4, UnitSystem.METRIC, crowded())) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("kg/100 m²")
                    .doesNotContain("lb/1,000 ft²");
        }
    }

    @Test
    void numbersKeepTheDigitsThatALaboratoryMeans() {
        assertThat(SoilWords.number(2150.5)).isEqualTo("2151");
        assertThat(SoilWords.number(0.42)).isEqualTo("0.42");
        assertThat(SoilWords.number(64)).isEqualTo("64");
        assertThat(SoilWords.number(5.6)).isEqualTo("5.6");
    }
}
