package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class HeldKarpTest {
    /** Sums of nine legs of length 1 or 10 at most, in another order. */
    private static final double ROUNDING = 1e-13;

    @Property(seed = Laws.SEED, tries = 300)
    void findsARoundAsShortAsTheShortestOfAll(
            @ForAll @IntRange(min = 1, max = 9) int stops, @ForAll long seed, @ForAll Layout layout) {
        DistanceMatrix distances = layout.of(stops, seed);
        int[] cycle = HeldKarp.shortestCycle(stops, distances.toRowMajor());
        assertThat(Tour.along(distances, cycle, 0).lengthM())
                .isCloseTo(AllRounds.shortestM(distances), within(ROUNDING));
    }

    @Test
    void ofEquallyShortRoundsTakesTheOneThatEndsLowest() {
        assertThat(HeldKarp.shortestCycle(4, new double[16])).containsExactly(0, 3, 2, 1);
    }

    @Test
    void refusesNoStopsAndMoreThanItHasMemoryFor() {
        assertThatIllegalArgumentException().isThrownBy(() -> HeldKarp.shortestCycle(0, new double[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> HeldKarp.shortestCycle(21, new double[441]));
    }
}
