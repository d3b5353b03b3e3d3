package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class OneTreeTest {
    /** Stops 1, 2, 3 in a row 1 apart, stop 0 off the middle one by 1: by hand. */
    @Test
    void isASpanningTreeAndTheTwoShortestLegsAtTheStart() {
        double far = Math.sqrt(2);
        OneTree tree = over(4, new double[] {0, far, 1, far, far, 0, 1, 2, 1, 1, 0, 1, far, 2, 1, 0});
        assertThat(tree.grow()).isCloseTo(3 + far, within(1e-15));
        assertThat(tree.degree(2)).isEqualTo(3);
        assertThat(tree.joins(0, 2)).isTrue();
        assertThat(tree.joins(3, 2)).isTrue();
        assertThat(tree.joins(1, 3)).isFalse();
        assertThat(tree.isCycle()).isFalse();
    }

    @Test
    void theTriangleIsACycle() {
        OneTree tree = over(3, new double[] {0, 1, 2, 1, 0, 3, 2, 3, 0});
        assertThat(tree.grow()).isEqualTo(6);
        assertThat(tree.isCycle()).isTrue();
        assertThat(tree.cycle()).containsExactly(0, 2, 1);
    }

    @Property(seed = Laws.SEED, tries = 300)
    void isNeverLongerThanTheShortestRoundWhateverThePrices(
            @ForAll @IntRange(min = 3, max = 8) int stops, @ForAll long seed, @ForAll Layout layout) {
        DistanceMatrix distances = layout.of(stops, seed);
        OneTree tree = over(stops, distances.toRowMajor());
        Random random = new Random(seed);
        for (int stop = 0; stop < stops; stop++) {
            tree.price[stop] = random.nextDouble() - 0.5;
        }
        assertThat(tree.grow()).isLessThanOrEqualTo(AllRounds.shortestM(distances) + 10 * OneTree.ROUNDING);
    }

    @Test
    void withoutAWayIsInfiniteAndNoCycle() {
        double no = Double.POSITIVE_INFINITY;
        OneTree apart = over(4, new double[] {0, 1, 1, 1, 1, 0, 1, no, 1, 1, 0, no, 1, no, no, 0});
        assertThat(apart.grow()).isInfinite();
        assertThat(apart.isCycle()).isFalse();
        OneTree deadEnd = over(3, new double[] {0, 1, no, 1, 0, 1, no, 1, 0});
        assertThat(deadEnd.grow()).isInfinite();
        assertThat(deadEnd.isCycle()).isFalse();
    }

    /** The replaced leg is the longest on the tree's way between the two, or the second at the start: by hand. */
    @Test
    void aNewLegReplacesTheLongestOnTheWayRound() {
        double[] d = new double[25];
        Arrays.fill(d, 9);
        int[][] legs = {{0, 1, 2}, {0, 2, 4}, {1, 2, 1}, {2, 3, 5}, {3, 4, 3}};
        for (int[] leg : legs) {
            d[leg[0] * 5 + leg[1]] = leg[2];
            d[leg[1] * 5 + leg[0]] = leg[2];
        }
        OneTree tree = over(5, d);
        assertThat(tree.grow()).isEqualTo(15);
        double[] replaced = new double[25];
        tree.replacedLegs(replaced);
        assertThat(new double[] {replaced[8], replaced[9], replaced[14], replaced[3], replaced[4]})
                .containsExactly(5, 5, 5, 4, 4); // 1-3, 1-4, 2-4, 0-3, 0-4
        assertThat(replaced[21]).isEqualTo(replaced[9]);
    }

    @Property(seed = Laws.SEED, tries = 200)
    void roundsWithALegAreLongerByWhatItAddsToTheTree(
            @ForAll @IntRange(min = 4, max = 8) int stops, @ForAll long seed, @ForAll Layout layout) {
        DistanceMatrix distances = layout.of(stops, seed);
        double[] d = distances.toRowMajor();
        OneTree tree = over(stops, d);
        double bound = tree.grow();
        double[] replaced = new double[d.length];
        tree.replacedLegs(replaced);
        int[] shortest = HeldKarp.shortestCycle(stops, d);
        double length = Tour.lengthM(distances, shortest);
        for (int i = 0; i < stops; i++) {
            int leg = shortest[i] * stops + shortest[(i + 1) % stops];
            assertThat(bound + d[leg] - replaced[leg]).isLessThanOrEqualTo(length * (1 + OneTree.ROUNDING));
        }
    }

    /** A tree that may use all legs but infinite ones. */
    static OneTree over(int n, double[] d) {
        OneTree tree = new OneTree(n);
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (Double.isFinite(d[i * n + j])) {
                    tree.addLeg(i, j, d[i * n + j]);
                }
            }
        }
        return tree;
    }
}
