package loamline.sampling.strata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class PowerDiagramTest {
    @Test
    void settlingBringsAreasWithinAFewPercentAndGeneratorsToTheirCentres() {
        WeightedPoints points = WeightedPoints.cellsOf(Grounds.l());
        PowerDiagram diagram =
                new PowerDiagram(new double[] {3, 9, 14, 70, 80, 20, 30}, new double[] {5, 1, 30, 20, 40, 90, 70});
        diagram.settle(points, 60);
        int[] owner = new int[points.size()];
        diagram.assign(points, owner);
        double target = points.totalMass / 7;
        double[] sumX = new double[7];
        for (int i = 0; i < owner.length; i++) {
            sumX[owner[i]] += points.x[i];
        }
        int[] sizes = ExactBalance.sizes(owner, 7);
        for (int j = 0; j < 7; j++) {
            assertThat((double) sizes[j]).isCloseTo(target, within(0.03 * target));
            assertThat(sumX[j] / sizes[j]).isCloseTo(diagram.x[j], within(0.03 * Math.sqrt(target)));
        }
    }

    @Test
    void blocksHoldTheGroundOfTheirCells() {
        Ground ground = Grounds.u();
        WeightedPoints cells = WeightedPoints.cellsOf(ground);
        WeightedPoints blocks = WeightedPoints.blocksOf(ground, 7);
        assertThat(blocks.size()).isLessThan(cells.size() / 40);
        assertThat(blocks.totalMass).isEqualTo(7600);
        assertThat(moment(blocks)).isCloseTo(Arrays.stream(cells.x).sum(), within(1e-6));
    }

    private static double moment(WeightedPoints points) {
        double sum = 0;
        for (int i = 0; i < points.size(); i++) {
            sum += points.mass[i] * points.x[i];
        }
        return sum;
    }

    @Test
    void wallsSolveTheirLaplacian() {
        // a chain 0 - 1 - 2: 3 and 1 pass each way between 0 and 1, 5 one way between 1 and 2; area 4, so band 2
        Walls walls = new Walls(3);
        walls.clear(4);
        walls.add(0, 1, 0.5, 3);
        walls.add(1, 0, 1.9, 1);
        walls.add(2, 1, 0, 5);
        walls.add(0, 2, 2, 100); // beyond the band
        double first = (3 + 1) / (2 * 2.0);
        double second = 5 / (2 * 2.0);
        double stiffness = 0.2;
        double[] step = {1, -2, 4};
        double[] missing = {
            first * (1 - -2) + stiffness * 1,
            first * (-2 - 1) + second * (-2 - 4) + stiffness * -2,
            second * (4 - -2) + stiffness * 4
        };
        walls.solve(missing);
        assertThat(missing).containsExactly(step, within(1e-12));
    }
}
