package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShortestPathsTest {
    /** The digits of the published tables, m. */
    private static final double TABLE_M = 1e-9;

    /** Thick walls are wider than ours by 2e-5 m, and a path goes round a few dozen at most. */
    private static final double THICK_M = 1e-3;

    /** How deep a path may dip into a wall by rounding, m. */
    private static final double DIP_M = 1e-6;

    private static final int SCENES = 100;

    @ParameterizedTest
    @ValueSource(strings = {"yard-12", "yard-40"})
    void allPairsOfAYardHaveTheirPublishedDistance(String yard) {
        double[][] expected = Yards.table(yard + "/distances.txt");
        ShortestPaths paths = Yards.PUBLISHED.paths(Yards.places(yard + "/points.txt"));
        for (int i = 0; i < expected.length; i++) {
            for (int j = 0; j < expected.length; j++) {
                assertThat(paths.lengthM(i, j)).as("%d to %d", i, j).isCloseTo(expected[i][j], within(TABLE_M));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Scenes.class)
    void distancesAreThoseRoundThickWalls(Scenes kind) {
        for (int seed = 0; seed < SCENES; seed++) {
            Yards.Scene scene = kind.of(seed);
            List<Point> stops = openStops(scene, seed);
            double[][] thick = ThickWalls.distancesM(scene, stops);
            ShortestPaths paths = scene.paths(stops);
            for (int i = 0; i < stops.size(); i++) {
                for (int j = 0; j < i; j++) {
                    double ours = paths.lengthM(i, j);
                    boolean same = ours == thick[i][j] || Math.abs(ours - thick[i][j]) < THICK_M;
                    assertThat(same)
                            .as("%s %d, %d to %d: %f, round thick walls %f", kind, seed, i, j, ours, thick[i][j])
                            .isTrue();
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Scenes.class)
    void pathsStayOnFreeGroundAndOffFencesAndAreAsLongAsSaid(Scenes kind) {
        for (int seed = 0; seed < SCENES; seed++) {
            Yards.Scene scene = kind.of(seed);
            List<Point> stops = openStops(scene, seed);
            ShortestPaths paths = scene.paths(stops);
            for (int j = 1; j < stops.size(); j++) {
                List<Point> path = paths.path(0, j);
                if (!path.isEmpty()) {
                    assertThat(new Polyline(path).lengthM()).isCloseTo(paths.lengthM(0, j), within(TABLE_M));
                    assertStaysOutside(scene, new Polyline(path));
                }
            }
        }
    }

    /** Walks the path in small steps and measures how deep each lies in a solid: no predicate of the planner's. */
    private static void assertStaysOutside(Yards.Scene scene, Polyline path) {
        int steps = 400;
        for (int i = 0; i <= steps; i++) {
            Point p = path.at(path.lengthM() * i / steps);
            for (Region solid : scene.solids()) {
                if (solid.holdsInside(p)) {
                    assertThat(solid.distanceToEdge(p)).isLessThan(DIP_M);
                }
            }
        }
    }

    private static List<Point> openStops(Yards.Scene scene, int seed) {
        return Scenes.stops(6, seed).stream()
                .filter(p -> scene.solids().stream().noneMatch(solid -> solid.covers(p)))
                .toList();
    }

    @Test
    void aStopOffTheGroundReachesOnlyItself() {
        ShortestPaths paths = Yards.PUBLISHED.paths(Yards.points(15, 12, 1, 1));
        assertThat(paths.lengthM(0, 0)).isZero();
        assertThat(paths.lengthM(0, 1)).isInfinite();
        assertThat(paths.path(1, 0)).isEmpty();
    }

    @Test
    void twoStopsAtOnePlaceAreNoWayApart() {
        ShortestPaths paths = Yards.PUBLISHED.paths(Yards.points(1, 1, 1, 1));
        assertThat(paths.lengthM(0, 1)).isZero();
    }
}
