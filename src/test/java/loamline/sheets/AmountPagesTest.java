package loamline.sheets;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.sun.SunRequest;
import loamline.sun.SunStudy;
import loamline.units.UnitSystem;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.water.cups.FourHeads;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AmountPagesTest {
    private static final Yard YARD = Yard.empty("Alder Lane 12", Frame.at(new LonLat(-88.2, 40.1)))
            .withFeatures(List.of(turf("Front", box(0, 0, 12, 10))));

    private static String text(byte[] pdf, Paper paper, int pages) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(pages);
            double longest = Math.max(
                    document.getPage(0).getMediaBox().getHeight(),
                    document.getPage(0).getMediaBox().getWidth());
            assertThat(Math.round(longest * 25.4 / 72)).isEqualTo(paper == Paper.A4 ? 297 : 279);
            return new PDFTextStripper().getText(document);
        }
    }

    private static SheetOptions options(Paper paper) {
        return SheetOptions.usual(paper, UnitSystem.US, "Loamline test");
    }

    @ParameterizedTest
    @EnumSource
    void theSunHasAPageAndAMomentAnother(Paper paper) throws IOException {
        SunRequest request = new SunRequest(List.of(LocalDate.of(2027, 6, 21)), Duration.ofHours(1), 1);
        SunStudy sun = SunStudy.of(YARD, request).study().orElseThrow();
        byte[] hours = new SunMap(YARD, Zones.of(YARD), sun, options(paper)).pdf();
        assertThat(text(hours, paper, 1))
                .contains("Alder Lane 12", "direct sun in hours a day, on 2027-06-21", "Without clouds");
        SunMap.Moment moment =
                new SunMap.Moment("14:30 by the sun, 2027-06-21", sun.hours().map(h -> 1), List.of());
        byte[] both = new SunMap(YARD, Zones.of(YARD), sun, Optional.of(moment), options(paper)).pdf();
        assertThat(text(both, paper, 2)).contains("sun that reaches the turf at 14:30 by the sun, 2027-06-21", "100 %");
        assertThat(new SunMap(YARD, Zones.of(YARD), sun, Optional.of(moment), options(paper)).pdf())
                .isEqualTo(both);
    }

    @ParameterizedTest
    @EnumSource
    void waterHasAPageThatSaysWhatItIsNot(Paper paper) throws IOException {
        Yard yard = FourHeads.yard();
        Water water = Water.of(yard, new WaterOptions(0.5, false, 0, 0, 0));
        assertThat(text(new WaterMap(yard, Zones.of(yard), water, options(paper)).pdf(), paper, 1))
                .contains("rate with every valve running, ideal without wind", "only a cup test tells");
    }
}
