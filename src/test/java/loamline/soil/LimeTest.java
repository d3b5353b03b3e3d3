package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimeTest {
    private static final SoilTables TABLES = SoilTables.published();
    private static final LimeTable PENN_STATE = LimeTable.of(TABLES, "penn-state");
    private static final LimeTable SMP = LimeTable.of(TABLES, "smp");
    /** lb on 1,000 ft² in a short ton on an acre, derived. */
    private static final double LB_M_PER_TON_ACRE = 2000 / 43.56;

    private static double cell(NamedRow row, String column) {
        return row.number(column);
    }

    /**
     * The Penn State turf table by its own regularity: every cell is a multiple of 1,000 lb/acre rounded to tens, and the
     * whole column to 7.0 is the acidity rounded to whole meq.
     */
    @Test
    void thePennStateTableIsCopiedWithoutASlip() {
        assertThat(PENN_STATE.rows()).hasSize(38);
        for (NamedRow row : PENN_STATE.rows()) {
            double acidity = cell(row, "reading");
            double expected = 10 * Math.floor(Math.floor(acidity + 0.5) * 1000 / 43.56 / 10 + 0.5);
            assertThat(cell(row, "to_7.0")).as("acidity %s", acidity).isEqualTo(expected);
            for (String column : List.of("to_7.0", "to_6.5", "to_6.0")) {
                double steps = Math.rint(cell(row, column) * 43.56 / 1000);
                assertThat(10 * Math.floor(steps * 1000 / 43.56 / 10 + 0.5)).isEqualTo(cell(row, column));
            }
        }
    }

    /** The same observation about the column to 6.5: one factor reproduces 21 of its 38 cells, so it is no formula. */
    @Test
    void theColumnToSixAndAHalfFollowsNoOneFactor() {
        long hits = PENN_STATE.rows().stream()
                .filter(row -> 10 * Math.floor(Math.floor(0.84 * cell(row, "reading") + 0.5) * 22.957 / 10 + 0.5)
                        == cell(row, "to_6.5"))
                .count();
        assertThat(hits).isEqualTo(21);
    }

    @Test
    void noColumnFallsWhereTheSoilIsMoreAcidOrTheTargetHigher() {
        for (LimeTable table : List.of(PENN_STATE, SMP)) {
            boolean byAcidity = table.equals(PENN_STATE);
            for (int i = 1; i < table.rows().size(); i++) {
                for (String column : List.of("to_7.0", "to_6.5", "to_6.0")) {
                    double before = cell(table.rows().get(i - 1), column);
                    double after = cell(table.rows().get(i), column);
                    assertThat(byAcidity ? after - before : before - after).isGreaterThanOrEqualTo(0);
                }
            }
            assertThat(table.rows())
                    .allMatch(row ->
                            cell(row, "to_7.0") >= cell(row, "to_6.5") && cell(row, "to_6.5") >= cell(row, "to_6.0"));
        }
    }

    /** Penn State AASL, Lime Recommendations Turf. */
    @ParameterizedTest
    @CsvSource({"10.3, 7.0, 230", "10.3, 6.5, 180", "10.3, 6.0, 140", "6.5, 6.5, 110", "20.0, 7.0, 460"})
    void rowsOfThePennStateTable(double acidity, double target, double lbM) {
        assertThat(PENN_STATE.rate(acidity, target)).hasValue(lbM);
    }

    @Test
    void betweenRowsIsAStraightLineAndBeyondTheEndsThereIsNothing() {
        assertThat(PENN_STATE.rate(3.6, 7.0)).hasValue(80); // half way from 70 (3.3) to 90 (3.9)
        assertThat(PENN_STATE.rate(25.8, 7.0)).isEmpty();
        assertThat(PENN_STATE.rate(1.9, 7.0)).isEmpty();
        assertThat(PENN_STATE.rate(10.3, 6.2)).isEmpty();
        assertThat(SMP.rate(6.65, 6.5).orElseThrow()).isCloseTo(2.5, within(1e-9));
    }

    /** SMP table in lb on 1,000 ft² 8 in deep, derived × 45.914; from memory of the sources beside the table. */
    @ParameterizedTest
    @CsvSource({
        "6.8, 55.1",
        "6.7, 96.4",
        "6.6, 133.1",
        "6.5, 174.5",
        "6.4, 215.8",
        "6.3, 252.5",
        "6.2, 293.8",
        "6.1, 330.6",
        "6.0, 371.9"
    })
    void rowsOfTheSmpTable(double bufferPh, double lbM) {
        assertThat(SMP.rate(bufferPh, 6.5).orElseThrow() * LB_M_PER_TON_ACRE).isCloseTo(lbM, within(0.05));
    }

    /** North Carolina Department of Agriculture, buffer table: prints 0.76 ton/acre. */
    @Test
    void northCarolina() {
        assertThat(LimeFormulas.mehlichAcidity(6.3)).isCloseTo(1.2, within(1e-9));
        double tonAcre = LimeFormulas.northCarolinaTonAcre(5.0, 1.2, 6.0, 0);
        assertThat(tonAcre).isCloseTo(0.75, within(1e-9)).isCloseTo(0.76, within(0.011));
        assertThat(tonAcre * LB_M_PER_TON_ACRE).isCloseTo(34.4, within(0.05));
        assertThat(LimeFormulas.northCarolinaTonAcre(6.2, 1.2, 6.0, 0)).isZero();
        assertThat(LimeFormulas.northCarolinaTonAcre(5.0, 1.2, 6.0, 2)).isZero();
        assertThatThrownBy(() -> LimeFormulas.northCarolinaTonAcre(6.6, 1.2, 7.0, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Penn State Agronomy Guide, Part 1 Section 2. */
    @Test
    void pennStateFormula() {
        assertThat(LimeFormulas.pennStateLbAcre(6, 5.5, 7.0)).isEqualTo(6000);
        assertThat(LimeFormulas.pennStateLbAcre(6, 5.5, 6.5)).isEqualTo(5040);
        assertThat(LimeFormulas.pennStateLbAcre(3, 6.0, 6.5)).isEqualTo(2000);
        assertThat(LimeFormulas.pennStateLbAcre(3, 6.5, 6.5)).isZero();
        assertThat(6000 / 43.56).isCloseTo(137.7, within(0.05));
        assertThat(2000 / 43.56).isCloseTo(45.9, within(0.05));
    }

    /** Derived; the relation of pH to acid share is from memory of Adams & Evans 1962. */
    @Test
    void adamsEvans() {
        assertThat(LimeFormulas.adamsEvansAcidShare(5.1)).isCloseTo(0.6662, within(5e-5));
        assertThat(LimeFormulas.adamsEvansAcidShare(6.5)).isCloseTo(0.2601, within(5e-5));
        assertThat(LimeFormulas.adamsEvansAcidShare(6.0)).isCloseTo(0.3823, within(5e-5));
        assertThat(LimeFormulas.adamsEvansLbAcre(5.1, 7.70, 6.5)).isCloseTo(2194.5, within(0.5));
        assertThat(LimeFormulas.adamsEvansLbAcre(5.1, 7.70, 6.0)).isCloseTo(1534, within(0.5));
        assertThat(LimeFormulas.adamsEvansLbAcre(6.6, 7.70, 6.5)).isZero();
        assertThatThrownBy(() -> LimeFormulas.adamsEvansAcidShare(4.5)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void acidityAgainstLime() {
        assertThat(LimeFormulas.fullLbAcre(1)).isEqualTo(1000); // derived: 50.04 mg CaCO₃ a meq, 2,000,000 lb
        assertThat(1000 / 43.56).isCloseTo(22.96, within(5e-3));
        assertThat(LimeFormulas.woodruffAcidity(6.5)).isCloseTo(5, within(1e-9)); // from memory of Woodruff 1948
        assertThat(LimeFormulas.woodruffAcidity(7.2)).isZero();
        // from memory of Missouri practice: 800 lb ENM in a ton of lime, so 400 lb for each meq
        assertThat(LimeFormulas.enmLbAcre(5)).isEqualTo(2000);
        assertThat(LimeFormulas.georgiaLbAcre(400, 5.5, 6.5)).isEqualTo(800); // derived from the definition
        assertThat(LimeFormulas.georgiaLbAcre(400, 6.6, 6.5)).isZero();
    }

    /** Penn State AASL, Home Garden (5 lb at CCE 70: prints 7); Clemson lime page (1 ton at CCE 50 and 150). */
    @Test
    void poorerMaterialTakesMore() {
        assertThat(new LimeMaterial(70, 100, 0).inPlaceOf(5)).isCloseTo(7.14, within(5e-3));
        assertThat(new LimeMaterial(50, 100, 0).inPlaceOf(1)).isEqualTo(2);
        assertThat(new LimeMaterial(150, 100, 0).inPlaceOf(1)).isCloseTo(0.67, within(5e-3));
        // derived from the neutralising values of UNL's liming lesson
        assertThat(new LimeMaterial(cce("CaO"), 100, 0).inPlaceOf(100)).isCloseTo(56, within(0.5));
        assertThat(new LimeMaterial(cce("Mg(OH)2"), 100, 0).inPlaceOf(100)).isCloseTo(58, within(0.5));
    }

    private static double cce(String material) {
        return TABLES.rows("lime-materials.csv").stream()
                .filter(row -> row.text("material").equals(material))
                .findFirst()
                .orElseThrow()
                .number("cce");
    }

    private static Map<Integer, Double> sieves(double... meshAndPassing) {
        Map<Integer, Double> sieves = new LinkedHashMap<>();
        for (int i = 0; i < meshAndPassing.length; i += 2) {
            sieves.put((int) meshAndPassing[i], meshAndPassing[i + 1]);
        }
        return sieves;
    }

    /** Derived from Cornell CA5-12 (0.40, 0.80, 1.00 between the sieves) and the Oklahoma type (0, 0.5, 1). */
    @Test
    void finenessByScheme() {
        double cornell = LimeMaterial.finenessPct(TABLES, "cornell", sieves(20, 95, 60, 70, 100, 55));
        assertThat(cornell).isCloseTo(77.0, within(1e-9));
        assertThat(cornell).isCloseTo(0.40 * (95 - 70) + 0.80 * (70 - 55) + 1.00 * 55, within(1e-9));
        assertThat(new LimeMaterial(90, cornell, 0).effectivePct()).isCloseTo(69.3, within(1e-9));
        double oklahoma = LimeMaterial.finenessPct(TABLES, "oklahoma", sieves(8, 95, 60, 70));
        assertThat(oklahoma).isCloseTo(82.5, within(1e-9));
        assertThat(new LimeMaterial(90, oklahoma, 0).effectivePct()).isCloseTo(74.25, within(1e-9));
        assertThat(new LimeMaterial(90, oklahoma, 10).effectivePct()).isCloseTo(66.825, within(1e-9));
        assertThatThrownBy(() -> LimeMaterial.finenessPct(TABLES, "cornell", sieves(20, 95)))
                .hasMessageContaining("60 mesh");
    }

    @Test
    void everySchemeMakesAWholeOfWhatPassesAllSieves() {
        Map<Integer, Double> all = sieves(4, 100, 8, 100, 10, 100, 20, 100, 50, 100, 60, 100, 100, 100);
        for (String scheme : List.of("cornell", "minnesota", "oklahoma", "kentucky", "iowa")) {
            assertThat(LimeMaterial.finenessPct(TABLES, scheme, all)).isCloseTo(100, within(1e-9));
        }
    }

    /** Derived from the caps of Penn State (100) and New Hampshire (50; its report makes two of 92). */
    @Test
    void dressingsStayUnderTheCap() {
        assertThat(Doses.split(230, 100))
                .hasSize(3)
                .allSatisfy(d -> assertThat(d).isCloseTo(76.7, within(0.05)));
        assertThat(Doses.split(230, 50))
                .hasSize(5)
                .allSatisfy(d -> assertThat(d).isEqualTo(46));
        // the fifth of 460 lb falls 16 months after the first at Penn State's 4 months
        assertThat(4 * (Doses.split(460, 100).size() - 1)).isEqualTo(16);
        assertThat(Doses.split(92, 50)).hasSize(2);
        assertThat(Doses.split(110, 100)).containsExactly(55.0, 55.0);
        assertThat(Doses.split(460, 100))
                .hasSize(5)
                .allSatisfy(d -> assertThat(d).isEqualTo(92));
        assertThat(Doses.split(100, 100)).hasSize(1);
        assertThat(Doses.split(0, 100)).isEmpty();
        assertThatThrownBy(() -> Doses.split(-1, 100)).isInstanceOf(IllegalArgumentException.class);
    }
}
