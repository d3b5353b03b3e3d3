package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import loamline.Laws;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;
import loamline.units.Factors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From values to what is spread. */
class DosesFromReportsTest {
    private static final double LB_M = Factors.G_M2_PER_LB_1000FT2;
    private static final SoilTables TABLES = SoilTables.published();

    private static SampleResult report(SoilOptions options, LabValue... values) {
        return SoilReport.of(List.of(values), options).samples().get(0);
    }

    private static Lime lime(SoilOptions options, LabValue... values) {
        return report(options, values).lime().value().orElseThrow();
    }

    private static SoilOptions target(double ph) {
        return SoilOptions.USUAL.with(new SoilOptions.Lime(ph, LimeMaterial.PURE, "lawn", true));
    }

    private static LabValue ph(double value) {
        return Values.of("pH", value, "", "water");
    }

    private static double k2o(double ppm, double nitrogenGM2) {
        LabValue k = Values.deep(Values.of("K", ppm, "ppm", "Mehlich-3"), 0.1, 1.5);
        return report(SoilOptions.USUAL.withNitrogen(nitrogenGM2), k)
                .needs()
                .k2oGM2()
                .value()
                .orElseThrow();
    }

    /** Woods, 16 July 2015: K 50 ppm, N 16 g/m², 10 cm, 1.5 g/cm³; unrounded 6.05 g K/m² (derived). */
    @Test
    void potassiumByMinimumLevels() {
        assertThat(k2o(50, 16) / Oxides.K2O_PER_K).isCloseTo(6.05, within(1e-9));
        double perPpm = SoilMass.gM2PerPpm(0.1, 1.5);
        assertThat(6.05 / perPpm).isCloseTo(40.33, within(5e-3));
        // his slides: use 8 g = 53.3 ppm, kept 37 ppm = 5.55 g, found 50 ppm = 7.5 g; he prints Q as 41 ppm, 6.1 g
        NeedRule rule = NeedRule.of(need("mlsn", "K"));
        assertThat(rule.useGM2(16)).isEqualTo(8);
        assertThat(rule.useGM2(16) / perPpm).isCloseTo(53.3, within(0.05));
        assertThat(rule.keepPpm().orElseThrow() * perPpm).isCloseTo(5.55, within(1e-9));
        assertThat(50 * perPpm).isCloseTo(7.5, within(1e-9));
        assertThat(6.05 / perPpm).isCloseTo(41, within(1.0));
        assertThat(41 * perPpm / LB_M).isCloseTo(1.26, within(5e-3)); // derived from the printed 41 ppm
        assertThat(41 * perPpm / LB_M * Oxides.K2O_PER_K).isCloseTo(1.52, within(5e-3));
        assertThat(k2o(50, 16) / LB_M).isCloseTo(1.493, within(5e-4));
        assertThat(k2o(50, 16) / LB_M / Oxides.K2O_PER_K).isCloseTo(1.239, within(5e-4));
    }

    /** Derived: a lawn with 3 lb N, K 60 ppm; and K 200 ppm, which needs none. */
    @Test
    void potassiumOfALawn() {
        assertThat(k2o(60, 3 * LB_M) / LB_M).isCloseTo(0.956, within(5e-4));
        assertThat(k2o(60, 3 * LB_M) / LB_M / Oxides.K2O_PER_K).isCloseTo(0.793, within(5e-4));
        assertThat(k2o(60, 3 * LB_M) / Oxides.K2O_PER_K / SoilMass.gM2PerPpm(0.1, 1.5))
                .isCloseTo(25.8, within(0.05));
        assertThat(k2o(200, 16)).isZero();
    }

    /** Derived from Woods, 8 October 2022: P 30 ppm, N 20 g/m², 10 cm, 1.5 g/cm³. */
    @Test
    void phosphorusByMinimumLevelsAndBySufficiency() {
        assertThat(p2o5("mlsn-greens")).isCloseTo(1.01 * Oxides.P2O5_PER_P, within(1e-9));
        assertThat(p2o5("slan")).isCloseTo(3.75 * Oxides.P2O5_PER_P, within(1e-9));
    }

