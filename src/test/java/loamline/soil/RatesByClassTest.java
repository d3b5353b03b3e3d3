package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;

/** Guidelines that print an amount for a class. */
class RatesByClassTest {
    private static final double LB_M = Factors.G_M2_PER_LB_1000FT2;
    private static final SoilTables TABLES = SoilTables.published();

    private static SampleResult report(SoilOptions options, LabValue... values) {
        return SoilReport.of(List.of(values), options).samples().get(0);
    }

    /** From memory of BU-01731: Bray 8 ppm, 5 lb P2O5 on a new lawn, 1 on an established one. */
    @Test
    void minnesotaGivesRatesByClass() {
        SoilOptions minnesota = SoilOptions.USUAL.withGuideline("minnesota");
        LabValue bray = Values.of("P", 8, "ppm", "Bray P1");
        assertThat(report(minnesota, bray).needs().p2o5GM2().value().orElseThrow() / LB_M)
                .isCloseTo(1, within(1e-12));
        assertThat(report(minnesota.onNewLawn(), bray).needs().p2o5GM2().value().orElseThrow() / LB_M)
                .isCloseTo(5, within(1e-12));
        LabValue high = Values.of("P", 40, "ppm", "Olsen");
        assertThat(report(minnesota, high).needs().p2o5GM2().value()).contains(0.0);
    }

    /**
     * University of Minnesota, recommendations: the example lawn, clippings removed, phosphorus very high (Olsen), potassium
     * medium: N 3, P2O5 0, K2O 3 lb. The limits of its potassium classes are not published here, so the test brings its own.
     */
    @Test
    void minnesotasExampleLawn() {
        SoilTables withPotassium = TABLES.with("soil-ranges.csv", minnesotasRangesAnd("K", "medium"));
        SoilOptions minnesota = new SoilOptions(
                Optional.of("minnesota"),
                SoilOptions.USUAL.nitrogenGM2(),
                false,
                Optional.of("mn"),
                SoilOptions.USUAL.lime(),
                withPotassium);
        Needs needs = report(
                        minnesota, Values.of("P", 60, "ppm", "Olsen"), Values.of("K", 110, "ppm", "ammonium acetate"))
                .needs();
        assertThat(minnesota.nitrogenGM2() / LB_M).isCloseTo(3, within(1e-12));
        assertThat(needs.p2o5GM2().value()).contains(0.0);
        assertThat(needs.k2oGM2().value().orElseThrow() / LB_M).isCloseTo(3, within(1e-12));
        assertThat(needs.k2oGM2().account().orElseThrow().note()).contains("upper bound");
    }

    private static List<NamedRow> minnesotasRangesAnd(String element, String rated) {
        List<NamedRow> rows = new ArrayList<>(TABLES.rows("soil-ranges.csv").stream()
                .filter(row -> row.text("guideline").equals("minnesota"))
                .toList());
        Map<String, String> cells = new LinkedHashMap<>(rows.get(0).cells());
        cells.putAll(Map.of("test", "ammonium acetate", "element", element, "class", rated, "low", "0", "high", ""));
        rows.add(new NamedRow("soil-ranges.csv", 99, cells));
        return rows;
    }

    /** Virginia Nutrient Management Standards and Criteria 2014, from memory: a span, whose lower end is taken. */
    @Test
    void virginiaGivesRatesByClass() {
        LabValue p = Values.of("P", 20, "lb/acre", "Mehlich-1");
        LabValue k = Values.of("K", 320, "lb/acre", "Mehlich-1");
        Needs needs = report(SoilOptions.USUAL, p, k).needs();
        assertThat(needs.p2o5GM2().value().orElseThrow() / LB_M).isCloseTo(1, within(1e-12));
        assertThat(needs.p2o5GM2().account().orElseThrow().inputs()).containsEntry("up_to_lb_1000ft2", 2.0);
        assertThat(needs.k2oGM2().value()).contains(0.0);
        assertThat(report(SoilOptions.USUAL.onNewLawn(), p)
                                .needs()
                                .p2o5GM2()
                                .value()
                                .orElseThrow()
                        / LB_M)
                .isCloseTo(2, within(1e-12));
    }
}
