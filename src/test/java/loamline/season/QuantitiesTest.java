package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.season.blend.Quantity;
import loamline.soil.Doses;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;

/** Published and derived worked examples of fertilizer, seed, coring and compost. Areas in 1,000 ft² ("M") as printed. */
class QuantitiesTest {
    private static final double FT2 = Factors.M2_PER_FT2;
    private static final double IN = Factors.M_PER_IN;
    private static final double YD3 = Factors.M3_PER_YD3;

    @Test
    void productForAPoundOfNitrogenIsTheTargetOverTheShare() {
        // University of Nebraska-Lincoln, Lawn Fertilizer Calculations: 3.57 lb/M; exact total on 6,000 ft² 21.43
        assertThat(product(1, 28)).isCloseTo(3.57, within(0.005));
        assertThat(6 * product(1, 28)).isCloseTo(21.43, within(0.005));
        // NC State, Fertilizing lawns: 16-4-8 at 6.25 lb/M carries 0.25 P2O5 and 0.50 K2O; 10-10-10 at 10 and 5
        assertThat(product(1, 16)).isEqualTo(6.25);
        assertThat(6.25 * 4 / 100).isEqualTo(0.25);
        assertThat(product(1, 10)).isEqualTo(10);
        assertThat(product(0.5, 10)).isEqualTo(5);
        // Colorado State, GardenNotes 233, a row of products
        assertThat(List.of(45, 33, 28, 24, 21, 18, 6).stream()
                        .map(n -> Math.round(10 * product(1, n)) / 10.0)
                        .toList())
                .containsExactly(2.2, 3.0, 3.6, 4.2, 4.8, 5.6, 16.7);
        // Texas A&M, rotary pans: 21-0-0 at 4.76 lb/M
        assertThat(product(1, 21)).isCloseTo(4.76, within(0.005));
    }

    /** How much of a product with so much nitrogen brings a target. */
    private static double product(double target, double nPct) {
        return target / Products.of(nPct + "-0-0", nPct, 0, 0).material().of(Quantity.N);
    }

    @Test
    void liquidsGoByDensity() {
        // growers' training material (second-hand): 10.69 lb/gal of 10 % is 1.069 lb N/gal; 15 lb N/acre takes 14.03
        // gal; 20 acres 280.6 gal; derived: with 15 gal/acre used it was 16.04 lb N/acre
        double acre = product(15, 10) / 10.69;
        assertThat(acre).isCloseTo(14.03, within(0.005));
        assertThat(20 * acre).isCloseTo(280.6, within(0.05));
        // (exact 16.035)
        assertThat(15 * 10.69 / product(1, 10)).isCloseTo(16.035, within(1e-9));
        // derived: 11.06 lb/gal of 32 % is 3.54 lb N/gal
        assertThat(11.06 / product(1, 32)).isCloseTo(3.54, within(0.005));
        // derived: 32 % UAN at 11.06 lb/gal, 1 lb N/M is 36.2 fl oz
        assertThat(128 * product(1, 32) / 11.06).isCloseTo(36.2, within(0.05));
    }

    @Test
    void aBagCoversWhatItHolds() {
        // University of Arizona, fertilizer terms: 50 lb of 10-6-4 hold 5 N, 3 P2O5, 2 K2O
        assertContent(Products.of("10-6-4", 10, 6, 4), 50, 5, 3, 2);
        // Cornell Suffolk (second-hand): 30 lb of 24-2-8 hold 7.2 N, 0.6 P2O5, 2.4 K2O; exact 7,200 ft² at 1 lb N/M
        assertContent(Products.of("24-2-8", 24, 2, 8), 30, 7.2, 0.6, 2.4);
        assertThat(1000 * 30 / product(1, 24)).isCloseTo(7200, within(1e-9));
    }

