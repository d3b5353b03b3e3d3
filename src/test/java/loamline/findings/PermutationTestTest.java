package loamline.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PermutationTestTest {
    private static final double EXACT = 1e-12;
    /** Data of Efron and Tibshirani 1993, An Introduction to the Bootstrap, table 2.1. */
    private static final double[] TREATED = {94, 197, 16, 38, 99, 141, 23};

    private static final double[] CONTROL = {52, 104, 146, 10, 51, 30, 40, 27, 46};

    /** By hand: 2 of the 20 deals are as extreme. */
    @Test
    void threeLowAgainstThreeHigh() {
        assertThat(PermutationTest.twoSided(new double[] {1, 2, 3}, new double[] {4, 5, 6}))
                .isCloseTo(0.1, within(EXACT));
    }

    /** Computed with SciPy 1.17.1 permutation_test, all 11,440 deals, statistic |difference of means|. */
    @Test
    void theMouseDataGiveTheShareThatAnIndependentLibraryCounts() {
        assertThat(PermutationTest.twoSided(TREATED, CONTROL)).isCloseTo(MOUSE_DEALS / 11_440.0, within(EXACT));
        assertThat(PermutationTest.twoSided(CONTROL, TREATED)).isCloseTo(MOUSE_DEALS / 11_440.0, within(EXACT));
    }

    private static final int MOUSE_DEALS = 3184;

    @Test
    void equalGroupsDifferByNothing() {
        assertThat(PermutationTest.twoSided(new double[] {2, 2}, new double[] {2, 2, 2}))
                .isEqualTo(1);
        assertThat(PermutationTest.twoSided(new double[0], new double[] {1})).isEqualTo(1);
    }

    /** Values on the steps: counting sums must give what counting deals gives on a small part of the same kind. */
    @Test
    void manyValuesAreCountedBySumsAndAgreeWithDealingAtRandom() {
        SplittableRandom random = new SplittableRandom(7);
        double[] few = random.doubles(15).map(v -> Math.rint(100 * v) + 18).toArray();
        double[] many = random.doubles(30).map(v -> Math.rint(100 * v)).toArray();
        assertThat(PermutationTest.deals(45, 15)).isGreaterThan(PermutationTest.MOST_DEALS);
        double p = PermutationTest.twoSided(few, many);
        assertThat(p).isCloseTo(dealt(few, many, random), within(0.01));
    }

    private static double dealt(double[] few, double[] many, SplittableRandom random) {
        double[] all = new double[few.length + many.length];
        System.arraycopy(few, 0, all, 0, few.length);
        System.arraycopy(many, 0, all, few.length, many.length);
        double observed = Math.abs(difference(all, few.length)) - EXACT;
        int deals = 40_000;
        int extreme = 0;
        for (int deal = 0; deal < deals; deal++) {
            for (int i = all.length - 1; i > 0; i--) {
                int j = random.nextInt(i + 1);
                double swapped = all[i];
                all[i] = all[j];
                all[j] = swapped;
            }
            extreme += Math.abs(difference(all, few.length)) >= observed ? 1 : 0;
        }
        return (double) extreme / deals;
    }

    private static double difference(double[] all, int first) {
        double a = 0;
        double b = 0;
        for (int i = 0; i < all.length; i++) {
            a += i < first ? all[i] : 0;
            b += i < first ? 0 : all[i];
        }
        return a / first - b / (all.length - first);
    }

    /** By hand: 4 · 0.005, 3 · 0.01, 2 · 0.03, and no less than that. */
    @Test
    void holmCorrectsInOrder() {
        assertThat(Holm.corrected(List.of(0.01, 0.04, 0.03, 0.005)))
                .containsExactly(new double[] {0.03, 0.06, 0.06, 0.02}, within(EXACT));
    }
}
