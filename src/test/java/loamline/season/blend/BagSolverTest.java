package loamline.season.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The solver beside exhaustive search, whose linear programs are those of an independent library (OR-Tools, GLOP). */
class BagSolverTest {
    private static final int CASES = 300;
    /** Limits are tighter by a millionth in solving, so costs agree as long as no bag hangs on that. */
    private static final double SAME_COST = 1e-9;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @Test
    void threeHundredSmallBlendsCostWhatExhaustiveSearchFinds() {
        int solved = 0;
        for (long seed = 1; solved < CASES; seed++) {
            Blend blend = Blends.random(seed, 1 + (int) (seed % 3), 3, 1 + (int) (seed % 2));
            if (!Blocking.of(blend).isEmpty()) {
                assertThat(isEnough(blend, List.of(1000, 1000, 1000)))
                        .as("seed " + seed)
                        .isFalse();
                continue;
            }
            BagSolver solver = new BagSolver(blend);
            List<Integer> bags = solver.cheapest();
            assertThat(isEnough(blend, bags)).as("seed " + seed).isTrue();
            for (Map.Entry<Double, List<Integer>> cheaper :
                    cheaper(blend, solver.cost(bags)).entrySet()) {
                assertThat(isEnough(blend, cheaper.getValue()))
                        .as("seed " + seed + ": " + cheaper + " against " + bags)
                        .isFalse();
            }
            assertThat(BlendCheck.broken(blend, DoseSpreader.spread(blend, bags)))
                    .as("seed " + seed)
                    .isEmpty();
            solved++;
        }
    }

    /** All bags that cost less, by cost. */
    private static Map<Double, List<Integer>> cheaper(Blend blend, double cost) {
        Map<Double, List<Integer>> found = new TreeMap<>();
        List<Material> m = blend.materials();
        for (int a = 0; a * m.get(0).bagPrice() < cost; a++) {
            for (int b = 0; a * m.get(0).bagPrice() + b * m.get(1).bagPrice() < cost; b++) {
                double two = a * m.get(0).bagPrice() + b * m.get(1).bagPrice();
                // more bags are never worse, so the most that is still cheaper speaks for all below it
                int c = (int) Math.ceil((cost - two) / m.get(2).bagPrice() - SAME_COST) - 1;
                if (c >= 0) {
                    found.put(two + c * m.get(2).bagPrice(), List.of(a, b, c));
                }
            }
        }
        return found;
    }

    private static boolean isEnough(Blend blend, List<Integer> bags) {
        MPSolver solver = MPSolver.createSolver("GLOP");
        List<List<MPVariable>> byMaterial = new ArrayList<>();
        blend.materials().forEach(m -> byMaterial.add(new ArrayList<>()));
        for (Plot plot : blend.plots()) {
            Map<Quantity, MPConstraint> season = new TreeMap<>();
            plot.season()
                    .forEach((q, range) ->
                            season.put(q, solver.makeConstraint(plot.kg(range.least()), plot.kg(range.most()))));
            for (Slot slot : plot.slots()) {
                Map<Quantity, MPConstraint> dose = new TreeMap<>();
                slot.mostGM2().forEach((q, most) -> dose.put(q, solver.makeConstraint(0, plot.kg(most))));
                for (int m : slot.materials()) {
                    MPVariable kg = solver.makeNumVar(0, MPSolver.infinity(), "");
                    byMaterial.get(m).add(kg);
                    Material material = blend.materials().get(m);
                    season.forEach((q, row) -> row.setCoefficient(kg, material.of(q)));
                    dose.forEach((q, row) -> row.setCoefficient(kg, material.of(q)));
                }
            }
        }
        for (int m = 0; m < bags.size(); m++) {
            MPConstraint stock = solver.makeConstraint(
                    0, bags.get(m) * blend.materials().get(m).bagKg());
            byMaterial.get(m).forEach(kg -> stock.setCoefficient(kg, 1));
        }
        return solver.solve() == MPSolver.ResultStatus.OPTIMAL;
    }

    @Test
    void eightPlotsTwelveMaterialsAndTenDatesTakeLessThanTwoSeconds() {
        for (long seed = 2; seed < 8; seed++) {
            Blend blend = Blends.random(seed, 8, 12, 10);
            Assertions.assertTimeout(Duration.ofSeconds(2), () -> {
                if (Blocking.of(blend).isEmpty()) {
                    BagSolver solver = new BagSolver(blend);
                    List<Integer> bags = solver.cheapest();
                    assertThat(BlendCheck.broken(blend, DoseSpreader.spread(blend, bags)))
                            .isEmpty();
                    solver.secondBest(bags);
                }
            });
        }
    }

    @Test
    void secondBestDoesWithoutOneMaterialAndCostsNoLess() {
        Blend blend = Blends.random(5, 8, 12, 10);
        BagSolver solver = new BagSolver(blend);
        List<Integer> best = solver.cheapest();
        List<Integer> second = solver.secondBest(best).orElseThrow();
        assertThat(solver.cost(second)).isGreaterThanOrEqualTo(solver.cost(best));
        assertThat(best).anySatisfy(count -> assertThat(count).isPositive());
        boolean without = false;
        for (int m = 0; m < best.size(); m++) {
            without |= best.get(m) > 0 && second.get(m) == 0;
        }
        assertThat(without).isTrue();
    }