    private static void assertContent(Product product, double lb, double n, double p2o5, double k2o) {
        assertThat(lb * product.material().of(Quantity.N)).isCloseTo(n, within(1e-12));
        assertThat(lb * product.material().of(Quantity.P2O5)).isCloseTo(p2o5, within(1e-12));
        assertThat(lb * product.material().of(Quantity.K2O)).isCloseTo(k2o, within(1e-12));
    }

    @Test
    void onlyNitrogenThatTheLabelCallsSlowCountsAsSlow() {
        // University of California IPM, reading a label: 0.5 ammoniacal + 15.1 urea + 11.9 other soluble + 0.5
        // insoluble
        assertThat(0.5 + 15.1 + 11.9 + 0.5).isCloseTo(28, within(1e-12));
        // derived: 1.8 % of the nitrogen is insoluble, so all but that is quick
        double slowPct = 100 * 0.5 / 28;
        assertThat(slowPct).isCloseTo(1.8, within(0.05));
        Product label = Products.of("28-3-3", 28, 3, 3, slowPct, 0);
        assertThat(label.isSlow()).isFalse();
        assertThat(label.material().of(Quantity.QUICK_N)).isCloseTo(0.275, within(1e-12));
        // Cornell Suffolk (second-hand): slow from 0.30 on; 0.29 is still medium
        assertThat(Products.of("a", 20, 0, 0, 30, 0).isSlow()).isTrue();
        assertThat(Products.of("b", 20, 0, 0, 29, 0).isSlow()).isFalse();
    }

    @Test
    void theSaltOfADoseIsThatOfItsProducts() {
        // McCarty 2001 (second-hand), salt index per unit of nutrient: urea 1.6, KCl 2.2, K2SO4 0.9. Derived: 1 lb N as
        // urea beside 1 lb K2O as muriate 3.8, as sulfate 2.5
        double urea = salt("urea", 46, 0, 1.6 * 46);
        assertThat(urea + salt("muriate", 0, 60, 2.2 * 60)).isCloseTo(3.8, within(1e-12));
        assertThat(urea + salt("sulfate", 0, 50, 0.9 * 50)).isCloseTo(2.5, within(1e-12));
        // which is what a dose may bring at most
        double cap = Caps.of(SeasonOptions.from(LocalDate.of(2027, 4, 1)), NO_LAW)
                .mostGM2()
                .getOrDefault(Quantity.SALT, 0.0);
        assertThat(cap / Factors.G_M2_PER_LB_1000FT2).isCloseTo(3.8, within(1e-12));
    }

    private static final Law NO_LAW = Law.of(SeasonOptions.from(LocalDate.of(2027, 4, 1)));

    /** Salt of the product for 1 lb of its nutrient. */
    private static double salt(String name, double n, double k2o, double saltIndex) {
        Product product = new Product(
                name,
                new Product.Percent(n, 0, k2o, 0, 0, 0, 0, 0),
                0,
                "granular",
                20,
                20,
                OptionalDouble.of(saltIndex),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                2);
        return product.material().of(Quantity.SALT) / (n + k2o) * 100;
    }

    @Test
    void capsLimitTheProductBySolubleOrTotalNitrogen() {
        // derived: 24-x-x, 40 % slow, caps 0.9 and 0.7: 3.75 lb/M, total binds; urea: 1.522; 16-x-x: 4.375
        assertThat(allowed(Products.of("24", 24, 0, 0, 40, 0), 0.9)).isCloseTo(3.75, within(1e-12));
        assertThat(allowed(Products.of("urea", 46, 0, 0, 0, 0), 0.9)).isCloseTo(1.522, within(0.0005));
        assertThat(allowed(Products.of("16", 16, 0, 0, 0, 0), 1.0)).isCloseTo(4.375, within(1e-12));
        assertThat(allowed(Products.of("slow", 20, 0, 0, 100, 0), 1.0)).isEqualTo(5);
        // derived: 2.6 lb N under 0.9 is three doses of 0.867
        assertThat(Doses.split(2.6, 0.9))
                .hasSize(3)
                .allSatisfy(dose -> assertThat(dose).isCloseTo(0.867, within(0.0005)));
    }

