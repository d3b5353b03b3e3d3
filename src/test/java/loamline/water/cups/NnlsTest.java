package loamline.water.cups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NnlsTest {
    /** Decimals that the other library printed, and one column square-conditioned. */
    private static final double TOLERANCE = 1e-9;

    @Test
    void agreesWithScipyWhereOneUnknownIsBound() {
        // computed with scipy 1.17.1 optimize.nnls
        double[][] a = {{0.0372, 0.2868}, {0.6861, 0.7071}, {0.6233, 0.6245}, {0.6344, 0.6170}};
        double[] b = {0.8587, 0.1781, 0.0747, 0.8405};
        assertThat(Nnls.solve(a, b)).containsExactly(new double[] {0, 0.6929003109464551}, within(TOLERANCE));
    }

    @Test
    void agreesWithScipyOnEightEquations() {
        // computed with scipy 1.17.1 optimize.nnls
        double[][] a = {
            {0.51, 0.95, 0.14, 0.95, 0.31},
            {0.42, 0.83, 0.41, 0.55, 0.03},
            {0.75, 0.54, 0.33, 0.79, 0.3},
            {0.45, 0.13, 0.4, 0.2, 0.26},
            {0.75, 0.28, 0.49, 0.98, 0.96},
            {0.72, 0.54, 0.28, 0.16, 0.97},
            {0.52, 0.12, 0.62, 0.78, 0.61},
            {0.92, 0.04, 0.53, 0.46, 0.06}
        };
        double[] b = {0.78, 1.21, 0.69, 0.02, 1.18, 0.52, 0.52, 1.01};
        double[] expected = {0.3427437522897013, 0.3833648669141922, 0.41860581932216745, 0.3586481062383788, 0};
        assertThat(Nnls.solve(a, b)).containsExactly(expected, within(TOLERANCE));
    }

    @Test
    void givesNothingWhereEveryUnknownWouldHaveToBeNegative() {
        assertThat(Nnls.solve(new double[][] {{1, 2}, {3, 1}}, new double[] {-1, -2}))
                .containsExactly(0, 0);
    }

    @Test
    void leavesColumnsOfZerosAndCopiesAtZero() {
        double[][] a = {{1, 0, 1}, {2, 0, 2}, {3, 0, 3}};
        assertThat(Nnls.solve(a, new double[] {2, 4, 6})).containsExactly(new double[] {2, 0, 0}, within(TOLERANCE));
    }

    @Test
    void meetsTheConditionsOfKuhnAndTuckerOnAnyProblem() {
        SplittableRandom random = new SplittableRandom(7);
        for (int run = 0; run < 500; run++) {
            int columns = 1 + random.nextInt(12);
            int rows = columns + random.nextInt(20);
            double[][] a = new double[rows][columns];
            double[] b = new double[rows];
            for (int i = 0; i < rows; i++) {
                b[i] = random.nextDouble(-1, 1);
                for (int j = 0; j < columns; j++) {
                    a[i][j] = random.nextDouble(-0.5, 1);
                }
            }
            double[] x = Nnls.solve(a, b);
            for (int j = 0; j < columns; j++) {
                double slope = slope(a, b, x, j);
                assertThat(x[j]).isNotNegative();
                assertThat(slope).as("slope of %d in run %d", j, run).isLessThan(1e-7);
                assertThat(x[j] * slope).isCloseTo(0, within(1e-7));
            }
        }
    }

    private static double slope(double[][] a, double[] b, double[] x, int column) {
        double slope = 0;
        for (int i = 0; i < b.length; i++) {
            double rest = b[i];
            for (int j = 0; j < x.length; j++) {
                rest -= a[i][j] * x[j];
            }
            slope += a[i][column] * rest;
        }
        return slope;
    }
}
