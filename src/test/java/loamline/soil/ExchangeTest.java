package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import loamline.reference.Origin;
import loamline.reference.SoilTables;
import org.junit.jupiter.api.Test;

class ExchangeTest {
    private static SampleResult report(LabValue... values) {
        return SoilReport.of(List.of(values), SoilOptions.USUAL).samples().get(0);
    }

    /** Clemson University, CEC calculations: K 221, Mg 28, Ca 400, Na 12 lb/acre, buffer pH 7.70. */
    @Test
    void clemsonsExample() {
        Exchange exchange = report(
                        Values.of("K", 221, "lb/acre", "Mehlich-1"),
                        Values.of("Mg", 28, "lb/acre", "Mehlich-1"),
                        Values.of("Ca", 400, "lb/acre", "Mehlich-1"),
                        Values.of("Na", 12, "lb/acre", "Mehlich-1"),
                        Values.of("pH", 5.1, "", "water"),
                        Values.of("bufferPH", 7.70, "", "Adams-Evans"))
                .exchange()
                .value()
                .orElseThrow();
        assertThat(exchange.acidityMeq()).isCloseTo(2.40, within(1e-9));
        assertThat(exchange.cecMeq()).isCloseTo(3.83, within(5e-3));
        assertThat(exchange.cationsMeq().get(Element.K)).isCloseTo(0.28, within(5e-3));
        assertThat(exchange.cationsMeq().get(Element.MG)).isCloseTo(0.12, within(5e-3));
        assertThat(exchange.cationsMeq().get(Element.CA)).isCloseTo(1.00, within(5e-3));
        assertThat(exchange.cationsMeq().get(Element.NA)).isCloseTo(0.03, within(5e-3));
        assertThat(exchange.baseSaturationPct())
                .isCloseTo(37.27, within(5e-3))
                .isCloseTo(37, within(0.5)); // as printed
    }

    /** Clemson, CEC calculations; Warncke & Brown, NCR-221 (attribution from memory); NCDA buffer table. */
    @Test
    void acidityByEachBuffer() {
        assertThat(Acidity.adamsEvans(7.70)).isCloseTo(2.40, within(1e-9));
        assertThat(Acidity.smp(6.6)).isCloseTo(4.80, within(1e-9));
        assertThat(Acidity.smp(7.0)).isZero();
        assertThat(Acidity.smp(7.2)).isZero();
        assertThat(LimeFormulas.mehlichAcidity(6.3)).isCloseTo(1.2, within(1e-9));
        assertThat(LimeFormulas.mehlichAcidity(6.6)).isZero();
    }

    private static LabValue[] cations(String extractant) {
        return new LabValue[] {
            Values.of("Ca", 1200, "ppm", extractant), // 6.00 meq of 12.78
            Values.of("Mg", 180, "ppm", extractant), // 1.50
            Values.of("K", 50, "ppm", extractant), // 0.13
            Values.of("pH", 5.6, "", "water"),
            Values.of("bufferPH", 6.6, "", "SMP")
        };
    }

    /** University of Massachusetts (modified Morgan): Ca 50-80, Mg 10-30, K 2-7 %; Ohio State: 40-80, 10-40, 1-5, Mg:K 2. */
    @Test
    void sharesOfTheExchangeStandBesideTheRangeOfTheirExtractant() {
        assertThat(report(cations("modified Morgan")).saturations())
                .extracting(Saturation::share, Saturation::guideline, Saturation::place)
                .containsExactly(
                        tuple("Ca", "umass", Saturation.Place.BELOW),
                        tuple("Mg", "umass", Saturation.Place.WITHIN),
                        tuple("K", "umass", Saturation.Place.BELOW),
                        tuple("Mg:K", "ohio", Saturation.Place.WITHIN));
        assertThat(report(cations("Mehlich-3")).saturations())
                .extracting(Saturation::share, Saturation::guideline, Saturation::place)
                .containsExactly(
                        tuple("Ca", "ohio", Saturation.Place.WITHIN),
                        tuple("Mg", "ohio", Saturation.Place.WITHIN),
                        tuple("K", "ohio", Saturation.Place.WITHIN),
                        tuple("Mg:K", "ohio", Saturation.Place.WITHIN));
        assertThat(report(Values.of("Ca", 1200, "ppm", "Mehlich-3")).saturations())
                .isEmpty();
    }

    @Test
    void aShareAboveItsRangeIsAbove() {
        Saturation saturation = new Saturation("Ca", 80.1, 40, OptionalDouble.of(80), "ohio", ORIGIN);
        assertThat(saturation.place()).isEqualTo(Saturation.Place.ABOVE);
        assertThat(new Saturation("Ca", 80, 40, OptionalDouble.of(80), "ohio", ORIGIN).place())
                .isEqualTo(Saturation.Place.WITHIN);
    }

    private static final Origin ORIGIN = SoilTables.published()
            .origin(SoilTables.published().rows("base-saturation.csv").get(0));

