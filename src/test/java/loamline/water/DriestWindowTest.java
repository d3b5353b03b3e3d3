package loamline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DriestWindowTest {
    @Test
    void aWindowOfFivePerCentIsSquareInCells() {
        assertThat(DriestWindow.side(10_000, 0.05)).isEqualTo(22);
        assertThat(DriestWindow.side(3, 0.05)).isEqualTo(1);
    }

    /** Cell by cell of every window. */
    @Test
    void theDriestWindowIsFoundAmongAllThatHoldNoGap() {
        SplittableRandom random = new SplittableRandom(6);
        for (int round = 0; round < 30; round++) {
            int columns = random.nextInt(1, 14);
            int rows = random.nextInt(1, 14);
            double[] values = new double[columns * rows];
            Arrays.setAll(values, i -> random.nextInt(12) == 0 ? Double.NaN : random.nextDouble(20));
            for (int side = 1; side < 6; side++) {
                double expected = Double.POSITIVE_INFINITY;
                for (int row = 0; row + side <= rows; row++) {
                    for (int column = 0; column + side <= columns; column++) {
                        double sum = 0;
                        for (int i = 0; i < side * side; i++) {
                            sum += values[(row + i / side) * columns + column + i % side];
                        }
                        expected = Double.isNaN(sum) ? expected : Math.min(expected, sum / side / side);
                    }
                }
                assertThat(DriestWindow.least(values, columns, rows, side).orElse(Double.POSITIVE_INFINITY))
                        .isCloseTo(expected, within(1e-9));
            }
        }
    }

    @Test
    void aWindowThatFitsNowhereIsNone() {
        assertThat(DriestWindow.least(new double[] {1, 2, 3, 4}, 4, 1, 2)).isEmpty();
        assertThat(DriestWindow.least(new double[0], 0, 0, 1)).isEmpty();
    }
}
