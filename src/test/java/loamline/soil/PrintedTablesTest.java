package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every rate table cell by cell against its source; sources and tolerances in the {@code SOURCE.md} beside each file. */
class PrintedTablesTest {
    private static final String CASES = "/loamline/soil/";
    private static final SoilTables TABLES = SoilTables.published();
    private static final LimeTable PENN_STATE = LimeTable.of(TABLES, "penn-state");
    private static final LimeTable SMP = LimeTable.of(TABLES, "smp");
    private static final double LB_M_PER_LB_ACRE = 1 / 43.56;

    private static NamedRow row(String table, Map<String, String> cells) {
        List<NamedRow> found = TABLES.rows(table).stream()
                .filter(row -> cells.entrySet().stream()
                        .allMatch(cell -> row.text(cell.getKey()).equals(cell.getValue())))
                .toList();
        assertThat(found).as("%s %s", table, cells).hasSize(1);
        return found.get(0);
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "lime/penn-state.csv", numLinesToSkip = 1)
    void limeByPennState(double acidity, double to70, double to65, double to60) {
        assertThat(PENN_STATE.rate(acidity, 7.0)).hasValue(to70);
        assertThat(PENN_STATE.rate(acidity, 6.5)).hasValue(to65);
        assertThat(PENN_STATE.rate(acidity, 6.0)).hasValue(to60);
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "lime/smp.csv", numLinesToSkip = 1)
    void limeBySmp(double buffer, double pure, double to70, double to65, double to60, double organic) {
        assertThat(SMP.rate(buffer, LimeTable.PURE_TO_7)).hasValue(pure);
        assertThat(SMP.rate(buffer, 7.0)).hasValue(to70);
        assertThat(SMP.rate(buffer, 6.5)).hasValue(to65);
        assertThat(SMP.rate(buffer, 6.0)).hasValue(to60);
        assertThat(SMP.rate(buffer, LimeTable.ORGANIC_TO_5_2)).hasValue(organic);
    }

    @Test
    void theTablesHoldNoOtherRows() {
        assertThat(PENN_STATE.rows()).hasSize(38);
        assertThat(SMP.rows()).hasSize(19);
        assertThat(TABLES.rows("lime-materials.csv")).hasSize(7); // the six printed and dolomite
        assertThat(TABLES.rows("lime-caps.csv")).hasSize(4);
        assertThat(TABLES.rows("sulfur-rates.csv")).hasSize(5 + 4 + 2); // and a base of 0 for each table
        assertThat(TABLES.rows("salt-tolerance.csv")).hasSize(22);
        assertThat(TABLES.rows("soil-rates.csv")).hasSize(23);
        assertThat(TABLES.rows("base-saturation.csv")).hasSize(7);
        assertThat(TABLES.rows("cec-by-texture.csv")).hasSize(11);
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "lime/materials.csv", numLinesToSkip = 1)
    void aPureMaterialStandsForATonOfLime(String material, double ccePct, double lb) {
        double held = row("lime-materials.csv", Map.of("material", material)).number("cce");
        assertThat(held).isEqualTo(ccePct);
        assertThat(new LimeMaterial(held, 100, 0).inPlaceOf(2000)).isCloseTo(lb, within(5.0));
    }