    private static double p2o5(String guideline) {
        LabValue p = Values.deep(Values.of("P", 30, "ppm", "Mehlich-3"), 0.1, 1.5);
        return report(SoilOptions.USUAL.withNitrogen(20).withGuideline(guideline), p)
                .needs()
                .p2o5GM2()
                .value()
                .orElseThrow();
    }

    /** Woods, 8 October 2022: uptake only, 0.14 N: 20 g/m² of N use 2.8 g/m² of P. */
    @Test
    void useFollowsFromNitrogen() {
        NeedRule uptake = new NeedRule(OptionalDouble.empty(), 0.14, 0, OptionalDouble.empty());
        assertThat(uptake.useGM2(20)).isCloseTo(2.8, within(1e-12));
        // Woods, September 2014: leaves hold N, P and K as 8 : 1 : 4; Woods 2022: bentgrass greens 0.118
        assertThat(NeedRule.of(need("mlsn", "P")).usePerN()).isEqualTo(1 / 8.0);
        assertThat(NeedRule.of(need("mlsn", "K")).usePerN()).isEqualTo(4 / 8.0);
        assertThat(NeedRule.of(need("mlsn-greens", "P")).usePerN()).isEqualTo(0.118);
    }

    private static NamedRow need(String guideline, String element) {
        return TABLES.rows("soil-needs.csv").stream()
                .filter(r -> r.text("guideline").equals(guideline)
                        && r.text("element").equals(element))
                .findFirst()
                .orElseThrow();
    }

    private static NeedRule texas(String element) {
        return NeedRule.of(need("texas-bermuda", element));
    }

    /** Texas A&M turf publication: P 10 ppm, add 2.0 lb P (4.6 lb P2O5, derived); K 175 ppm, none. */
    @Test
    void seasonalNeedLessWhatTheSoilSupplies() {
        double perPpm = SoilMass.gM2PerPpm(SoilMass.FURROW_SLICE_M, SoilMass.FURROW_SLICE_G_CM3);
        double p = texas("P").elementGM2(10, 0, perPpm).orElseThrow() / LB_M;
        assertThat(p).isCloseTo(2.04, within(5e-3));
        assertThat(Math.rint(p * 10) / 10).isEqualTo(2.0);
        assertThat(2.0 * Oxides.P2O5_PER_P).isCloseTo(4.6, within(0.05));
        assertThat(texas("K").elementGM2(175, 0, perPpm)).hasValue(0);
        assertThat(texas("K").elementGM2(100, 0, perPpm).orElseThrow()).isPositive();
    }

    /** Landschoot & Wolf 2011: no phosphorus at 46 ppm; below, the guideline names no amount. */
    @Test
    void aThresholdSaysNoneOrNothing() {
        assertThat(pennState(46).value()).contains(0.0);
        assertThat(pennState(44).reason()).contains("not how much");
        assertThat(pennState("penn-state-greens", 89).reason()).contains("not how much");
        assertThat(pennState("penn-state-greens", 91).value()).contains(0.0);
    }

    private static Advice<Double> pennState(double ppm) {
        return pennState("penn-state", ppm);
    }

    private static Advice<Double> pennState(String guideline, double ppm) {
        return report(SoilOptions.USUAL.withGuideline(guideline), Values.of("P", ppm, "ppm", "Mehlich-3"))
                .needs()
                .p2o5GM2();
    }

