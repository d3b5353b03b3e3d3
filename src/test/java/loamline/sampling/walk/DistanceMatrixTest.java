package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DistanceMatrixTest {
    @Test
    void keepsDistancesWhateverBecomesOfTheRows() {
        double[][] rows = {{0, 3}, {3, 0}};
        DistanceMatrix distances = DistanceMatrix.of(rows);
        rows[0][1] = 7;
        distances.toRowMajor()[1] = 8;
        assertThat(distances.size()).isEqualTo(2);
        assertThat(distances.betweenM(0, 1)).isEqualTo(3);
        assertThat(distances.toRowMajor()).containsExactly(0, 3, 3, 0);
    }

    @Test
    void theRowOfTheLowerStopCountsWhereDirectionsDifferByRounding() {
        DistanceMatrix distances = DistanceMatrix.of(new double[][] {{0, 3}, {3 + 1e-7, 0}});
        assertThat(distances.betweenM(1, 0)).isEqualTo(3);
    }

    @Test
    void stopsMayShareAPlaceAndBreakTheTriangleInequality() {
        DistanceMatrix distances = DistanceMatrix.of(new double[][] {{0, 0, 9}, {0, 0, 1}, {9, 1, 0}});
        assertThat(distances.betweenM(0, 2)).isEqualTo(9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NaN})
    void refusesStopsThatCannotBeReached(double distance) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DistanceMatrix.of(new double[][] {{0, distance}, {distance, 0}}))
                .withMessage("distance from stop 0 to stop 1 is " + distance
                        + ", must be finite: leave unreachable stops out before planning a walk");
    }

    @Test
    void refusesNegativeDistances() {
        refuses("distance from stop 0 to stop 1 is -1.0, must be 0 or more", new double[][] {{0, -1}, {-1, 0}});
    }

    @Test
    void refusesAWayFromAStopToItself() {
        refuses("distance from stop 1 to stop 1 is 2.0, must be 0", new double[][] {{0, 1}, {1, 2}});
    }

    @Test
    void refusesAWayBackThatDiffers() {
        refuses(
                "distance from stop 1 to stop 0 is 1.00001 but 1.0 back, must agree within 1.0E-6",
                new double[][] {{0, 1}, {1.00001, 0}});
    }

    @Test
    void refusesRowsThatAreNotSquare() {
        refuses("row 1 has 1 distances, must have 2", new double[][] {{0, 1}, {1}});
        refuses("row 0 has 3 distances, must have 2", new double[][] {{0, 1, 2}, {1, 0}});
    }

    @Test
    void refusesNoRowAtAll() {
        refuses("distances have no row, must have one for the start at least", new double[0][]);
    }

    private static void refuses(String why, double[][] rows) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DistanceMatrix.of(rows))
                .withMessage(why);
    }
}