    /** The most of a product, lb/M, under a cap on its nitrogen and 0.7 lb on what is quick of it. */
    private static double allowed(Product product, double capN) {
        double quick = product.material().of(Quantity.QUICK_N);
        return Math.min(capN / product.material().of(Quantity.N), quick == 0 ? Double.MAX_VALUE : 0.7 / quick);
    }

    @Test
    void aPanCatchesTheRateTimesItsArea() {
        // Texas A&M: 4.76 lb/M of 21-0-0 on a square foot; grams derived: 2.16
        assertThat(Quantities.panG(Quantities.gM2(4.76) / 1000, FT2)).isCloseTo(2.16, within(0.005));
    }

    @Test
    void aRateIsOffBeyondFivePerCent() {
        // University of Massachusetts, rotary spreader calibration: 20-5-10 at 1 lb N/M is 5.00 lb/M, 4.75 to 5.25 will
        // do
        assertThat(product(1, 20)).isEqualTo(5);
        assertThat(5 * (1 - PlotPlanner.MET)).isCloseTo(4.75, within(1e-12));
        assertThat(5 * (1 + PlotPlanner.MET)).isCloseTo(5.25, within(1e-12));
        // derived: 0.27 lb caught on 2 ft × 50 ft is 2.70 lb/M, 8 % above 2.5: close the gate
        double caught = visit(0, 0, 0, 0.27, 2 * 50).productGM2().orElseThrow() / Factors.G_M2_PER_LB_1000FT2;
        assertThat(caught).isCloseTo(2.70, within(0.005));
        assertThat(caught / 2.5 - 1).isCloseTo(0.08, within(1e-9)).isGreaterThan(PlotPlanner.MET);
    }

    @Test
    void seedIsBoughtByWhatIsPureAndAlive() {
        // Cornell, Seeding Rates: 0.95 × 0.85 = 0.8075; derived: 3.72 lb bulk for 3 lb live; 7 lb at 98 × 90 %: 7.94
        assertThat(Quantities.pureLive(95, 85)).isCloseTo(0.8075, within(1e-12));
        assertThat(3 / Quantities.pureLive(95, 85)).isCloseTo(3.72, within(0.005));
        // the source says to buy about 20 % more; exact 24 %
        assertThat(1 / Quantities.pureLive(95, 85) - 1).isCloseTo(0.24, within(0.005));
        assertThat(Quantities.pureLive(98, 90)).isCloseTo(0.882, within(1e-12));
        assertThat(7 / Quantities.pureLive(98, 90)).isCloseTo(7.94, within(0.005));
        // derived: 7 lb of tall fescue, 225,000 seeds, on 1,000 ft²: 1,389 live seeds on each
        assertThat(7 * 0.882 * 225_000 / 1000).isCloseTo(1389, within(0.5));
        // derived: 45 % bare over 3,000 ft²: 5.075 lb/M, 15.2 lb
        assertThat(Quantities.overseedRate(7, 0.45)).isCloseTo(5.075, within(1e-12));
        assertThat(3 * Quantities.overseedRate(7, 0.45)).isCloseTo(15.2, within(0.05));
        // Nebraska Extension (second-hand): thickening takes half of new: tall fescue 6-8 and 3-4, bluegrass 2-3 and
        // 1-1.5
        double[][] halves = {{6, 3}, {8, 4}, {2, 1}, {3, 1.5}};
        for (double[] half : halves) {
            assertThat(Quantities.overseedRate(half[0], 1)).isEqualTo(half[0]);
            assertThat(Quantities.overseedRate(half[0], 0)).isEqualTo(half[1]);
        }
        // Shearman et al. 2005: 2.5, 5, 10, 20, 40 g/m² are 0.51, 1.0, 2.0, 4.1, 8.2 lb/M
        double[][] rates = {{2.5, 0.51, 0.005}, {5, 1.0, 0.05}, {10, 2.0, 0.05}, {20, 4.1, 0.05}, {40, 8.2, 0.05}};
        for (double[] rate : rates) {
            assertThat(rate[0] / Factors.G_M2_PER_LB_1000FT2).isCloseTo(rate[1], within(rate[2]));
        }
    }

