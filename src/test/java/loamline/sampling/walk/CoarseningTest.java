package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoarseningTest {
    private static final double RADIUS_M = 20;
    private static final Optional<Region> YARD = Optional.of(Yards.solid(-50, -50, 50, -50, 50, 50, -50, 50));
    private static final List<Point> OPPOSITE = Yards.points(-40, 0, 40, 0);

    /** From 40 m to 40 m round a disc of 20 m: two tangents and a third of half the circle. */
    private static final double ROUND_M =
            2 * Math.sqrt(40 * 40 - RADIUS_M * RADIUS_M) + RADIUS_M * (Math.PI - 2 * Math.acos(RADIUS_M / 40));

    private static List<Point> circle(int vertices, double noiseM) {
        Random random = new Random(1);
        return IntStream.range(0, vertices)
                .mapToObj(i -> {
                    double radiusM = RADIUS_M + noiseM * random.nextDouble();
                    double angle = 2 * Math.PI * i / vertices;
                    return new Point(radiusM * Math.cos(angle), radiusM * Math.sin(angle));
                })
                .toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05})
    void aPondOfAHundredThousandCornersIsWalkedRoundWithinTheStatedDistance(double noiseM) {
        Region pond = Region.of(Outline.of(circle(100_000, noiseM)));
        FreeSpace space = FreeSpace.of(List.of(pond), List.of(), YARD);
        Ways ways = space.ways(OPPOSITE);
        assertThat(space.coarsenedM()).isBetween(0.01, 0.2);
        assertThat(ways.distanceM(0, 1)).isBetween(ROUND_M, ROUND_M + 2 * Math.PI * (space.coarsenedM() + noiseM));
        Polyline path = ways.path(0, 1).orElseThrow();
        for (double alongM = 0; alongM < path.lengthM(); alongM += 0.05) {
            assertThat(pond.holdsInside(path.at(alongM))).isFalse();
        }
    }

    @Test
    void theBoundaryAndFencesAreNotCrossedEither() {
        List<Point> ring = circle(20_000, 0.001);
        Region lot = Region.of(Outline.of(ring));
        List<Polyline> fence = List.of(new Polyline(ring.subList(0, 10_001))); // the northern half, free at both ends
        FreeSpace inside = FreeSpace.of(List.of(), List.of(Yards.fence(0, -25, 0, 10)), Optional.of(lot));
        Polyline path = inside.ways(Yards.points(-9, 0, 9, 0)).path(0, 1).orElseThrow();
        assertThat(path.points()).allMatch(lot::covers);
        assertThat(path.lengthM()).isBetween(2 * Math.hypot(9, 10), 2 * Math.hypot(9, 10) + 1);

        Ways acrossFence = FreeSpace.of(List.of(), fence, YARD).ways(Yards.points(0, 19, 0, 21));
        double straightToTheEndM = Math.hypot(19, RADIUS_M);
        double roundFromTheEndM =
                RADIUS_M * (Math.PI / 2 - Math.acos(RADIUS_M / 21)) + Math.sqrt(21 * 21 - RADIUS_M * RADIUS_M);
        assertThat(acrossFence.distanceM(0, 1))
                .isBetween(straightToTheEndM + roundFromTheEndM, straightToTheEndM + roundFromTheEndM + 0.5);
    }

    @Test
    void aStopAtAWallThatWasMovedIsStillReached() {
        List<Point> shore = circle(8_000, 0.3);
        FreeSpace space = FreeSpace.of(List.of(Region.of(Outline.of(shore))), List.of(), YARD);
        Ways ways = space.ways(List.of(shore.get(0), new Point(40, 0)));
        assertThat(space.coarsenedM()).isGreaterThan(FreeSpace.MEETS_M);
        assertThat(ways.strayM(0)).isBetween(FreeSpace.MEETS_M, space.coarsenedM());
        assertThat(ways.distanceM(0, 1)).isCloseTo(40 - shore.get(0).x(), within(space.coarsenedM()));
    }

    @Test
    void noCornerOfTheOldWallsLiesOnTheNewGround() {
        List<Point> shore = circle(10_000, 0.05);
        Region pond = Region.of(Outline.of(shore));
        List<Polyline> fence = List.of(new Polyline(circle(5_000, 0.05).stream()
                .map(p -> p.plus(45, 0))
                .filter(YARD.get()::covers)
                .toList()));
        for (Optional<Region> boundary : List.of(YARD, Optional.<Region>empty())) {
            Coarsening coarse = Coarsening.of(Ground.of(pond, boundary), fence, 1000);
            assertThat(shore).noneMatch(coarse.ground()::holds);
            assertThat(fence.get(0).points()).noneMatch(coarse.ground()::holds);
        }
    }

    @Test
    void obstaclesFarApartThatStayTooManyLeaveNoGround() {
        Region posts = Region.union(IntStream.range(0, 10)
                .mapToObj(i -> Yards.solid(1e6 * i, 0, 1e6 * i + 1, 0, 1e6 * i, 1))
                .toList());
        Coarsening none = Coarsening.of(Ground.of(posts, Optional.empty()), List.of(), 15);
        assertThat(none.movedM()).isInfinite();
        assertThat(none.ground().holds(new Point(0, -9))).isFalse();
    }
}
