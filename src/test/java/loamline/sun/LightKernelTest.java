package loamline.sun;

import static loamline.sun.Scenes.box;
import static loamline.sun.Scenes.screen;
import static loamline.sun.Scenes.sun;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.raster.GridSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightKernelTest {
    /** A wall that ends out of sight of every shadow looked at. */
    private static final double ENDLESS_M = 1e7;

    private static float[] sum(GridSpec grid, List<Caster> casters, List<SunPosition> suns) {
        float[] sum = new float[grid.size()];
        float[] ones = new float[suns.size()];
        Arrays.fill(ones, 1);
        LightKernel.add(
                grid,
                new CasterTable(casters),
                suns.stream().mapToDouble(SunPosition::shadowEastM).toArray(),
                suns.stream().mapToDouble(SunPosition::shadowNorthM).toArray(),
                new float[][] {ones},
                new float[][] {sum});
        return sum;
    }

    private static double shadowM2(GridSpec grid, Caster caster, SunPosition sun) {
        float[] light = sum(grid, List.of(caster), List.of(sun));
        long shaded =
                IntStream.range(0, light.length).filter(i -> light[i] == 0).count();
        return shaded * grid.cellAreaM2();
    }

    private static GridSpec around(double m, double cellM) {
        int cells = (int) Math.round(2 * m / cellM);
        return new GridSpec(-m, -m, cellM, cells, cells);
    }

    /** Worked out in closed form from hour angles: sun hours behind endless walls, north or east of them. */
    @ParameterizedTest
    @CsvSource({
        "0, true, 3, 2.50, 12, 0",
        "0, true, 3, 2.53, 12, 12",
        "23.44, true, 3, 0.5, 14.8446, 9.1516",
        "23.44, true, 3, 1.0, 14.8446, 14.8446",
        "-23.44, true, 3, 5.0, 9.1554, 0",
        "0, false, 2, 2.0, 12, 8.4969",
        "23.44, false, 2, 2.0, 14.8446, 10.7713",
        "-23.44, false, 2, 2.0, 9.1554, 6.2225"
    })
    void hoursBehindAnEndlessWall(
            double declination, boolean eastWest, double wallM, double beyondM, double dayH, double sunH) {
        double stepH = 0.002;
        List<SunPosition> day = DoubleStream.iterate(-12 + stepH / 2, h -> h < 12, h -> h + stepH)
                .mapToObj(h -> sun(40, declination, h))
                .filter(SunPosition::isUp)
                .toList();
        assertThat(day.size() * stepH).isCloseTo(dayH, within(2 * stepH));
        Caster wall = eastWest
                ? screen(-ENDLESS_M, 0, ENDLESS_M, 0, wallM, 0)
                : screen(0, -ENDLESS_M, 0, ENDLESS_M, wallM, 0);
        double x = eastWest ? 0 : beyondM;
        double y = eastWest ? beyondM : 0;
        GridSpec one = new GridSpec(x - 0.005, y - 0.005, 0.01, 1, 1);
        assertThat(sum(one, List.of(wall), day)[0] * stepH).isCloseTo(sunH, within(2 * stepH));
    }

    /** By hand: beyond its footprint a box darkens its width across the sun times the length of its shadow. */
    @ParameterizedTest
    @CsvSource({"45, 180, 120", "30, 180, 207.846", "45, 135, 127.279", "20, 250, 267.67"})
    void theShadowOfABox(double elevation, double azimuth, double m2) {
        double length = 6 / Math.tan(Math.toRadians(elevation));
        double a = Math.toRadians(azimuth);
        double across = 20 * Math.abs(Math.cos(a)) + 10 * Math.abs(Math.sin(a));
        assertThat(length * across).as("the figure itself").isCloseTo(m2, within(0.01));
        double cell = 0.1;
        double found = shadowM2(around(40, cell), box(-10, -5, 10, 5, 6), sun(azimuth, elevation)) - 200;
        double perimeter = 2 * (length + across);
        assertThat(found).isCloseTo(m2, within(perimeter * cell / 2));
    }

    /** By hand: π r² / sin h, the middle c / tan h down the sun's way. */
    @ParameterizedTest
    @CsvSource({"30, 180", "50, 90", "20, 333"})
    void theShadowOfASphere(double elevation, double azimuth) {
        double r = 3;
        double height = 5;
        Caster sphere = new Caster.Ellipsoid(new Point(0, 0), r, height - r, height + r, 0);
        GridSpec grid = around(24, 0.1);
        float[] light = sum(grid, List.of(sphere), List.of(sun(azimuth, elevation)));
        int[] shaded =
                IntStream.range(0, light.length).filter(i -> light[i] == 0).toArray();
        double h = Math.toRadians(elevation);
        assertThat(shaded.length * grid.cellAreaM2())
                .isCloseTo(Math.PI * r * r / Math.sin(h), within(0.1 * Math.PI * r / Math.sin(h)));
        double away = height / Math.tan(h);
        double a = Math.toRadians(azimuth + 180);
        assertThat(IntStream.of(shaded)
                        .mapToDouble(i -> grid.centre(i).x())
                        .average()
                        .orElseThrow())
                .isCloseTo(away * Math.sin(a), within(0.05));
        assertThat(IntStream.of(shaded)
                        .mapToDouble(i -> grid.centre(i).y())
                        .average()
                        .orElseThrow())
                .isCloseTo(away * Math.cos(a), within(0.05));
    }

    @Test
    void everyCellEqualsTheRayToTheSunOffTheEdgesOfShadows() {
        double width = 24;
        double height = 17;
        GridSpec grid = new GridSpec(0, 0, 0.5, 48, 34);
        List<SunPosition> suns = new ArrayList<>();
        for (double h = -7; h < 7.5; h += 1.3) {
            suns.add(sun(40, 15, h));
        }
        suns.removeIf(s -> !s.isUp());
        suns.add(sun(90, 20));
        suns.add(sun(180, 45));
        suns.add(sun(270, 0.4));
        suns.add(sun(0, 60));
        int compared = 0;
        for (long seed = 0; seed < 12; seed++) {
            List<Caster> casters = Scenes.random(seed, 12, width, height);
            for (SunPosition sun : suns) {
                float[] light = sum(grid, casters, List.of(sun));
                for (int i = 0; i < light.length; i++) {
                    Point p = grid.centre(i);
                    double expected = Rays.light(p, sun, casters);
                    if (Math.abs(light[i] - expected) > 1e-6) {
                        assertThat(Rays.isNearAnEdge(p, sun, casters, ShadowBand.ACCURACY_M))
                                .as("cell %d of scene %d under %s: %s, not %s", i, seed, sun, light[i], expected)
                                .isTrue();
                    }
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(200_000);
    }

    @Test
    void sunHoursAgreeWithExactShadowsOnFiftyScenes() {
        double width = 40;
        double height = 30;
        GridSpec grid = new GridSpec(0, 0, 0.25, 160, 120);
        Region ground = ShadowPolygons.yard(width, height);
        for (long seed = 100; seed < 150; seed++) {
            List<Caster> casters = Scenes.random(seed, 10, width, height).stream()
                    .filter(c -> c.light() == 0)
                    .toList();
            double latitude = 25 + seed % 25;
            double declination = -20 + seed % 41;
            List<SunPosition> suns = IntStream.rangeClosed(-3, 3)
                    .mapToObj(h -> sun(latitude, declination, 2 * h + 0.3))
                    .filter(SunPosition::isUp)
                    .toList();
            double exact = suns.stream()
                    .mapToDouble(s -> ShadowPolygons.meanLight(ground, casters, s))
                    .sum();
            float[] sum = sum(grid, casters, suns);
            double raster = IntStream.range(0, sum.length)
                    .mapToDouble(i -> sum[i])
                    .average()
                    .orElseThrow();
            assertThat(raster).as("scene %d", seed).isCloseTo(exact, within(0.02 * exact));
        }
    }

    @Test
    void lightThatPassesIsMultiplied() {
        List<Caster> screens = List.of(screen(-9, 0, 9, 0, 3, 0.5), screen(-9, -1, 9, -1, 3, 0.25));
        GridSpec one = new GridSpec(-0.5, 0.5, 1, 1, 1);
        assertThat(sum(one, screens, List.of(sun(180, 30)))[0]).isEqualTo(0.125f);
        assertThat(sum(one, screens, List.of(sun(0, 30)))[0]).isEqualTo(1);
    }

    @Test
    void aSunInTheZenithDarkensFootprintsOnly() {
        GridSpec grid = around(5, 0.5);
        Caster crown = new Caster.Cylinder(new Point(0, 0), 2, 1, 4, 0);
        assertThat(shadowM2(grid, crown, sun(0, 90))).isCloseTo(Math.PI * 4, within(2.0));
        assertThat(shadowM2(grid, box(-2, -2, 2, 2, 5), sun(0, 90))).isEqualTo(16);
    }

    @Test
    void sharedSidesOfConvexPartsLeaveNoBrightSeam() {
        List<Caster> halves = List.of(
                new Caster.Prism(List.of(new Point(0, 0), new Point(4, 0), new Point(4, 4)), 2, 2, 0),
                new Caster.Prism(List.of(new Point(0, 0), new Point(4, 4), new Point(0, 4)), 2, 2, 0));
        float[] light = sum(new GridSpec(-4, -4, 0.25, 48, 48), halves, List.of(sun(225, 45)));
        long shaded =
                IntStream.range(0, light.length).filter(i -> light[i] == 0).count();
        assertThat(shaded * 0.0625).isCloseTo(16, within(1.0));
        assertThat(sum(new GridSpec(0.875, 0.875, 0.25, 10, 10), halves, List.of(sun(0, 90))))
                .containsOnly(0);
    }

    @Test
    void aVeryLowSunAndAFarShadowStayFinite() {
        GridSpec grid = around(10, 0.5);
        List<Caster> casters = Scenes.random(3, 20, 10, 10);
        for (double elevation : new double[] {1e-9, 1e-6, 0.01}) {
            for (float light : sum(grid, casters, List.of(sun(271.3, elevation)))) {
                assertThat(light).isBetween(0f, 1f);
            }
        }
    }
}
