package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LocalSearchTest {
    @Test
    void uncrossesTwoLegs() {
        assertThat(descend(stopsOnACircle(8), 0, 5, 4, 3, 2, 1, 6, 7)).isCloseTo(lengthOfCircle(8), within(1e-12));
    }

    @Test
    void movesARunOfThreeBack() {
        assertThat(descend(stopsOnACircle(12), 0, 4, 5, 6, 7, 1, 2, 3, 8, 9, 10, 11))
                .isCloseTo(lengthOfCircle(12), within(1e-12));
    }

    @Test
    void exchangesTwoRuns() {
        LocalSearch search = new LocalSearch(8, stopsOnACircle(8));
        search.set(new int[] {0, 1, 2, 3, 4, 5, 6, 7});
        search.exchangeRuns(6, 2, 3); // 7 0 and 1 2 3
        int[] cycle = new int[8];
        search.get(cycle);
        assertThat(cycle).containsExactly(2, 3, 7, 0, 4, 5, 6, 1);
    }

    @Property(seed = Laws.SEED, tries = 200)
    void keepsAllStopsAndMakesNothingLonger(
            @ForAll @IntRange(min = 5, max = 30) int stops, @ForAll long seed, @ForAll Layout layout) {
        LocalSearch search = new LocalSearch(stops, layout.of(stops, seed).toRowMajor());
        int[] cycle = IntStream.range(0, stops).toArray();
        search.set(cycle);
        double before = search.length();
        search.wakeAll();
        search.descend();
        search.get(cycle);
        assertThat(cycle).containsExactlyInAnyOrder(IntStream.range(0, stops).toArray());
        assertThat(search.length()).isLessThanOrEqualTo(before);
    }

    /** The bar of 4 % is ours; measured 3.0 %, and 0.9 to 3.8 % over 19 other sets of seeds. */
    @Test
    void leavesScatteredStopsAFewPercentAboveTheShortestRound() {
        double excess = 0;
        for (int seed = 1; seed <= 20; seed++) {
            DistanceMatrix distances = Layout.SCATTERED.of(40, seed);
            double length =
                    descend(distances.toRowMajor(), IntStream.range(0, 40).toArray());
            excess += length / TourSolver.shortest(distances, 0).lengthM() - 1;
        }
        assertThat(excess / 20).isLessThan(0.04);
    }

    private static double descend(double[] d, int... cycle) {
        LocalSearch search = new LocalSearch(cycle.length, d);
        search.set(cycle);
        search.wakeAll();
        search.descend();
        return search.length();
    }

    private static double[] stopsOnACircle(int n) {
        return IntStream.range(0, n * n)
                .mapToDouble(leg -> 2 * Math.abs(Math.sin(Math.PI * (leg / n - leg % n) / n)))
                .toArray();
    }

    private static double lengthOfCircle(int n) {
        return 2 * n * Math.sin(Math.PI / n);
    }
}
