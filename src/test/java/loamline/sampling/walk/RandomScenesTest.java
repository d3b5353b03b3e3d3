package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import loamline.geometry.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Random yards against other programs and against arithmetic without rounding. */
class RandomScenesTest {
    private static final int STOPS = 6;

    private static final double ROUNDING_M = 1e-9;

    @ParameterizedTest
    @EnumSource(Scenes.class)
    void distancesAreThoseRoundThickWalls(Scenes kind) {
        int compared = 0;
        for (long seed : seeds(kind, 24)) {
            Yards.Scene scene = kind.of(seed);
            List<Point> stops = Scenes.stops(STOPS, seed);
            double[][] thick = ThickWalls.distancesM(scene, stops);
            Ways ways = scene.space().ways(stops);
            for (int i = 0; i < STOPS; i++) {
                for (int j = 0; j < i; j++) {
                    if (ways.strayM(i) + ways.strayM(j) > 0) {
                        continue; // in an obstacle to thick walls
                    }
                    String way = kind + " " + seed + ": from " + i + " to " + j;
                    double distanceM = ways.distanceM(i, j);
                    assertThat(Double.isFinite(thick[i][j])).as(way).isEqualTo(Double.isFinite(distanceM));
                    if (Double.isFinite(distanceM)) {
                        int bends = ways.path(i, j).orElseThrow().points().size() - 2;
                        assertThat(thick[i][j])
                                .as(way)
                                .isBetween(
                                        distanceM - ROUNDING_M,
                                        distanceM + ROUNDING_M + bends * ThickWalls.LONGER_BY_BEND_M);
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).as("pairs with a way").isGreaterThan(100);
    }

    @ParameterizedTest
    @EnumSource(Scenes.class)
    void pathsAreAsLongAsTheirDistanceAndCrossNothing(Scenes kind) {
        for (long seed : seeds(kind, 30)) {
            Yards.Scene scene = kind.of(seed);
            List<Point> stops = Scenes.stops(STOPS, seed);
            Ways ways = scene.space().ways(stops);
            for (int i = 0; i < STOPS; i++) {
                for (int j = 0; j < i; j++) {
                    double distanceM = ways.distanceM(i, j);
                    boolean strays = ways.strayM(i) + ways.strayM(j) > 0;
                    String way = kind + " " + seed + ": from " + i + " to " + j;
                    assertThat(ways.path(i, j).isPresent()).as(way).isEqualTo(Double.isFinite(distanceM));
                    ways.path(i, j).ifPresent(path -> {
                        assertThat(path.lengthM()).as(way).isCloseTo(distanceM, within(ROUNDING_M));
                        assertThat(strays ? Optional.empty() : ExactCheck.fault(scene, path))
                                .as(way)
                                .isEmpty();
                    });
                    assertThat(ways.path(i, j).map(path -> path.points().get(0)).orElse(stops.get(i)))
                            .isEqualTo(stops.get(i));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Scenes.class)
    void noWalkOnAGridIsShorter(Scenes kind) {
        for (long seed : seeds(kind, 12)) {
            Yards.Scene scene = kind.of(seed);
            List<Point> stops = GridWalk.stops(STOPS, seed);
            Ways ways = scene.space().ways(stops);
            for (int i = 0; i < STOPS; i++) {
                double[] gridM = GridWalk.distancesM(scene, stops, i);
                for (int j = 0; j < STOPS; j++) {
                    assertThat(ways.distanceM(i, j))
                            .as("%s %d: from %d to %d", kind, seed, i, j)
                            .isLessThanOrEqualTo(gridM[j] + ROUNDING_M);
                }
            }
        }
    }

    /** The first seeds whose yards have no gap that is too narrow to walk: other programs would let one pass. */
    private static List<Long> seeds(Scenes kind, int count) {
        return LongStream.iterate(0, seed -> seed + 1)
                .filter(seed -> !kind.of(seed).hasNarrowGap())
                .limit(count)
                .boxed()
                .toList();
    }
}