    /** Penn State AASL, Lime Recommendations Turf: 110 lb in two dressings, 460 lb in five, four months apart. */
    @Test
    void limeByThePennStateTable() {
        LabValue acidity = Values.of("acidity", 6.5, "meq/100 g", "Mehlich");
        Lime lime = lime(target(6.5), ph(5.6), acidity);
        assertThat(lime.cceKgM2() * 1000 / LB_M).isCloseTo(110, within(1e-9));
        assertThat(lime.dosesKgM2())
                .hasSize(2)
                .allSatisfy(d -> assertThat(d * 1000 / LB_M).isCloseTo(55, within(1e-9)));
        assertThat(lime.monthsBetween()).isEqualTo(4);
        assertThat(lime.basisDepthM()).isEmpty();
        Lime much = lime(target(7.0), ph(5.0), Values.of("acidity", 20.0, "meq/100 g", "Mehlich"));
        assertThat(much.dosesKgM2())
                .hasSize(5)
                .allSatisfy(d -> assertThat(d * 1000 / LB_M).isCloseTo(92, within(1e-9)));
    }

    @Test
    void theCapHoldsForTheMaterialThatIsSpread() {
        LabValue acidity = Values.of("acidity", 6.5, "meq/100 g", "Mehlich");
        SoilOptions poor =
                SoilOptions.USUAL.with(new SoilOptions.Lime(6.5, new LimeMaterial(50, 100, 0), "new-hampshire", true));
        Lime lime = lime(poor, ph(5.6), acidity);
        assertThat(lime.productKgM2() * 1000 / LB_M).isCloseTo(220, within(1e-9));
        assertThat(lime.dosesKgM2()).hasSize(5);
    }

    /** University of Georgia AESL 792: above 50 lb half of it, then a new test. */
    @Test
    void georgiaSpreadsHalfAndTestsAgain() {
        SoilOptions georgia = SoilOptions.USUAL.with(new SoilOptions.Lime(6.5, LimeMaterial.PURE, "georgia", true));
        Lime lime = lime(georgia, ph(5.6), Values.of("acidity", 6.5, "meq/100 g", "Mehlich"));
        assertThat(lime.dosesKgM2()).containsExactly(lime.productKgM2() / 2);
        assertThat(lime.cautions()).anyMatch(c -> c.contains("test again"));
    }

    /** SMP 6.6 to 6.5: 2.9 ton/acre of 90 % limestone 8 in deep is 133.1 lb; half of it for 4 in. */
    @Test
    void limeBySmpIsBroughtToTheDepthSampled() {
        LabValue buffer = Values.of("bufferPH", 6.6, "", "SMP");
        Lime shallow = lime(target(6.5), ph(5.6), buffer);
        assertThat(shallow.cceKgM2() * 1000 / LB_M / 0.90).isCloseTo(133.1 / 2, within(0.05));
        SoilOptions asPrinted =
                SoilOptions.USUAL.with(new SoilOptions.Lime(6.5, new LimeMaterial(90, 100, 0), "lawn", false));
        assertThat(lime(asPrinted, ph(5.6), buffer).productKgM2() * 1000 / LB_M).isCloseTo(133.1, within(0.05));
        Lime sikora = lime(target(6.5), ph(5.6), Values.of("bufferPH", 6.6, "", "Sikora"));
        assertThat(sikora.cceKgM2()).isEqualTo(shallow.cceKgM2());
    }

    /** SMP from memory: pure CaCO₃ to 7.0, 2.4 ton, told beside 3.4 of limestone; organic soil to 5.2, 1.8 ton, 8 in deep. */
    @Test
    void limeBySmpOnOrganicSoilAndOfPureLime() {
        LabValue buffer = Values.deep(Values.of("bufferPH", 6.6, "", "SMP"), 8 * Factors.M_PER_IN);
        assertThat(report(target(7.0), ph(5.6), buffer)
                        .lime()
                        .account()
                        .orElseThrow()
                        .inputs())
                .containsEntry("rate_of_pure_fine_CaCO3_ton_acre", 2.4)
                .containsEntry("rate_ton/acre", 3.4);
        double tonAcre = lime(target(5.2), ph(4.6), buffer, Values.of("OM", 19.1, "%", ""))
                        .cceKgM2()
                / 0.90
                / SoilMass.KG_M2_PER_LB_ACRE
                / 2000;
        assertThat(tonAcre).isCloseTo(1.8, within(1e-9));
        assertThat(report(target(5.2), ph(4.6), buffer, Values.of("OM", 19, "%", ""))
                        .lime()
                        .reason())
                .contains("more than 19 %");
    }