    private static final Material UREA = new Material(
            "urea", 20, 25, Map.of(Quantity.N, 0.46)); // all of its nitrogen is quick, told below where it counts

    private static Plot plot(Map<Quantity, Range> season, Map<Quantity, Double> most, Set<Integer> allowed) {
        return new Plot("lawn", 100, season, List.of(new Slot(LocalDate.of(2027, 9, 5), most, allowed, 0)));
    }

    @Test
    void aNeedThatNothingBringsIsNamed() {
        Blend blend =
                new Blend(List.of(UREA), List.of(plot(Map.of(Quantity.K2O, Range.atLeast(3)), Map.of(), Set.of(0))));
        assertThat(Blocking.of(blend))
                .containsExactly(new Blocking.Block(0, Blocking.Rule.NOT_SOLD, List.of(Quantity.K2O)));
    }

    @Test
    void aCapInTheWayIsNamed() {
        Blend blend = new Blend(
                List.of(UREA), List.of(plot(Map.of(Quantity.N, Range.atLeast(5)), Map.of(Quantity.N, 4.0), Set.of(0))));
        assertThat(Blocking.of(blend)).containsExactly(new Blocking.Block(0, Blocking.Rule.DOSE, List.of(Quantity.N)));
    }

    @Test
    void capsThatAreInTheWayOnlyTogetherAreNamedTogether() {
        Material salty =
                new Material("salty", 20, 25, Map.of(Quantity.N, 0.46, Quantity.SALT, 0.75, Quantity.K2O, 0.1));
        Map<Quantity, Double> caps = Map.of(Quantity.N, 4.0, Quantity.SALT, 6.0, Quantity.K2O, 5.0);
        Blend blend = new Blend(List.of(salty), List.of(plot(Map.of(Quantity.N, Range.atLeast(5)), caps, Set.of(0))));
        assertThat(Blocking.of(blend))
                .containsExactly(new Blocking.Block(0, Blocking.Rule.DOSE, List.of(Quantity.N, Quantity.SALT)));
    }

    @Test
    void anAmountOfAMillionthOfABagStillEndsTheSearch() {
        Plot crumb = new Plot(
                "crumb",
                3e-4,
                plot(Map.of(Quantity.N, Range.atLeast(5)), Map.of(), Set.of(0)).season(),
                List.of(new Slot(LocalDate.of(2027, 9, 5), Map.of(), Set.of(0), 0)));
        // 5 g/m² on 3 cm²: 1.6e-7 bags of 20 kg of urea
        assertThat(new BagSolver(new Blend(List.of(UREA), List.of(crumb))).cheapest())
                .containsExactly(1);
    }

    @Test
    void materialsThatMayNotBeUsedAreNamed() {
        Blend blend = new Blend(List.of(UREA), List.of(plot(Map.of(Quantity.N, Range.atLeast(5)), Map.of(), Set.of())));
        assertThat(Blocking.of(blend)).containsExactly(new Blocking.Block(0, Blocking.Rule.MATERIALS, List.of()));
    }

    @Test
    void nothingAskedForIsNothingBought() {
        Blend blend = new Blend(List.of(UREA), List.of(plot(Map.of(), Map.of(), Set.of(0))));
        List<Integer> bags = new BagSolver(blend).cheapest();
        assertThat(bags).containsExactly(0);
        assertThat(DoseSpreader.spread(blend, bags).doses()).isEmpty();
    }

    @Test
    void theCheckFindsEveryKindOfBreach() {
        Blend blend = new Blend(
                List.of(UREA), List.of(plot(Map.of(Quantity.N, new Range(4, 5)), Map.of(Quantity.N, 4.5), Set.of())));
        BagPlan plan = new BagPlan(List.of(0), List.of(new BagPlan.Dose(0, 0, 0, 2)));
        // 2 kg of urea on 100 m² bring 9.2 g N/m²: over the season, over the dose, not allowed, and of no bag
        assertThat(BlendCheck.broken(blend, plan)).hasSize(4);
        assertThat(BlendCheck.broken(blend, new BagPlan(List.of(0), List.of()))).hasSize(1);
    }

    @Test
    void simplexSolvesAProblemFromTheBooks() {
        // Chvátal 1983, Linear Programming, chapter 2: max 5x + 4y + 3z is 13 at (2, 0, 1)
        double[] answer = Simplex.most(
                        new double[] {5, 4, 3}, new double[][] {{2, 3, 1}, {4, 1, 2}, {3, 4, 2}}, new double[] {5, 11, 8
                        })
                .orElseThrow();
        assertThat(answer[0]).isCloseTo(2, within(1e-6));
        assertThat(answer[1]).isCloseTo(0, within(1e-6));
        assertThat(answer[2]).isCloseTo(1, within(1e-6));
        assertThat(5 * answer[3] + 11 * answer[4] + 8 * answer[5]).isCloseTo(13, within(1e-6));
        assertThat(Simplex.most(new double[] {1}, new double[][] {{-1}}, new double[] {1}))
                .isEmpty();
    }
}
