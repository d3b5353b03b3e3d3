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

    @Test
    void aYearOfMonthsHasThePotentialsThatTheFormulaGives() {
        // derived, illustrative temperatures in °C: potential of cool-season and warm-season grass
        double[][] months = {
            {-1, 0.001, 0.000},
            {1, 0.003, 0.000},
            {7, 0.061, 0.003},
            {13, 0.445, 0.037},
            {18, 0.936, 0.178},
            {23, 0.862, 0.520},
            {26, 0.552, 0.775},
            {25, 0.662, 0.693},
            {21, 0.984, 0.360},
            {14, 0.552, 0.052},
            {7, 0.061, 0.003},
            {2, 0.005, 0.000}
        };
        for (double[] month : months) {
            assertThat(GrowthPotential.COOL.at(month[0])).isCloseTo(month[1], within(0.0005001));
            assertThat(GrowthPotential.WARM.at(month[0])).isCloseTo(month[2], within(0.0005001));
        }
    }

    @Test
    void theMostOfAMonthTimesGrowthMakesAYear() {
        // Woods 2023: a year whose potentials add up to 8.5 at no more than 2 g N/m² a month takes 170 kg/ha
        double meanC = 20 + 5.5 * Math.sqrt(-2 * Math.log(8.5 / 12));
        double gM2 = 12 * 2 * GrowthPotential.COOL.at(meanC);
        assertThat(10 * gM2).isCloseTo(170, within(1e-9));
        // the same author's most of a month: bentgrass 2, annual bluegrass 3, bermuda 4 g/m²: 0.41, 0.61, 0.82 lb/M
        double[][] most = {{2, 0.41}, {3, 0.61}, {4, 0.82}};
        for (double[] m : most) {
            assertThat(Quantities.gM2(m[1])).isCloseTo(m[0], within(0.025));
        }
    }

    private static void assertRounded(List<Double> shares, double... printed) {
        for (int i = 0; i < printed.length; i++) {
            assertThat(shares.get(i)).isCloseTo(printed[i], within(0.0051));
        }
    }
}
