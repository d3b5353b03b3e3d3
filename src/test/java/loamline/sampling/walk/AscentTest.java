package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AscentTest {
    /**
     * Share of the shortest round that the bound reaches, 40 stops in the unit square: 0.99605 computed with an
     * independent numpy ascent of 3,000 steps.
     */
    @Test
    void reachesTheHeldKarpBoundOfFortyStops() {
        OneTree tree = OneTreeTest.over(40, Layout.SCATTERED.of(40, 1).toRowMajor());
        double optimum = 5.228412795; // OR-tools 9.15 CP-SAT
        double bound = new Ascent(tree).climb(optimum, 1000, 20);
        assertThat(bound / optimum).isCloseTo(0.99605, within(1e-5));
    }

    @Property(seed = Laws.SEED, tries = 200)
    void leavesThePricesThatGiveTheBound(
            @ForAll @IntRange(min = 4, max = 8) int stops, @ForAll long seed, @ForAll Layout layout) {
        DistanceMatrix distances = layout.of(stops, seed);
        OneTree tree = OneTreeTest.over(stops, distances.toRowMajor());
        double withoutPrices = tree.grow();
        double shortest = AllRounds.shortestM(distances);
        double bound = new Ascent(tree).climb(shortest, 100, 5);
        assertThat(bound)
                .isEqualTo(tree.grow())
                .isGreaterThanOrEqualTo(withoutPrices)
                .isLessThanOrEqualTo(shortest + 10 * OneTree.ROUNDING);
    }
}
