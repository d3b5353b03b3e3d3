package loamline.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loamline.geometry.Point;
import loamline.yard.Backdrop.Placement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScaleFitTest {
    private static final double FOOT_M = 0.3048;

    /** An image of 1000 x 800 pixels of 0.1 m. */
    private static Backdrop image(KnownDistance... known) {
        return new Backdrop(
                "a.png", 1000, 800, new Placement(0.1, 0, 0, 0, -0.1, 80), 1, 1, List.of(known), Extras.NONE);
    }

    private static KnownDistance along(double px, double lengthM) {
        return new KnownDistance(new Point(10, 20), new Point(10 + px, 20), lengthM);
    }

    @Test
    void oneDistanceSetsTheScaleAndItsErrorComesFromTwoClicks() {
        ScaleFit fit = ScaleFit.of(image(along(200, 10)));
        assertThat(fit.factor()).isCloseTo(0.5, within(1e-12));
        assertThat(fit.residualsRel())
                .singleElement()
                .satisfies(r -> assertThat(r).isCloseTo(0, within(1e-12)));
        // by hand: each end is off by 1 px along the line, √2 / 200
        assertThat(fit.errorRel()).isCloseTo(Math.sqrt(2) / 200, within(1e-12));
        assertThat(fit.isOff()).isFalse();
    }

    @Test
    void twoDistancesThatDisagreeShareTheDifference() {
        // by hand: ratios 1.00 and 1.04 have the geometric mean √1.04
        ScaleFit fit = ScaleFit.of(image(along(100, 10), along(200, 20.8)));
        assertThat(fit.factor()).isCloseTo(Math.sqrt(1.04), within(1e-12));
        assertThat(fit.residualsRel().get(0)).isCloseTo(Math.sqrt(1.04) - 1, within(1e-12));
        assertThat(fit.residualsRel().get(1)).isCloseTo(1 / Math.sqrt(1.04) - 1, within(1e-12));
        assertThat(fit.isOff()).isFalse();
        // by hand: sd of the logs is ln 1.04 / √2, their mean's standard error half of ln 1.04
        assertThat(fit.errorRel()).isCloseTo(Math.log(1.04) / 2, within(1e-12));
        assertThat(ScaleFit.of(image(along(100, 10), along(200, 20.9))).isOff()).isTrue();
    }

    @Test
    void threeCountsOfPacesGiveTheFactorThatTheirTextPrints() {
        // an agricultural engineering text (second-hand): 200 ft paced as 62, 60 and 64: 3.2 ft a pace. Its mean of
        // counts
        // makes 3.226, the mean of ratios here 3.227
        ScaleFit fit = ScaleFit.of(image(along(62, 200), along(60, 200), along(64, 200)));
        assertThat(0.1 * fit.factor()).isCloseTo(3.2, within(0.05));
        assertThat(0.1 * fit.factor()).isCloseTo(200 / Math.cbrt(62 * 60 * 64), within(1e-12));
    }

    @Test
    void theFitIsTheLeastOfAllFactors() {
        Backdrop image = image(along(100, 9.7), along(250, 26), along(400, 41));
        double fitted = ScaleFit.of(image).factor();
        for (double factor = 0.9; factor < 1.2; factor += 0.001) {
            assertThat(squares(image, factor)).isGreaterThanOrEqualTo(squares(image, fitted));
        }
    }

    private static double squares(Backdrop image, double factor) {
        return image.knownDistances().stream()
                .mapToDouble(d -> Math.pow(Math.log(factor * image.placedM(d) / d.lengthM()), 2))
                .sum();
    }

    @Test
    void noiseAveragesOutAndTheStatedErrorCoversIt() {
        SplittableRandom random = new SplittableRandom(7);
        int trials = 2000;
        double squares = 0;
        double stated = 0;
        for (int trial = 0; trial < trials; trial++) {
            List<KnownDistance> known = new ArrayList<>();
            for (int i = 0; i < 9; i++) {
                known.add(along(300, 30 * (1 + 0.02 * random.nextGaussian())));
            }
            ScaleFit fit = ScaleFit.of(image(known.toArray(KnownDistance[]::new)));
            squares += Math.pow(fit.factor() - 1, 2) / trials;
            stated += fit.errorRel() / trials;
        }
        assertThat(Math.sqrt(squares)).isCloseTo(0.02 / 3, within(0.0004));
        assertThat(stated).isCloseTo(0.02 / 3, within(0.0004));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1 / 12.0, 12, FOOT_M, 1 / FOOT_M, 3, 0.01})
    void aLengthInTheWrongUnitIsTheOneThatIsOffMost(double slip) {
        ScaleFit fit = ScaleFit.of(image(along(100, 10), along(300, 30), along(200, 20 * slip), along(150, 15)));
        assertThat(fit.isOff()).isTrue();
        assertThat(fit.worst()).isEqualTo(2);
    }

    @Test
    void lengthsFromAHandToACountyAreFitted() {
        assertThat(ScaleFit.of(image(along(1, 1e-6))).factor()).isCloseTo(1e-5, within(1e-17));
        assertThat(ScaleFit.of(image(along(1, 1e9))).factor()).isCloseTo(1e10, within(1e-2));
    }

    @Test
    void whatIsNoDistanceIsRefused() {
        Point here = new Point(3, 4);
        Point there = new Point(5, 4);
        assertThatThrownBy(() -> new KnownDistance(here, new Point(3, 4), 10)).hasMessageContaining("two ends");
        for (double lengthM : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new KnownDistance(here, there, lengthM))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> ScaleFit.of(image())).hasMessageContaining("known distance");
    }

    @Test
    void anImageWithItsOwnScaleIsOnlyChecked() {
        ScaleFit check = ScaleFit.check(image(along(100, 8)));
        assertThat(check.factor()).isEqualTo(1);
        assertThat(check.residualsRel().get(0)).isCloseTo(0.25, within(1e-12));
    }

    @Test
    void theAccountHoldsWhatWasPutIn() {
        assertThat(ScaleFit.account(image(along(100, 10), along(200, 21))).inputs())
                .containsEntry("n", 2)
                .containsEntry("L2_m", 21.0)
                .containsEntry("d2_px", 200.0);
    }
}