    @Test
    void aMixByWeightIsAnotherByCount() {
        // derived from Cornell's seeds per pound; the source prints about 50:50, which its own counts do not give
        List<Double> seeds = List.of(1_500_000.0, 250_000.0);
        List<Double> counts = Quantities.byCount(List.of(0.3, 0.7), seeds);
        assertThat(counts.get(0)).isCloseTo(0.72, within(0.005));
        assertThat(counts.get(1)).isCloseTo(0.28, within(0.005));
    }

    @Test
    void holesFollowFromTheirSpacing() {
        // derived: diameter, spacing (in): holes/ft², % opened, ft³/M at 3 in
        double[][] cases = {
            {0.75, 1.5, 1.5, 64.0, 19.63, 49.1},
            {0.625, 1.5, 1.5, 64.0, 13.64, 34.1},
            {0.470, 1.5, 1.5, 64.0, 7.71, 19.3},
            {0.5, 2, 2.5, 28.8, 3.93, 9.8},
            {0.5, 2, 2, 36, 4.91, 12.3},
            {0.75, 3, 3, 16, 4.91, 12.3},
            {0.5, 4, 4, 9, 1.23, 3.1}
        };
        for (double[] c : cases) {
            double holes = Quantities.holesM2(c[1] * IN, c[2] * IN);
            double opened = Quantities.openedShare(holes, c[0] * IN);
            assertThat(holes * FT2).isCloseTo(c[3], within(0.05));
            assertThat(100 * opened).isCloseTo(c[4], within(0.005));
            assertThat(1000 * opened * 3 / 12).isCloseTo(c[5], within(0.05));
        }
        // derived: 15 and 30 holes/ft² of 0.75 in open 4.60 and 9.20 %, 11.5 and 23.0 ft³/M at 3 in
        double[][] counted = {{15, 4.60, 11.5}, {30, 9.20, 23.0}};
        for (double[] c : counted) {
            double opened = Quantities.openedShare(c[0] / FT2, 0.75 * IN);
            assertThat(100 * opened).isCloseTo(c[1], within(0.005));
            assertThat(1000 * opened * 3 / 12).isCloseTo(c[2], within(0.05));
        }
        assertThat(Quantities.passes(20, 9)).isEqualTo(3);
        assertThat(Quantities.passes(18, 9)).isEqualTo(2);
    }

    @Test
    void topdressingIsAreaTimesDepth() {
        // derived: 1,000 ft² at 1/8, 1/4, 3/8, 1/2 in; 5,000 ft² at 1/4 in
        double[][] cases = {{0.125, 0.386}, {0.25, 0.772}, {0.375, 1.157}, {0.5, 1.543}};
        for (double[] c : cases) {
            assertThat(Quantities.volumeM3(1000 * FT2, c[0] * IN) / YD3).isCloseTo(c[1], within(0.0005));
        }
        assertThat(Quantities.volumeM3(5000 * FT2, 0.25 * IN) / YD3).isCloseTo(3.86, within(0.005));
        // derived: to fill 30 holes/ft² of 0.75 in, 3 in deep, and lay 1/8 in over 1,000 ft²: 33.4 ft³, 1.24 yd³
        double filled = Quantities.openedShare(30 / FT2, 0.75 * IN) * 3 * IN;
        double both = Quantities.volumeM3(1000 * FT2, filled) + Quantities.volumeM3(1000 * FT2, 0.125 * IN);
        assertThat(both / Factors.M3_PER_FT3).isCloseTo(33.4, within(0.05));
        assertThat(both / YD3).isCloseTo(1.24, within(0.005));
        // derived: 1 yd³ covers 324 ft² an inch deep; 1 in over 1,000 ft² is 83.33 ft³ or 3.0864 yd³
        assertThat(YD3 / IN / FT2).isCloseTo(324, within(1e-9));
        assertThat(Quantities.volumeM3(1000 * FT2, IN) / Factors.M3_PER_FT3).isCloseTo(83.33, within(0.005));
        assertThat(Quantities.volumeM3(1000 * FT2, IN) / YD3).isCloseTo(3.0864, within(0.00005));
        // derived: 4 yd³/M is 1.30 in deep (Greeley CO code)
        assertThat(4 * YD3 / (1000 * FT2) / IN).isCloseTo(1.30, within(0.005));
    }

