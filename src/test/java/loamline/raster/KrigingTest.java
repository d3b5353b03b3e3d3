package loamline.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loamline.raster.Variogram.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Five points; numbers computed with gstat 2.1.0 on R 4.2.2, given to eight decimals. */
class KrigingTest {
    private static final double[] X = {0, 10, 0, 10, 5};
    private static final double[] Y = {0, 0, 10, 10, 3};
    private static final double[] Z = {1, 2, 3, 5, 4};
    private static final double EIGHT_DECIMALS = 5.1e-9;

    @ParameterizedTest
    @CsvSource({
        "SPHERICAL,   0.1, 1, 15, 3.85900461, 0.46175485, 2.54801344, 0.52748258",
        "SPHERICAL,   0,   1, 15, 4.06130141, 0.31040295, 2.54447596, 0.38848218",
        "EXPONENTIAL, 0,   1, 5,  3.75112960, 0.52481006, 2.76074143, 0.62624764",
        "GAUSSIAN,    0.2, 2, 6,  4.29649179, 0.65312123, 2.68622373, 0.86244356",
        "LINEAR,      0, 0.3, 1,  3.96921308, 0.89320064, 2.48933967, 1.11595684"
    })
    void fivePointsGiveThePublishedNumbers(
            Shape shape, double nugget, double sill, double range, double p1, double v1, double p2, double v2) {
        Kriging kriging =
                Kriging.of(X, Y, Z, new Variogram(shape, nugget, sill, range)).orElseThrow();
        assertThat(kriging.predict(5, 5)).isCloseTo(p1, within(EIGHT_DECIMALS));
        assertThat(kriging.variance(5, 5)).isCloseTo(v1, within(EIGHT_DECIMALS));
        assertThat(kriging.predict(5, 0)).isCloseTo(p2, within(EIGHT_DECIMALS));
        assertThat(kriging.variance(5, 0)).isCloseTo(v2, within(EIGHT_DECIMALS));
        assertThat(kriging.predict(0, 0)).isCloseTo(1, within(EIGHT_DECIMALS));
        assertThat(kriging.variance(0, 0)).isCloseTo(0, within(EIGHT_DECIMALS));
    }

    @ParameterizedTest
    @CsvSource({"1, 3.33647701, 2.90377174", "2, 3.69696970, 3.03433476", "3, 3.89625302, 3.26562548"})
    void inverseDistanceGivesThePublishedNumbers(double power, double at55, double at50) {
        assertThat(InverseDistance.at(X, Y, Z, power, 5, 5)).isCloseTo(at55, within(EIGHT_DECIMALS));
        assertThat(InverseDistance.at(X, Y, Z, power, 5, 0)).isCloseTo(at50, within(EIGHT_DECIMALS));
        assertThat(InverseDistance.at(X, Y, Z, power, 0, 0)).isEqualTo(1);
    }

    /** By hand: two points and a straight variogram. */
    @Test
    void betweenTwoPointsItIsTheStraightLine() {
        Kriging kriging = Kriging.of(
                        new double[] {0, 10},
                        new double[] {0, 0},
                        new double[] {0, 10},
                        new Variogram(Shape.LINEAR, 0, 1, 1))
                .orElseThrow();
        assertThat(kriging.predict(2.5, 0)).isCloseTo(2.5, within(EIGHT_DECIMALS));
        assertThat(kriging.variance(2.5, 0)).isCloseTo(3.75, within(EIGHT_DECIMALS));
        assertThat(kriging.variance(5, 0)).isCloseTo(5, within(EIGHT_DECIMALS));
    }

    @Test
    void leavingOneOutIsTheSameAsSolvingWithoutIt() {
        Variogram variogram = new Variogram(Shape.SPHERICAL, 0.1, 1, 15);
        double[] fast = Kriging.of(X, Y, Z, variogram).orElseThrow().leaveOneOut();
        List<Double> slow = new ArrayList<>();
        for (int left = 0; left < Z.length; left++) {
            int out = left;
            int[] kept = IntStream.range(0, Z.length).filter(i -> i != out).toArray();
            Kriging rest = Kriging.of(some(X, kept), some(Y, kept), some(Z, kept), variogram)
                    .orElseThrow();
            slow.add(Z[left] - rest.predict(X[left], Y[left]));
        }
        for (int i = 0; i < fast.length; i++) {
            assertThat(fast[i]).isCloseTo(slow.get(i), within(EIGHT_DECIMALS));
        }
    }

    private static double[] some(double[] values, int[] kept) {
        return IntStream.of(kept).mapToDouble(i -> values[i]).toArray();
    }

    @Test
    void twoPointsInOnePlaceHaveNoAnswer() {
        double[] twice = {1, 1};
        assertThat(Kriging.of(twice, twice, twice, new Variogram(Shape.LINEAR, 0, 1, 1)))
                .isEmpty();
    }

    @Test
    void aFittedCurveFindsARangeThatWasPlanted() {
        int side = 24;
        double[] x = new double[side * side];
        double[] y = new double[side * side];
        double[] z = new double[side * side];
        for (int i = 0; i < x.length; i++) {
            x[i] = i % side;
            y[i] = i / side;
            z[i] = Math.sin(x[i] / 3) + Math.cos(y[i] / 3);
        }
        Variogram fitted = VariogramFit.spherical(x, y, z).orElseThrow();
        assertThat(fitted.structuredShare()).isGreaterThan(0.95);
        assertThat(fitted.rangeM()).isBetween(4.0, 12.0);
    }

    @Test
    void valuesWithoutAnyDifferenceHaveNoCurve() {
        assertThat(VariogramFit.spherical(X, Y, new double[] {1, 1, 1, 1, 1})).isEmpty();
    }
}
