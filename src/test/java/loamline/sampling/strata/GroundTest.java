package loamline.sampling.strata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class GroundTest {
    @Test
    void cellsKeepTheirOrderAndKnowTheirNeighbours() {
        Ground ground = Ground.of(new double[] {11, 10, 10}, new double[] {21, 20, 21}, 1);
        assertThat(ground.xM(0)).isEqualTo(11);
        assertThat(ground.yM(0)).isEqualTo(21);
        assertThat(ground.areaM2()).isEqualTo(3);
        assertThat(ground.neighbour(2, 0)).as("east").isEqualTo(0);
        assertThat(ground.neighbour(1, 1)).as("north").isEqualTo(2);
        assertThat(ground.neighbour(0, 2)).as("west").isEqualTo(2);
        assertThat(ground.neighbour(2, 3)).as("south").isEqualTo(1);
        assertThat(ground.neighbour(1, 2)).as("off the ground").isEqualTo(Ground.NONE);
        assertThat(ground.neighbour(1, 0)).as("a gap").isEqualTo(Ground.NONE);
    }

    @Test
    void aCellOwnsItsWestAndSouthSides() {
        Ground ground = Grounds.square(2);
        assertThat(ground.cellCovering(0.5, 0)).isEqualTo(1);
        assertThat(ground.cellCovering(-0.5, -0.5)).isEqualTo(0);
        assertThat(ground.cellCovering(1.5, 0)).isEqualTo(Ground.NONE);
    }

    @Test
    void cellsInOnePlaceAreRefusedByPlace() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ground.of(new double[] {5, 6, 6.001}, new double[] {7, 8, 8}, 1))
                .withMessage("two cells lie at 6.0, 8.0");
    }

    @Test
    void cellsOffTheLatticeAreRefusedByNumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ground.of(new double[] {0, 1.02}, new double[] {0, 0}, 1))
                .withMessage("xM[1] = 1.02 is not a whole number of 1.0 m cells from 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ground.of(new double[] {0, 1}, new double[] {0, Double.NaN}, 1))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ground.of(new double[] {0, 1e300}, new double[] {0, 0}, 1))
                .withMessageContaining("xM[1]");
    }

    @Test
    void noCellsUnlikeLengthsAndSidesOfNothingAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ground.of(new double[0], new double[0], 1))
                .withMessageContaining("got 0 xM and 0 yM");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ground.of(new double[2], new double[1], 1))
                .withMessageContaining("got 2 xM and 1 yM");
        for (double side : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Ground.of(new double[1], new double[1], side))
                    .withMessageContaining("got " + side);
        }
    }
}
