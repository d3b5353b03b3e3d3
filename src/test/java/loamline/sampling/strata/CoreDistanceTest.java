package loamline.sampling.strata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class CoreDistanceTest {
    private static double slowMssd(double[] x, double[] y, double[] coreX, double[] coreY) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int j = 0; j < coreX.length; j++) {
                nearest = Math.min(nearest, Math.pow(x[i] - coreX[j], 2) + Math.pow(y[i] - coreY[j], 2));
            }
            sum += nearest;
        }
        return sum / x.length;
    }

    @Property(seed = Laws.SEED, tries = 200)
    void bucketsFindWhatASearchOverAllCoresFinds(
            @ForAll @IntRange(min = 1, max = 300) int points,
            @ForAll @IntRange(min = 1, max = 40) int cores,
            @ForAll @IntRange(max = 3) int flatness,
            @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double height = flatness == 0 ? 0 : Math.pow(100, flatness - 2.0);
        double[] x = random.doubles(points, 329_000, 329_001).toArray();
        double[] y = random.doubles(points).map(u -> height * u).toArray();
        // cores may lie outside the points' box
        double[] coreX = random.doubles(cores, 328_999, 329_002).toArray();
        double[] coreY = random.doubles(cores).map(u -> 3 * height * u - height).toArray();
        assertThat(CoreDistance.nearestMssdM2(x, y, coreX, coreY))
                .isCloseTo(slowMssd(x, y, coreX, coreY), Percentage.withPercentage(100 * CoreDistance.ACCURACY));
    }

    @Test
    void aSquareRoundItsCoreMissesASixthOfACellOnly() {
        Ground ground = Grounds.square(50);
        double side = 50 * Grounds.CELL_M;
        // a²/6 in the whole, less h²/6 (derived)
        double expected = (side * side - Grounds.CELL_M * Grounds.CELL_M) / 6;
        assertThat(CoreDistance.nearest(WeightedPoints.cellsOf(ground), new double[] {24.5}, new double[] {24.5})
                        * Grounds.CELL_M
                        * Grounds.CELL_M)
                .isCloseTo(expected, within(1e-12));
    }

    @Test
    void aPointOnItsOnlyCoreIsAtNoDistance() {
        assertThat(CoreDistance.nearestMssdM2(new double[] {4}, new double[] {5}, new double[] {4}, new double[] {5}))
                .isZero();
    }

    @Test
    void nothingAndNotANumberAreRefused() {
        double[] one = {1};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CoreDistance.nearestMssdM2(new double[0], new double[0], one, one))
                .withMessage("points need as many x as y, at least one: got 0 x and 0 y");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CoreDistance.nearestMssdM2(one, one, one, new double[2]))
                .withMessage("cores need as many x as y, at least one: got 1 x and 2 y");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CoreDistance.nearestMssdM2(one, new double[] {Double.NaN}, one, one))
                .withMessage("points must be finite: number 0 is 1.0, NaN");
    }
}
