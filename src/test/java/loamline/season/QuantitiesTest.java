package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
        assertThat(Quantities.product(1, 28)).isCloseTo(3.57, within(0.005));
        assertThat(6 * Quantities.product(1, 28)).isCloseTo(21.43, within(0.005));
        // NC State, Fertilizing lawns: 16-4-8 at 6.25 lb/M carries 0.25 P2O5 and 0.50 K2O; 10-10-10 at 10 and 5
        assertThat(Quantities.product(1, 16)).isEqualTo(6.25);
        assertThat(6.25 * 4 / 100).isEqualTo(0.25);
        assertThat(Quantities.product(0.5, 10)).isEqualTo(5);
        // Colorado State, GardenNotes 233, a row of products
        assertThat(List.of(45, 33, 28, 24, 21, 18, 6).stream()
                        .map(n -> Math.round(10 * Quantities.product(1, n)) / 10.0)
                        .toList())
                .containsExactly(2.2, 3.0, 3.6, 4.2, 4.8, 5.6, 16.7);
        // Texas A&M, rotary pans: 21-0-0 at 4.76 lb/M
        assertThat(Quantities.product(1, 21)).isCloseTo(4.76, within(0.005));
    }

    @Test
    void liquidsGoByDensity() {
        // growers' training material (second-hand): 10.69 lb/gal of 10 % is 1.069 lb N/gal; 15 lb N/acre takes 14.03
        // gal
        assertThat(15 / (10.69 * 10 / 100)).isCloseTo(14.03, within(0.005));
        // derived: 32 % UAN at 11.06 lb/gal, 1 lb N/M is 36.2 fl oz
        assertThat(128 * Quantities.product(1, 32) / 11.06).isCloseTo(36.2, within(0.05));
    }

    @Test
    void bagsAreAlwaysRoundedUpAndCoverWhatTheyHold() {
        assertThat(Quantities.bags(21.43, 20)).isEqualTo(2);
        assertThat(Quantities.bags(20, 20)).isEqualTo(1);
        assertThat(Quantities.bags(0, 20)).isZero();
        // Cornell Suffolk (second-hand): 30 lb of 24-2-8 hold 7.2 N, 0.6 P2O5, 2.4 K2O
        assertThat(30 * 24 / 100.0).isEqualTo(7.2);
    }

    @Test
    void capsLimitTheProductBySolubleOrTotalNitrogen() {
        // derived: 24-x-x, 40 % slow, caps 0.9 and 0.7: 3.75 lb/M, total binds; urea: 1.522; 16-x-x: 4.375
        assertThat(Quantities.allowedRate(24, 0.4, 0.9, 0.7)).isCloseTo(3.75, within(1e-12));
        assertThat(Quantities.allowedRate(46, 0, 0.9, 0.7)).isCloseTo(1.522, within(0.0005));
        assertThat(Quantities.allowedRate(16, 0, 1.0, 0.7)).isCloseTo(4.375, within(1e-12));
        assertThat(Quantities.allowedRate(20, 1, 1.0, 0.7)).isEqualTo(5);
        // derived: 2.6 lb N under 0.9 is three doses of 0.867
        assertThat(Quantities.doses(2.6, 0.9)).isEqualTo(3);
        assertThat(2.6 / 3).isCloseTo(0.867, within(0.0005));
    }

    @Test
    void aPanCatchesTheRateTimesItsArea() {
        // Texas A&M: 4.76 lb/M of 21-0-0 on a square foot; grams derived: 2.16
        assertThat(Quantities.panG(Quantities.gM2(4.76) / 1000, FT2)).isCloseTo(2.16, within(0.005));
    }

    @Test
    void seedIsBoughtByWhatIsPureAndAlive() {
        // Cornell, Seeding Rates: 0.95 × 0.85 = 0.8075; derived: 3.72 lb bulk for 3 lb live; 7 lb at 98 × 90 %: 7.94
        assertThat(Quantities.pureLive(95, 85)).isCloseTo(0.8075, within(1e-12));
        assertThat(3 / Quantities.pureLive(95, 85)).isCloseTo(3.72, within(0.005));
        assertThat(7 / Quantities.pureLive(98, 90)).isCloseTo(7.94, within(0.005));
        // derived: 7 lb of tall fescue, 225,000 seeds, on 1,000 ft²: 1,389 live seeds on each
        assertThat(7 * 0.882 * 225_000 / 1000).isCloseTo(1389, within(0.5));
        // derived: 45 % bare over 3,000 ft²: 5.075 lb/M, 15.2 lb
        assertThat(Quantities.overseedRate(7, 0.45)).isCloseTo(5.075, within(1e-12));
        // Shearman et al. 2005: 2.5 to 40 g/m² are 0.51 to 8.2 lb/M
        assertThat(2.5 / Factors.G_M2_PER_LB_1000FT2).isCloseTo(0.51, within(0.005));
        assertThat(40 / Factors.G_M2_PER_LB_1000FT2).isCloseTo(8.2, within(0.05));
    }

    @Test
    void aMixByWeightIsAnotherByCount() {
        // derived from Cornell's seeds per pound; the source prints about 50:50, which its own counts do not give
        List<Double> seeds = List.of(1_500_000.0, 250_000.0);
        List<Double> counts = Quantities.byCount(List.of(0.3, 0.7), seeds);
        assertThat(counts.get(0)).isCloseTo(0.72, within(0.005));
        assertThat(counts.get(1)).isCloseTo(0.28, within(0.005));
        assertThat(Quantities.byWeight(counts, seeds).get(0)).isCloseTo(0.3, within(1e-12));
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
