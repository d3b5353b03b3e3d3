package loamline.season.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Sets of products worked out elsewhere. Weights in lb as printed, as if they were kg; the ground is 1 m² and a rate a weight. */
class WorkedBlendsTest {
    /** Needs are met within this share, so that the three products have no choice. */
    private static final double EXACTLY = 1e-5;
    /** Printed to a hundredth. */
    private static final double PRINTED = 0.005;

    private static final Material UREA = product("46-0-0", 46, 0, 0);
    private static final Material DAP = product("18-46-0", 18, 46, 0);
    private static final Material MURIATE = product("0-0-60", 0, 0, 60);

    private static Material product(String name, double n, double p2o5, double k2o) {
        return new Material(
                name,
                50,
                10,
                Map.of(
                        Quantity.N, n / 100,
                        Quantity.QUICK_N, n / 100,
                        Quantity.P2O5, p2o5 / 100,
                        Quantity.K2O, k2o / 100));
    }

    /** Kilograms on a plot whose rates are weights: 1,000 g/m² to the kilogram. */
    private static Plot plot(double n, double p2o5, double k2o, List<Slot> slots) {
        return new Plot(
                "lawn", 1, Map.of(Quantity.N, about(n), Quantity.P2O5, about(p2o5), Quantity.K2O, about(k2o)), slots);
    }

    private static Range about(double kg) {
        return new Range(1000 * kg * (1 - EXACTLY), 1000 * kg * (1 + EXACTLY));
    }

    private static Slot slot(int month, Map<Quantity, Double> most) {
        return new Slot(LocalDate.of(2027, month, 5), most, Set.of(0, 1, 2), 0);
    }

    private static List<Double> used(Blend blend) {
        BagPlan plan = DoseSpreader.spread(blend, new BagSolver(blend).cheapest());
        return IntStream.range(0, blend.materials().size())
                .mapToObj(plan::usedKg)
                .toList();
    }

    private static void assertUsed(List<Double> used, double... printed) {
        for (int i = 0; i < printed.length; i++) {
            assertThat(used.get(i)).isCloseTo(printed[i], within(PRINTED));
        }
    }

    @Test
    void aLawnOfThreeAndAHalfThousandSquareFeetTakesThreeProducts() {
        // a Minnesota Extension answer: 3.5 N, 1.75 P2O5, 3.5 K2O from 21-22-4, 32-0-4, 0-0-60: about 8 lb of the
        // first,
        // 5.6 of the second; exact, derived: 7.95, 5.72, 4.92
        List<Material> list = List.of(product("21-22-4", 21, 22, 4), product("32-0-4", 32, 0, 4), MURIATE);
        assertUsed(used(new Blend(list, List.of(plot(3.5, 1.75, 3.5, List.of(slot(9, Map.of())))))), 7.95, 5.72, 4.92);
    }

    @Test
    void aNeedOfAllThreeIsMetFromUreaPhosphateAndMuriate() {
        // derived: 1.0 N, 0.5 P2O5, 0.75 K2O: 1.748, 1.087, 1.25
        Blend blend = new Blend(List.of(UREA, DAP, MURIATE), List.of(plot(1, 0.5, 0.75, List.of(slot(9, Map.of())))));
        assertUsed(used(blend), 1.748, 1.087, 1.25);
    }

    @Test
    void allOfItsNitrogenIsQuickSoItTakesTwoDoses() {
        // derived: 1.0 quick is above 0.7 (Suffolk County NY), so one date will not do and two will
        Map<Quantity, Double> cap = Map.of(Quantity.QUICK_N, 700.0);
        List<Material> list = List.of(UREA, DAP, MURIATE);
        Blend once = new Blend(list, List.of(plot(1, 0.5, 0.75, List.of(slot(9, cap)))));
        assertThat(Blocking.of(once))
                .containsExactly(new Blocking.Block(0, Blocking.Rule.DOSE, List.of(Quantity.QUICK_N)));
        Blend twice = new Blend(list, List.of(plot(1, 0.5, 0.75, List.of(slot(9, cap), slot(10, cap)))));
        assertThat(Blocking.of(twice)).isEmpty();
        assertUsed(used(twice), 1.748, 1.087, 1.25);
    }
}
