package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Values derived from the formula as Woods 2014 gives it. */
class GrowthPotentialTest {
    @Test
    void coolSeasonGrassGrowsBestAtTwentyDegrees() {
        double[][] cases = {{20, 1}, {15, 0.6615}, {10, 0.1915}, {5, 0.0243}, {25, 0.6615}, {30, 0.1915}};
        for (double[] c : cases) {
            assertThat(GrowthPotential.COOL.at(c[0])).isCloseTo(c[1], within(0.00005));
        }
        // the author's example: 2.5 °C from the best leaves 90 %
        assertThat(GrowthPotential.COOL.at(22.5)).isCloseTo(0.902, within(0.0005));
        assertThat(0.9 * GrowthPotential.COOL.at(18)).isCloseTo(0.842, within(0.0005));
    }

    @Test
    void warmSeasonGrassDoesNotSufferAboveItsBest() {
        double[][] cases = {{20, 0.2909}, {25, 0.6926}, {30, 0.9898}, {31, 1}, {35, 1}};
        for (double[] c : cases) {
            assertThat(GrowthPotential.WARM.at(c[0])).isCloseTo(c[1], within(0.00005));
        }
    }

    @Test
    void fahrenheitFiguresAreASetOfTheirOwn() {
        assertThat(GrowthPotential.gaussian(60, 68, 10)).isCloseTo(0.7261, within(0.00005));
        assertThat(GrowthPotential.gaussian(75, 68, 10)).isCloseTo(0.7827, within(0.00005));
        assertThat(GrowthPotential.gaussian(80, 68, 10)).isCloseTo(0.4868, within(0.00005));
    }

    @Test
    void threePoundsAreSharedAmongTheMonthsOfAYear() {
        List<Double> t = List.of(-1., 1., 7., 13., 18., 23., 26., 25., 21., 14., 7., 2.);
        assertRounded(GrowthPotential.COOL.shared(3, t), 0, 0, .04, .26, .55, .50, .32, .39, .58, .32, .04, 0);
        assertRounded(GrowthPotential.WARM.shared(3, t), 0, 0, 0, .04, .20, .60, .89, .79, .41, .06, 0, 0);
        assertThat(t.stream().mapToDouble(GrowthPotential.COOL::at).sum()).isCloseTo(5.121, within(0.0015));
        assertThat(t.stream().mapToDouble(GrowthPotential.WARM::at).sum()).isCloseTo(2.622, within(0.0015));
    }

    private static void assertRounded(List<Double> shares, double... printed) {
        for (int i = 0; i < printed.length; i++) {
            assertThat(shares.get(i)).isCloseTo(printed[i], within(0.0051));
        }
    }
}
