package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import loamline.reference.SoilRange;
import loamline.reference.SoilRange.Band;
import loamline.reference.SoilTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Every range against the classes as they are printed; sources in {@code ranges/SOURCE.md}. */
class PrintedRangesTest {
    private static final String CLASSES = "/loamline/soil/ranges/classes.csv";
    private static final SoilTables TABLES = SoilTables.published();

    private static SoilRange range(String guideline, String test, String element, String soil) {
        return TABLES.ranges(element).stream()
                .filter(r -> r.guideline().equals(guideline) && r.test().equals(test))
                .filter(r -> r.isFor(soil))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvFileSource(resources = CLASSES, delimiter = ';', numLinesToSkip = 1)
    void aRangeHasTheClassesThatArePrinted(
            String guideline, String test, String element, String soil, String unit, String classes) {
        SoilRange range = range(guideline, test, element, soil.equals("all") ? "" : soil);
        assertThat(range.unit()).isEqualTo(unit);
        assertThat(range.bands().stream().map(PrintedRangesTest::printed))
                .containsExactlyElementsOf(Arrays.asList(classes.split("\\|")));
        for (Band band : range.bands()) {
            assertThat(range.bandOf(band.low())).isEqualTo(band);
            band.high().ifPresent(high -> assertThat(range.bandOf(high)).isEqualTo(band));
        }
    }

    private static String printed(Band band) {
        return band.name() + " " + number(band.low())
                + "-"
                + (band.high().isPresent() ? number(band.high().getAsDouble()) : "");
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    @Test
    void noRangeIsHeldThatIsNotPrintedAmongThem() throws IOException {
        try (InputStream in = PrintedRangesTest.class.getResourceAsStream(CLASSES)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .toList();
            assertThat(TABLES.ranges().stream().filter(r -> !r.element().equals("OM")))
                    .hasSameSizeAs(lines)
                    .allMatch(r -> lines.stream()
                            .anyMatch(
                                    line -> line.startsWith(r.guideline() + ";" + r.test() + ";" + r.element() + ";")));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/loamline/soil/ranges/organic-matter.csv", numLinesToSkip = 1)
    void organicMatterHasTheClassThatIsPrintedForItsTexture(
            String printed, double pct, String loamySand, String sandyLoam, String loam, String siltLoam) {
        assertThat(organic("loamy sand", pct)).isEqualTo(loamySand);
        assertThat(organic("sandy loam", pct)).isEqualTo(sandyLoam);
        assertThat(organic("loam", pct)).isEqualTo(loam);
        assertThat(organic("silt loam", pct)).isEqualTo(siltLoam);
        assertThat(organic("clay loam", pct)).isEqualTo(siltLoam);
        assertThat(organic("clay", pct)).isEqualTo(siltLoam);
    }

    private static String organic(String texture, double pct) {
        return range("rutgers", "any", "OM", texture).bandOf(pct).name();
    }

    /** NCDA&CS, Understanding the Soil Test Report, from memory: index 50 of P and K, 25 of Zn and Cu. */
    @ParameterizedTest
    @CsvSource({"P, 60, 50", "K, 97.75, 50", "Zn, 1, 25", "Cu, 0.5, 25"})
    void anIndexOfNorthCarolinaIsTheMarkOfItsRange(String element, double mgDm3, double index) {
        assertThat(new Concentrations(TABLES)
                        .in(LabUnit.MG_DM3, Values.of(element, index, "index nc", "Mehlich-3"))
                        .value()
                        .orElseThrow())
                .isCloseTo(mgDm3, within(1e-9));
        assertThat(range("nc", "Mehlich-3", element, "").bands().get(1).low()).isEqualTo(mgDm3);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/loamline/soil/exchange/cec-by-texture.csv", numLinesToSkip = 1)
    void aTextureHoldsTheCapacityThatIsPrinted(String source, String textures, double low, double high) {
        for (String texture : textures.split("\\|")) {
            assertThat(TABLES.rows("cec-by-texture.csv"))
                    .filteredOn(row -> row.text("source_id").equals(source)
                            && row.list("textures").contains(texture))
                    .singleElement()
                    .satisfies(row -> {
                        assertThat(row.number("low_meq")).isEqualTo(low);
                        assertThat(row.number("high_meq")).isEqualTo(high);
                    });
        }
    }

    /** Woods, Mehlich 3 soil test P in sand rootzones: least, quarters, mean and most of 1,773 greens. */
    @ParameterizedTest
    @CsvSource({"4", "28", "46", "58", "69", "313"})
    void phosphorusAsItWasFoundIsNotDoubted(double ppm) {
        assertThat(new Questions(TABLES).about(Values.of("P", ppm, "ppm", "Mehlich-3")))
                .isEmpty();
    }

    /** Carrow et al. 2004, DTPA and micronutrients, are from memory of low confidence; none of them may be held. */
    @Test
    void nothingIsHeldThatWasOnlyDimlyRemembered() {
        assertThat(TABLES.ranges()).noneMatch(r -> r.test().equals("DTPA"));
        assertThat(TABLES.ranges())
                .filteredOn(r -> r.guideline().equals("slan"))
                .extracting(SoilRange::element)
                .doesNotContain("Fe", "Mn", "Zn", "Cu");
    }
}
