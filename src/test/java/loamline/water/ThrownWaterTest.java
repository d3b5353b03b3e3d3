package loamline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.yard.Profile;
import loamline.yard.Profile.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThrownWaterTest {
    private static List<Profile> profiles() {
        List<Profile> all = new ArrayList<>(List.of(Named.values()));
        all.add(new Profile.Measured(List.of(2.0, 5.0, 4.0, 1.0)));
        return all;
    }

    private static HeadPattern head(Profile profile, double startDeg, double sweepDeg) {
        return new HeadPattern(new Point(2, 1), 6, Arc.of(startDeg, sweepDeg), RadialProfile.of(profile), 9);
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void allOfTheArcGetsAllOfTheWater(Profile profile) {
        for (double sweepDeg : new double[] {1, 33, 90, 180, 271, 359.5, 360}) {
            HeadPattern head = head(profile, 20, sweepDeg);
            assertThat(ThrownWater.share(head, Reach.of(head)))
                    .as(sweepDeg + "°")
                    .isCloseTo(1, within(ThrownWater.ACCURACY));
        }
    }

    /** A full circle cut by a straight line through the head halves; so does any cut of an arc's middle. */
    @Test
    void halvesAreHalves() {
        HeadPattern full = head(Named.CONE, 0, 360);
        Region east = Region.of(new Box(2, -20, 40, 20).outline());
        assertThat(ThrownWater.share(full, Reach.of(full).intersection(east)))
                .isCloseTo(0.5, within(ThrownWater.ACCURACY));
        HeadPattern arc = head(Named.ELLIPSE, 60, 60);
        Region north = Region.of(new Box(-20, 1, 40, 20).outline());
        assertThat(ThrownWater.share(arc, Reach.of(arc).intersection(north)))
                .isCloseTo(0.5, within(ThrownWater.ACCURACY));
    }

    /** Fine cells, each counted where its middle lies, say the same. */
    @ParameterizedTest
    @MethodSource("profiles")
    void groundWithHolesGetsWhatItsCellsGet(Profile profile) {
        SplittableRandom random = new SplittableRandom(9);
        for (int i = 0; i < 4; i++) {
            HeadPattern head = head(profile, random.nextDouble(360), i % 2 == 0 ? 360 : 150);
            Region ground = Region.around(new Point(random.nextDouble(6), random.nextDouble(4)), 3)
                    .minus(Region.around(new Point(random.nextDouble(6), random.nextDouble(4)), 1.2));
            double cells = 0;
            double cellM = 0.04;
            for (double x = -4 + cellM / 2; x < 8; x += cellM) {
                for (double y = -5 + cellM / 2; y < 7; y += cellM) {
                    double rate = head.rateMmH(x, y);
                    cells += rate > 0 && ground.covers(new Point(x, y)) ? rate * cellM * cellM / 60 / 9 : 0;
                }
            }
            assertThat(ThrownWater.share(head, ground.intersection(Reach.of(head))))
                    .isCloseTo(cells, within(2e-3));
        }
    }

    @Test
    void theDrawnReachHasTheAreaOfTheArcAndKeepsToTheRim() {
        for (double sweepDeg : new double[] {1, 90, 200, 360}) {
            HeadPattern head = head(Named.CONE, 300, sweepDeg);
            Region reach = Reach.of(head);
            assertThat(reach.areaM2()).isCloseTo(head.throwAreaM2(), within(1e-6));
            reach.outline()
                    .vertices()
                    .filter(p -> !p.equals(head.at()))
                    .forEach(p -> assertThat(p.distanceTo(head.at())).isBetween(6.0, 6 + Reach.CHORD_ERROR_M));
            Point middle = head.at()
                    .plus(
                            (6 - Reach.CHORD_ERROR_M) * Arc.sinDeg(head.arc().middleDeg()),
                            (6 - Reach.CHORD_ERROR_M) * Arc.sinDeg(head.arc().middleDeg() + 90));
            assertThat(reach.covers(middle)).isTrue();
        }
    }
}
