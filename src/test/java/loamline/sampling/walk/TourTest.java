package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TourTest {
    private static final DistanceMatrix SQUARE =
            DistanceMatrix.of(new double[][] {{0, 1, 2, 1}, {1, 0, 1, 2}, {2, 1, 0, 1}, {1, 2, 1, 0}});

    @Test
    void startsAtStopZeroAndRunsTowardsItsLowerNeighbour() {
        Tour expected = new Tour(List.of(0, 1, 2, 3), 4, 4);
        assertThat(Tour.along(SQUARE, new int[] {2, 3, 0, 1}, 4)).isEqualTo(expected);
        assertThat(Tour.along(SQUARE, new int[] {1, 0, 3, 2}, 4)).isEqualTo(expected);
    }

    @Test
    void aBoundThatRoundingLiftedIsTheLength() {
        Tour tour = Tour.along(SQUARE, new int[] {0, 1, 2, 3}, 4 + 1e-12);
        assertThat(tour.lowerBoundM()).isEqualTo(4);
    }

    @Test
    void isProvenIfTheBoundMeetsTheLengthToOnePartInABillion() {
        List<Integer> order = List.of(0, 1, 2);
        assertThat(new Tour(order, 100, 100).proven()).isTrue();
        assertThat(new Tour(order, 100, 100 - 0.9e-7).proven()).isTrue();
        assertThat(new Tour(order, 100, 100 - 1.1e-7).proven()).isFalse();
        assertThat(new Tour(List.of(0), 0, 0).proven()).isTrue();
    }

    @Test
    void keepsItsOrderWhateverBecomesOfTheList() {
        List<Integer> order = new ArrayList<>(List.of(0, 1, 2));
        Tour tour = new Tour(order, 3, 3);
        order.set(1, 2);
        assertThat(tour.order()).containsExactly(0, 1, 2).isUnmodifiable();
    }

    @Test
    void refusesAnOrderThatDoesNotVisitEachStopOnceFromStopZero() {
        refuses("must start at stop 0", List.of(), 0, 0);
        refuses("must start at stop 0", List.of(1, 0), 0, 0);
        refuses("must hold each stop once", List.of(0, 1, 1), 0, 0);
        refuses("must hold each stop once", List.of(0, 2), 0, 0);
    }

    @Test
    void refusesLengthsAndBoundsThatCannotBe() {
        refuses("lengthM is -1.0", List.of(0, 1), -1, 0);
        refuses("lengthM is Infinity", List.of(0, 1), Double.POSITIVE_INFINITY, 0);
        refuses("lengthM is NaN", List.of(0, 1), Double.NaN, 0);
        refuses("lowerBoundM is 4.0, must be within 0 … 3.0", List.of(0, 1), 3, 4);
        refuses("lowerBoundM is -1.0", List.of(0, 1), 3, -1);
        refuses("lowerBoundM is NaN", List.of(0, 1), 3, Double.NaN);
    }

    private static void refuses(String why, List<Integer> order, double lengthM, double lowerBoundM) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Tour(order, lengthM, lowerBoundM))
                .withMessageContaining(why);
    }
}