    @Test
    void compostBringsPhosphateOnlyByItsAnalysis() {
        // derived: 0.772 yd³/M × 1,000 lb/yd³ × 0.60 × 0.5 % × 2.29 = 5.3 lb P2O5/M
        double kgM3 = 1000 * Factors.KG_PER_LB / YD3;
        Target.Compost compost =
                new Target.Compost(OptionalDouble.of(0.5), OptionalDouble.of(60), OptionalDouble.of(kgM3));
        OptionalDouble p2o5 = Quantities.compostP2o5GM2(0.25 * IN, compost);
        assertThat(p2o5.orElseThrow() / Factors.G_M2_PER_LB_1000FT2).isCloseTo(5.3, within(0.05));
        assertThat(Quantities.compostP2o5GM2(0.25 * IN, Target.Compost.UNKNOWN)).isEmpty();
    }

    @Test
    void aBagOnItsLabelledAreaGivesWhatAServicePutDown() {
        // derived from a Minnesota Extension answer: 12.5 lb of 32-0-4 on 5,000 ft²: 0.80 N, 0.10 K2O
        Visit visit = visit(32, 0, 4, 12.5, 5000);
        assertThat(lb(visit, Nutrient.N)).isCloseTo(0.80, within(0.005));
        assertThat(lb(visit, Nutrient.K2O)).isCloseTo(0.10, within(0.005));
        assertThat(lb(visit, Nutrient.P2O5)).isZero();
        // 21.52 lb of 21-22-4: 0.904 N, 0.947 P2O5, 0.172 K2O
        Visit starter = visit(21, 22, 4, 21.52, 5000);
        assertThat(lb(starter, Nutrient.N)).isCloseTo(0.904, within(0.0005));
        assertThat(lb(starter, Nutrient.P2O5)).isCloseTo(0.947, within(0.0005));
        assertThat(lb(starter, Nutrient.K2O)).isCloseTo(0.172, within(0.0005));
    }

    @Test
    void whatIsNotToldOfAVisitIsNotGuessed() {
        OptionalDouble no = OptionalDouble.empty();
        Visit rateOnly = new Visit(
                Optional.of(LocalDate.of(2027, 4, 1)),
                "",
                List.of(),
                new Visit.Percents(no, no, no),
                no,
                no,
                no,
                OptionalDouble.of(3.5),
                2);
        assertThat(rateOnly.gM2(Nutrient.N)).hasValue(3.5);
        assertThat(rateOnly.gM2(Nutrient.P2O5)).isEmpty();
        assertThat(rateOnly.quickNGM2()).hasValue(3.5);
    }

    private static double lb(Visit visit, Nutrient nutrient) {
        return visit.gM2(nutrient).orElseThrow() / Factors.G_M2_PER_LB_1000FT2;
    }

    private static Visit visit(double n, double p, double k, double lb, double ft2) {
        return new Visit(
                Optional.of(LocalDate.of(2027, 4, 1)),
                "",
                List.of(),
                new Visit.Percents(OptionalDouble.of(n), OptionalDouble.of(p), OptionalDouble.of(k)),
                OptionalDouble.empty(),
                OptionalDouble.of(lb * Factors.KG_PER_LB),
                OptionalDouble.of(ft2 * FT2),
                OptionalDouble.empty(),
                2);
    }
}
