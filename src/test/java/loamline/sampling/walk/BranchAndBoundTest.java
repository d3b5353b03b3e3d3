package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class BranchAndBoundTest {
    @Property(seed = Laws.SEED, tries = 300)
    void provesTheShortestRoundEvenFromALongOne(
            @ForAll @IntRange(min = 3, max = 9) int stops, @ForAll long seed, @ForAll Layout layout) {
        DistanceMatrix distances = layout.of(stops, seed);
        Tour tour = BranchAndBound.prove(distances, IntStream.range(0, stops).toArray());
        double shortest = AllRounds.shortestM(distances);
        assertThat(tour.proven()).isTrue();
        assertThat(tour.lengthM()).isCloseTo(shortest, within(shortest * Tour.PROOF));
        assertThat(tour.lowerBoundM()).isLessThanOrEqualTo(shortest * (1 + OneTree.ROUNDING));
    }

    @Property(seed = Laws.SEED, tries = 50)
    void agreesWithHeldKarp(@ForAll @IntRange(min = 10, max = 14) int stops, @ForAll long seed, @ForAll Layout layout) {
        DistanceMatrix distances = layout.of(stops, seed);
        Tour tour = BranchAndBound.prove(distances, IntStream.range(0, stops).toArray());
        double shortest = Tour.lengthM(distances, HeldKarp.shortestCycle(stops, distances.toRowMajor()));
        assertThat(tour.proven()).isTrue();
        assertThat(tour.lengthM()).isCloseTo(shortest, within(shortest * Tour.PROOF));
        assertThat(tour.lowerBoundM()).isLessThanOrEqualTo(shortest * (1 + OneTree.ROUNDING));
    }

    /** A start that is hardly too long leaves little room between true bounds and false ones. */
    @Property(seed = Laws.SEED, tries = 300)
    void provesTheShortestRoundFromOneNearlyAsShort(
            @ForAll @IntRange(min = 10, max = 13) int stops, @ForAll long seed, @ForAll Layout layout) {
        DistanceMatrix distances = layout.of(stops, seed);
        int[] cycle = HeldKarp.shortestCycle(stops, distances.toRowMajor());
        double shortest = Tour.lengthM(distances, cycle);
        int[] start = leastLengthenedBySwappingTwo(distances, cycle, shortest);
        Tour tour = BranchAndBound.prove(distances, start);
        assertThat(tour.lengthM()).isCloseTo(shortest, within(shortest * Tour.PROOF));
    }

    private static int[] leastLengthenedBySwappingTwo(DistanceMatrix distances, int[] cycle, double shortest) {
        int[] best = cycle;
        double bestLength = Double.POSITIVE_INFINITY;
        for (int i = 0; i < cycle.length; i++) {
            for (int j = 0; j < i; j++) {
                int[] swapped = cycle.clone();
                swapped[i] = cycle[j];
                swapped[j] = cycle[i];
                double length = Tour.lengthM(distances, swapped);
                if (length > shortest * (1 + Tour.PROOF) && length < bestLength) {
                    best = swapped;
                    bestLength = length;
                }
            }
        }
        return best;
    }

    /** 150 stops in whole tenths have far too many equally short rounds to tell apart under the cap. */
    @Test
    void givesTheBoundItReachedWhenTheWorkIsCapped() {
        DistanceMatrix distances = Layout.TIED.of(150, 1);
        Tour tour = BranchAndBound.prove(distances, KickSearch.shortCycle(distances, 1));
        assertThat(tour.proven()).isFalse();
        assertThat(tour.lowerBoundM()).isBetween(0.97 * tour.lengthM(), tour.lengthM());
    }
}