    /** Derived: 2 · 100.09 / 184.40. Gypsum and Epsom salt are no lime (Penn State Agronomy Facts 3, second-hand). */
    @Test
    void dolomiteIsALimeAndGypsumIsNone() {
        double dolomite =
                row("lime-materials.csv", Map.of("material", "CaMg(CO3)2")).number("cce");
        assertThat(dolomite).isCloseTo(100 * 2 * 100.09 / 184.40, within(0.05));
        assertThat(TABLES.rows("lime-materials.csv"))
                .noneMatch(row -> row.text("material").contains("SO4"));
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "lime/fineness.csv", numLinesToSkip = 1)
    void aFinenessScheme(
            String scheme, String sieves, double ccePct, double moisture, double fineness, double effective) {
        Map<Integer, Double> passing = Arrays.stream(sieves.split(" "))
                .map(sieve -> sieve.split("="))
                .collect(Collectors.toMap(pair -> Integer.valueOf(pair[0]), pair -> Double.valueOf(pair[1])));
        double found = LimeMaterial.finenessPct(TABLES, scheme, passing);
        assertThat(found).isCloseTo(fineness, within(1e-9));
        assertThat(new LimeMaterial(ccePct, found, moisture).effectivePct()).isCloseTo(effective, within(1e-9));
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "lime/caps.csv", numLinesToSkip = 1)
    void aCapOnADressing(String cap, double lbM, double months, String beyond, String source) {
        NamedRow row = row("lime-caps.csv", Map.of("cap", cap));
        assertThat(row.number("most_lb_1000ft2")).isEqualTo(lbM);
        assertThat(row.number("months_between")).isEqualTo(months);
        assertThat(row.text("beyond")).isEqualTo(beyond);
        assertThat(row.text("source_id")).isEqualTo(source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "sulfur/to-4.5.csv", numLinesToSkip = 1)
    void sulfurToFourAndAHalf(double ph, double sand, double loam, double clay) {
        SulfurTable table = SulfurTable.of(TABLES, SulfurTable.STRONG);
        assertThat(table.lbAcre(ph, 4.5, Texture.Group.SAND)).hasValue(sand);
        assertThat(table.lbAcre(ph, 4.5, Texture.Group.LOAM)).hasValue(loam);
        assertThat(table.lbAcre(ph, 4.5, Texture.Group.CLAY)).hasValue(clay);
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "sulfur/to-6.5.csv", numLinesToSkip = 1)
    void sulfurToSixAndAHalf(
            double ph, double sand, double loam, double clay, double sandM, double loamM, double clayM) {
        SulfurTable table = SulfurTable.of(TABLES, SulfurTable.ALKALINE);
        assertThat(table.lbAcre(ph, 6.5, Texture.Group.SAND)).hasValue(sand);
        assertThat(table.lbAcre(ph, 6.5, Texture.Group.LOAM)).hasValue(loam);
        assertThat(table.lbAcre(ph, 6.5, Texture.Group.CLAY)).hasValue(clay);
        assertThat(sand * LB_M_PER_LB_ACRE).isCloseTo(sandM, within(0.05));
        assertThat(loam * LB_M_PER_LB_ACRE).isCloseTo(loamM, within(0.05));
        assertThat(clay * LB_M_PER_LB_ACRE).isCloseTo(clayM, within(0.05));
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "salt/grasses.csv", numLinesToSkip = 1)
    void grassesStandSalt(String sensitivity, String from, String to, String grasses) {
        for (String grass : grasses.split("\\|")) {
            NamedRow row = row("salt-tolerance.csv", Map.of("grass", grass));
            assertThat(row.text("stands_from_ds_m")).as(grass).isEqualTo(from);
            assertThat(row.text("stands_to_ds_m")).as(grass).isEqualTo(to.equals("none") ? "" : to);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "salt/sodicity.csv", numLinesToSkip = 1)
    void sodiumOfAnExtract(double na, double ca, double mg, double sar, double espPct) {
        assertThat(Salinity.sar(na, ca, mg)).isCloseTo(sar, within(1e-9));
        assertThat(Salinity.espPct(sar)).isCloseTo(espPct, within(0.005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "rates/by-class.csv", numLinesToSkip = 1)
    void aRateByClass(String guideline, String nutrient, String rated, String use, double least, double most) {
        NamedRow row =
                row("soil-rates.csv", Map.of("guideline", guideline, "nutrient", nutrient, "class", rated, "use", use));
        assertThat(row.number("rate_lb_1000ft2")).isEqualTo(least);
        assertThat(row.numberOrNone("most_lb_1000ft2").orElse(least)).isEqualTo(most);
    }

    @ParameterizedTest
    @CsvFileSource(resources = CASES + "exchange/saturation.csv", numLinesToSkip = 1)
    void aRangeOfTheExchange(String guideline, String test, String share, double low, String high) {
        NamedRow row = row("base-saturation.csv", Map.of("guideline", guideline, "share", share));
        assertThat(row.text("test")).isEqualTo(test.equals("not stated") ? "" : test);
        assertThat(row.number("low")).isEqualTo(low);
        assertThat(row.numberOrNone("high"))
                .isEqualTo(high.equals("none") ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(high)));
    }
}
