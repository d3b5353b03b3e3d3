package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import loamline.Laws;
import loamline.geometry.Point;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What holds between distances in any yard. */
class WalkLawsTest {
    private static final int STOPS = 6;
    private static final double ROUNDING_M = 1e-9;

    private static double[][] distancesM(Yards.Scene scene, List<Point> stops) {
        return scene.space().ways(stops).distancesM();
    }

    @Property(seed = Laws.SEED, tries = 60, edgeCases = EdgeCasesMode.NONE)
    void distancesAreAMetricAboveTheStraightLine(@ForAll Scenes kind, @ForAll boolean onWalls, @ForAll long seed) {
        List<Point> stops = onWalls ? Scenes.stopsOnLattice(STOPS, seed) : Scenes.stops(STOPS, seed);
        double[][] d = distancesM(kind.of(seed), stops);
        for (int i = 0; i < STOPS; i++) {
            assertThat(d[i][i]).isZero();
            for (int j = 0; j < STOPS; j++) {
                assertThat(d[i][j]).isEqualTo(d[j][i]);
                assertThat(d[i][j]).isGreaterThanOrEqualTo(stops.get(i).distanceTo(stops.get(j)) - ROUNDING_M);
                for (int k = 0; k < STOPS; k++) {
                    assertThat(d[i][j]).isLessThanOrEqualTo(d[i][k] + d[k][j] + ROUNDING_M);
                }
            }
        }
    }

    @Property(seed = Laws.SEED, tries = 60, edgeCases = EdgeCasesMode.NONE)
    void anotherObstacleOrFenceNeverShortensAWay(@ForAll Scenes kind, @ForAll long seed) {
        Yards.Scene scene = kind.of(seed);
        Yards.Scene more = kind.of(~seed);
        List<Point> stops = Scenes.stops(STOPS, seed);
        double[][] before = distancesM(scene, stops);
        assertNowhereShorter(before, distancesM(scene.with(more.solids().get(0)), stops));
        assertNowhereShorter(before, distancesM(scene.with(more.fences().get(0)), stops));
    }

    private static void assertNowhereShorter(double[][] before, double[][] after) {
        for (int i = 0; i < STOPS; i++) {
            for (int j = 0; j < STOPS; j++) {
                assertThat(after[i][j]).isGreaterThanOrEqualTo(before[i][j] - ROUNDING_M);
            }
        }
    }

    /** Turned and mirrored yards are looked at in another order. */
    @Property(seed = Laws.SEED, tries = 60, edgeCases = EdgeCasesMode.NONE)
    void turningOrMirroringAYardChangesNoDistance(@ForAll Scenes kind, @ForAll long seed) {
        Yards.Scene scene = kind.of(seed);
        List<Point> stops = Scenes.stops(STOPS, seed);
        double[][] before = distancesM(scene, stops);
        List<UnaryOperator<Point>> moves =
                List.of(p -> new Point(-p.y(), p.x()), p -> new Point(-p.x(), -p.y()), p -> new Point(p.y(), p.x()));
        for (UnaryOperator<Point> move : moves) {
            assertSame(
                    before, distancesM(scene.map(move), stops.stream().map(move).toList()));
        }
    }

    private static void assertSame(double[][] expected, double[][] actual) {
        for (int i = 0; i < STOPS; i++) {
            for (int j = 0; j < STOPS; j++) {
                boolean bothBlocked = Double.isInfinite(expected[i][j]) && Double.isInfinite(actual[i][j]);
                assertThat(bothBlocked ? 0 : actual[i][j])
                        .isCloseTo(bothBlocked ? 0 : expected[i][j], within(ROUNDING_M));
            }
        }
    }

    @Property(seed = Laws.SEED, tries = 20, edgeCases = EdgeCasesMode.NONE)
    void theSameYardGivesTheSameWaysToTheLastBit(@ForAll Scenes kind, @ForAll long seed) {
        List<Point> stops = Scenes.stops(STOPS, seed);
        Ways once = kind.of(seed).space().ways(stops);
        Ways again = kind.of(seed).space().ways(stops);
        assertThat(again.distancesM()).isDeepEqualTo(once.distancesM());
        assertThat(again.path(0, 1)).isEqualTo(once.path(0, 1));
    }
}