    /** Derived: Ca 1200, Mg 180, K 150, Na 23 ppm, SMP 6.6. */
    @Test
    void capacityBySmp() {
        Exchange exchange = report(
                        Values.of("Ca", 1200, "ppm", "Mehlich-3"),
                        Values.of("Mg", 180, "ppm", "Mehlich-3"),
                        Values.of("K", 150, "ppm", "Mehlich-3"),
                        Values.of("Na", 23, "ppm", "Mehlich-3"),
                        Values.of("pH", 5.6, "", "water"),
                        Values.of("bufferPH", 6.6, "", "SMP"))
                .exchange()
                .value()
                .orElseThrow();
        assertThat(exchange.cecMeq()).isCloseTo(12.78, within(5e-3));
        assertThat(exchange.saturationPct(Element.CA)).isCloseTo(46.9, within(0.05));
        assertThat(exchange.saturationPct(Element.MG)).isCloseTo(11.7, within(0.05));
        assertThat(exchange.saturationPct(Element.K)).isCloseTo(3.0, within(0.05));
        assertThat(exchange.saturationPct(Element.NA)).isCloseTo(0.8, within(0.05));
        assertThat(100 - exchange.baseSaturationPct()).isCloseTo(37.5, within(0.1)); // prints H 37.5; unrounded 37.56
    }

    @Test
    void cationsOfTwoExtractantsAreNotSummed() {
        Advice<Exchange> exchange = report(
                        Values.of("Ca", 1200, "ppm", "Mehlich-3"),
                        Values.of("Mg", 180, "ppm", "Morgan"),
                        Values.of("K", 150, "ppm", "Mehlich-3"))
                .exchange();
        assertThat(exchange.reason()).contains("by one extractant");
    }

    @Test
    void freeCarbonateMakesTheSumWorthless() {
        Advice<Exchange> exchange = report(
                        Values.of("Ca", 5200, "ppm", "Mehlich-3"),
                        Values.of("Mg", 180, "ppm", "Mehlich-3"),
                        Values.of("K", 150, "ppm", "Mehlich-3"),
                        Values.of("carbonate", 4, "%", ""))
                .exchange();
        assertThat(exchange.reason()).contains("free carbonate");
    }

    /** Agronomy teaching page: CEC 10 with 2.5 and 1.0 meq of sodium. */
    @Test
    void sodicFromAnExchangeableSodiumOfFifteenPerCent() {
        assertThat(withSodium(575).sodium().isSodic()).isTrue(); // 2.5 meq
        assertThat(withSodium(575).sodium().espPct().orElseThrow()).isCloseTo(25, within(1e-9));
        assertThat(withSodium(230).sodium().isSodic()).isFalse(); // 1.0 meq
        assertThat(withSodium(345).sodium().isSodic()).isTrue(); // exactly 15 %
        assertThat(withSodium(230).gypsum().value().orElseThrow().kgM2()).isZero();
        // derived: 8.6 · 1.1 · 0.1016 m · 1.324 g/cm³ · 1 meq, t/ha
        assertThat(withSodium(575).gypsum().value().orElseThrow().kgM2()).isCloseTo(0.12724, within(5e-5));
    }

    private static SampleResult withSodium(double ppm) {
        return report(
                Values.of("CEC", 10, "meq/100 g", ""),
                Values.of("Ca", 1000, "ppm", "ammonium acetate"),
                Values.of("Mg", 120, "ppm", "ammonium acetate"),
                Values.of("K", 78, "ppm", "ammonium acetate"),
                Values.of("Na", ppm, "ppm", "ammonium acetate"),
                Values.of("pH", 8.6, "", "water"));
    }

    /** Derived by USDA Handbook 60: Na 36, Ca 6, Mg 2 meq/L. */
    @Test
    void sodiumFromAPasteExtract() {
        SampleResult sample = report(
                Values.of("Na", 36, "meq/L", "saturated paste"),
                Values.of("Ca", 6, "meq/L", "saturated paste"),
                Values.of("Mg", 24.4, "mg/L", "saturated paste"),
                Values.of("EC", 5.0, "dS/m", "paste"));
        assertThat(sample.sodium().sar().orElseThrow()).isCloseTo(18.0, within(1e-9));
        assertThat(sample.sodium().espPct().orElseThrow()).isCloseTo(20.19, within(5e-3));
        assertThat(sample.sodium().name()).contains("saline-sodic");
        // derived from equivalent weights: 23 mg/L of Na, 20 of Ca and 12.2 of Mg are a meq/L each
        SampleResult byWeight = report(
                Values.of("Na", 36 * 23, "mg/L", "saturated paste"),
                Values.of("Ca", 6 * 20, "mg/L", "saturated paste"),
                Values.of("Mg", 2 * 12.2, "mg/L", "saturated paste"));
        assertThat(byWeight.sodium().sar().orElseThrow()).isCloseTo(18.0, within(1e-9));
        assertThat(sample.cautions()).anyMatch(c -> c.contains("perennial ryegrass") && !c.contains("tall fescue"));
        assertThat(sample.gypsum().reason()).contains("fill in CEC");
    }
}