    /** North Carolina Department of Agriculture, buffer table: 0.75 ton/acre, 34.4 lb, at its own 8 in. */
    @Test
    void limeByNorthCarolina() {
        LabValue buffer = Values.deep(Values.of("bufferPH", 6.3, "", "Mehlich"), 8 * Factors.M_PER_IN);
        assertThat(lime(target(6.0), ph(5.0), buffer).cceKgM2() * 1000 / LB_M).isCloseTo(34.4, within(0.05));
    }

    /** Derived: 50.4 lb for a furrow slice. */
    @Test
    void limeByAdamsEvans() {
        LabValue buffer = Values.deep(Values.of("bufferPH", 7.70, "", "Adams-Evans"), SoilMass.FURROW_SLICE_M);
        assertThat(lime(target(6.5), ph(5.1), buffer).cceKgM2() * 1000 / LB_M).isCloseTo(50.4, within(0.05));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "CaCl2; 5.6; SMP; 6.6; 0.5 below",
                "water; 5.6; Woodruff; 6.6; share for another target",
                "water; 5.6; SMP; 4.8; below the SMP table",
                "water; 4.2; Adams-Evans; 7.6; holds from pH 4.51"
            })
    void whatAMethodCannotSayIsRefused(String phMethod, double ph, String method, double buffer, String why) {
        Advice<Lime> lime = report(
                        target(6.5), Values.of("pH", ph, "", phMethod), Values.of("bufferPH", buffer, "", method))
                .lime();
        assertThat(lime.value()).isEmpty();
        assertThat(lime.reason()).contains(why);
    }

    @Test
    void nothingFollowsFromAValueWithoutUnitExtractantOrDepth() {
        Needs needs = report(
                        SoilOptions.USUAL,
                        Values.of("P", 5, "", "Mehlich-3"),
                        Values.withoutDepth(Values.of("K", 20, "ppm", "Mehlich-3")))
                .needs();
        assertThat(needs.p2o5GM2().value()).isEmpty();
        assertThat(needs.k2oGM2().reason()).contains("depth_cm");
        assertThat(report(SoilOptions.USUAL, Values.of("K", 20, "ppm", ""))
                        .needs()
                        .k2oGM2()
                        .value())
                .isEmpty();
        Advice<Lime> lime = report(
                        SoilOptions.USUAL, ph(5.5), Values.withoutDepth(Values.of("bufferPH", 6.5, "", "SMP")))
                .lime();
        assertThat(lime.reason()).contains("depth_cm");
        assertThat(report(SoilOptions.USUAL, ph(5.5)).lime().reason()).contains("pH alone");
    }

    @Test
    void sulfurOnlyAboveSevenAndAHalfAndNeverWithLime() {
        LabValue[] sandy = {Values.of("sand", 92, "%", ""), Values.of("silt", 5, "%", ""), Values.of("clay", 3, "%", "")
        };
        assertThat(report(SoilOptions.USUAL, ph(7.5))
                        .sulfur()
                        .value()
                        .orElseThrow()
                        .kgM2())
                .isZero();
        SampleResult alkaline = report(SoilOptions.USUAL, ph(8.0), sandy[0], sandy[1], sandy[2]);
        // from memory of the Western Fertilizer Handbook: 1200 lb/acre, 27.5 lb; here for 4 of 6 2/3 in
        assertThat(alkaline.sulfur().value().orElseThrow().kgM2() * 1000 / LB_M)
                .isCloseTo(27.5 * 4 / (20 / 3.0), within(0.05));
        assertThat(alkaline.sulfur().value().orElseThrow().years()).containsExactly(1, 1, 2, 2);
        assertThat(alkaline.lime().value().orElseThrow().cceKgM2()).isZero();
        assertThat(report(SoilOptions.USUAL, ph(8.0)).sulfur().reason()).contains("sand, silt and clay");
        Advice<Sulfur> limey = report(SoilOptions.USUAL, ph(8.0), Values.of("carbonate", 1, "%", ""))
                .sulfur();
        assertThat(limey.reason()).contains("147 lb"); // derived: 6,407 lb/acre for 1 % CaCO₃
        assertThat(SulfurAdvice.carbonateLbAcre(1)).isCloseTo(6407, within(1.0));
    }

    @Test
    void theLawOfTheStateIsShownWherePhosphorusIsDue() {
        LabValue low = Values.of("P", 5, "ppm", "Mehlich-3");
        assertThat(report(SoilOptions.USUAL.inState("mn"), low).cautions())
                .anyMatch(c -> c.startsWith("MN (since 2004)"));
        assertThat(report(SoilOptions.USUAL, low).cautions()).anyMatch(c -> c.contains("look up the rule"));
        assertThat(report(SoilOptions.USUAL.inState("mn"), Values.of("P", 300, "ppm", "Mehlich-3"))
                        .cautions())
                .noneMatch(c -> c.startsWith("MN"));
    }

    @Test
    void choicesThatAreInNoTableAreRefused() {
        assertThatThrownBy(() -> SoilOptions.USUAL.withGuideline("nobody")).hasMessageContaining("mlsn");
        assertThatThrownBy(() -> SoilOptions.USUAL.inState("zz")).hasMessageContaining("MN");
        assertThatThrownBy(() -> SoilOptions.USUAL.with(new SoilOptions.Lime(6.5, LimeMaterial.PURE, "none", true)))
                .hasMessageContaining("lawn");
    }

    @Property(seed = Laws.SEED, tries = 300)
    void nothingIsEverBelowNothing(
            @ForAll @DoubleRange(min = 0, max = 1000) double p,
            @ForAll @DoubleRange(min = 0, max = 2000) double k,
            @ForAll @DoubleRange(min = 0, max = 14) double ph,
            @ForAll @DoubleRange(min = 0, max = 14) double buffer,
            @ForAll @DoubleRange(min = 0.01, max = 1) double depthM) {
        for (String method : List.of("SMP", "Sikora", "Mehlich", "Adams-Evans", "Moore-Sikora", "Woodruff")) {
            SampleResult sample = report(
                    SoilOptions.USUAL,
                    Values.deep(Values.of("P", p, "ppm", "Mehlich-3"), depthM),
                    Values.deep(Values.of("K", k, "ppm", "Mehlich-3"), depthM),
                    Values.deep(Values.of("pH", ph, "", "water"), depthM),
                    Values.deep(Values.of("bufferPH", buffer, "", method), depthM));
            sample.needs().p2o5GM2().value().ifPresent(v -> assertThat(v).isGreaterThanOrEqualTo(0));
            sample.needs().k2oGM2().value().ifPresent(v -> assertThat(v).isGreaterThanOrEqualTo(0));
            sample.lime().value().ifPresent(lime -> {
                assertThat(lime.cceKgM2()).isGreaterThanOrEqualTo(0);
                assertThat(lime.dosesKgM2()).allMatch(d -> d > 0 && d * 1000 / LB_M <= 100 + 1e-6);
                double spread = lime.dosesKgM2().stream().mapToDouble(d -> d).sum();
                assertThat(spread).isCloseTo(lime.productKgM2(), within(1e-9));
            });
            boolean limes = sample.lime().value().filter(l -> l.cceKgM2() > 0).isPresent();
            boolean acidifies =
                    sample.sulfur().value().filter(s -> s.kgM2() > 0).isPresent();
            assertThat(limes && acidifies).isFalse();
        }
    }
}
