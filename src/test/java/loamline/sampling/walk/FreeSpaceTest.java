package loamline.sampling.walk;

import static loamline.sampling.walk.Yards.fence;
import static loamline.sampling.walk.Yards.points;
import static loamline.sampling.walk.Yards.solid;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Lengths without a source are Pythagoras on the coordinates beside them. */
class FreeSpaceTest {
    private static final double TOLERANCE_M = 1e-9;
    private static final Region HOUSE = solid(2, -5, 4, -5, 4, 5, 2, 5);

    private static Yards.Scene scene(List<Region> solids, Polyline... fences) {
        return new Yards.Scene(solids, List.of(fences), Optional.empty());
    }

    private static Yards.Scene fences(Polyline... fences) {
        return scene(List.of(), fences);
    }

    private static double distanceM(Yards.Scene scene, double x0, double y0, double x1, double y1) {
        return scene.space().ways(points(x0, y0, x1, y1)).distanceM(0, 1);
    }

    private static List<Point> path(Yards.Scene scene, double x0, double y0, double x1, double y1) {
        return scene.space()
                .ways(points(x0, y0, x1, y1))
                .path(0, 1)
                .map(Polyline::points)
                .orElse(List.of());
    }

    @Nested
    class RoundAnObstacle {
        @Test
        void aFenceIsPassedRoundItsNearerEnd() {
            Yards.Scene scene = fences(fence(5, -3, 5, 3));
            assertThat(distanceM(scene, 0, 0, 10, 0)).isCloseTo(2 * Math.sqrt(34), within(TOLERANCE_M));
            assertThat(path(scene, 0, 1, 10, 1)).isEqualTo(points(0, 1, 5, 3, 10, 1));
        }

        @Test
        void aHouseIsPassedAlongItsWall() {
            assertThat(path(scene(List.of(HOUSE)), 0, 4, 6, 4)).isEqualTo(points(0, 4, 2, 5, 4, 5, 6, 4));
        }

        @Test
        void aWayAlongWallsInLineIsStraight() {
            Yards.Scene row = scene(List.of(solid(0, 0, 2, 0, 2, 3, 0, 3), solid(4, 0, 6, 0, 6, 3, 5, 3)));
            assertThat(path(row, -1, 0, 9, 0)).isEqualTo(points(-1, 0, 9, 0));
            assertThat(row.space().isOpen(new Point(-1, 0), new Point(9, 0))).isTrue();
            assertThat(row.space().isOpen(new Point(-1, 0), new Point(9, 1))).isFalse();
        }

        @Test
        void aWayAlongAFenceIsStraightOnEitherSide() {
            Yards.Scene scene = fences(fence(0, 0, 3, 0, 6, 0));
            assertThat(path(scene, -2, 0, 9, 0)).isEqualTo(points(-2, 0, 9, 0));
            assertThat(path(scene, 0, 1, 6, -1)).isIn(points(0, 1, 0, 0, 6, -1), points(0, 1, 6, 0, 6, -1));
        }

        @Test
        void aLineThatTouchesAFreeEndOrACornerPasses() {
            Yards.Scene scene = scene(List.of(solid(2, 0, 3, 1, 2, 2, 1, 1)), fence(5, 0, 5, -4), fence(7, 0, 8, 5));
            assertThat(path(scene, 0, 0, 10, 0)).isEqualTo(points(0, 0, 10, 0));
        }

        @Test
        void openGroundHasNoEndWithoutABoundary() {
            assertThat(distanceM(fences(), 0, 0, 3000, 4000)).isEqualTo(5000);
        }

        @Test
        void obstaclesThatOverlapAreOne() {
            Yards.Scene cross = scene(List.of(solid(-3, -1, 3, -1, 3, 1, -3, 1), solid(-1, -3, 1, -3, 1, 3, -1, 3)));
            assertThat(path(cross, -2, -2, 2, -2)).isEqualTo(points(-2, -2, -1, -3, 1, -3, 2, -2));
        }
    }

    @Nested
    class NoWayBetweenThingsThatTouch {
        private static final double ROUND_THE_FREE_END_M = Math.sqrt(16.25) + Math.sqrt(39.25); // by (20,1.5)

        /** The yard's southern fence ends on the house at (20,10); see SOURCE.md of yard-12 for the length. */
        private double anchoredAt(double y) {
            Yards.Scene yard = Yards.PUBLISHED;
            return distanceM(
                    new Yards.Scene(
                            yard.solids(), List.of(yard.fences().get(0), fence(20, y, 20, 1.5)), yard.boundary()),
                    18,
                    5,
                    23,
                    7);
        }

        @Test
        void aFenceIsClosedWhereItEndsOnAHouse() {
            assertThat(anchoredAt(10)).isCloseTo(ROUND_THE_FREE_END_M, within(TOLERANCE_M));
            assertThat(anchoredAt(10.1)).isCloseTo(ROUND_THE_FREE_END_M, within(TOLERANCE_M));
        }

        @Test
        void aFenceThatMissesTheHouseByHandsBreadthIsCarriedOnToIt() {
            double justCloses = 10 - FreeSpace.MEETS_M + 1e-9;
            double justNot = 10 - FreeSpace.MEETS_M - 1e-9;
            assertThat(anchoredAt(justCloses)).isCloseTo(ROUND_THE_FREE_END_M, within(TOLERANCE_M));
            assertThat(anchoredAt(justNot))
                    .isCloseTo(Math.hypot(2, justNot - 5) + Math.hypot(3, justNot - 7), within(TOLERANCE_M));
        }

        @Test
        void aFenceIsClosedWhereItEndsOnAFence() {
            Polyline across = fence(-4, 0, 4, 0);
            assertThat(path(fences(across, fence(0, 0, 0, -3)), -1, -1, 1, -1)).isEqualTo(points(-1, -1, 0, -3, 1, -1));
            assertThat(path(fences(across, fence(0, -0.04, 0, -3)), -1, -1, 1, -1))
                    .isEqualTo(points(-1, -1, 0, -3, 1, -1));
            assertThat(path(fences(across, fence(0, -0.06, 0, -3)), -1, -1, 1, -1))
                    .hasSize(3)
                    .contains(new Point(0, -0.06));
        }

        @Test
        void aFenceIsClosedWhereItEndsOnTheBoundary() {
            Optional<Region> yard = Optional.of(solid(0, 0, 10, 0, 10, 6, 0, 6));
            for (double y : new double[] {-1, 0, 0.04}) {
                Yards.Scene scene = new Yards.Scene(List.of(), List.of(fence(5, y, 5, 4)), yard);
                assertThat(path(scene, 4, 0, 6, 0)).isEqualTo(points(4, 0, 5, 4, 6, 0));
            }
        }

        @Test
        void fencesThatCrossAreClosedWhereTheyCross() {
            Yards.Scene cross = fences(fence(-3, 0, 5, 0), fence(0, -5, 0, 4));
            assertThat(path(cross, -1, -1, 1, 1)).isEqualTo(points(-1, -1, -3, 0, 0, 4, 1, 1));
        }

        @Test
        void fencesThatShareAnEndAreClosedThere() {
            assertThat(path(fences(fence(0, 0, 0, 5), fence(0, 0, 0, -4)), -1, 0, 1, 0))
                    .isEqualTo(points(-1, 0, 0, -4, 1, 0));
            assertThat(path(fences(fence(0, 0, 3, 3), fence(0, 0, 4, -4)), 1, 0, -1, 0))
                    .isEqualTo(points(1, 0, 3, 3, -1, 0));
        }

        @Test
        void aLineThroughTwoFreeEndsThatMeetIsClosed() {
            Yards.Scene scene = fences(fence(5, 0, 4, 6), fence(5, 0, 6, -5));
            assertThat(scene.space().isOpen(new Point(0, 0), new Point(10, 0))).isFalse();
        }

        @Test
        void obstaclesThatTouchAtAPointLeaveNoWay() {
            Yards.Scene scene = scene(List.of(solid(0, 0, 2, 0, 2, 2, 0, 2), solid(2, 2, 5, 2, 5, 5, 2, 5)));
            assertThat(path(scene, 1, 3, 3, 1)).isEqualTo(points(1, 3, 0, 2, 0, 0, 2, 0, 3, 1));
        }

        @Test
        void obstaclesThatNearlyTouchLeaveNoWay() {
            for (double gapM : new double[] {1e-6, 0.04}) {
                Yards.Scene pair =
                        scene(List.of(solid(0, 0, 2, 0, 2, 2, 0, 2), solid(2 + gapM, 0, 9, 0, 9, 2, 2 + gapM, 2)));
                assertThat(path(pair, 2, -1, 2, 3)).isEqualTo(points(2, -1, 0, 0, 0, 2, 2, 3));
            }
        }

        @Test
        void aCornerThatNearlyTouchesTheMiddleOfAFenceLeavesNoWay() {
            Yards.Scene scene = scene(List.of(solid(0, 1e-6, 9, 9, -9, 9)), fence(-5, 0, 6, 0));
            assertThat(path(scene, -1, 0.5, 1, 0.5)).isEqualTo(points(-1, 0.5, -5, 0, 6, 0, 1, 0.5));
        }

        @Test
        void obstaclesThatShareASideLeaveNoWay() {
            Yards.Scene scene = scene(List.of(solid(0, 0, 2, 0, 2, 2, 0, 2), solid(2, 1, 4, 1, 4, 9, 2, 9)));
            assertThat(path(scene, 2, 0.5, 1.5, 3)).isEqualTo(points(2, 0.5, 2, 0, 0, 0, 0, 2, 1.5, 3));
        }

        @Test
        void anObstacleThatTouchesTheBoundaryAtAPointLeavesNoWay() {
            Yards.Scene scene = new Yards.Scene(
                    List.of(solid(5, 0, 7, 3, 3, 3)), List.of(), Optional.of(solid(0, 0, 10, 0, 10, 6, 0, 6)));
            assertThat(path(scene, 3, 1, 7, 1)).isEqualTo(points(3, 1, 3, 3, 7, 3, 7, 1));
        }

        @Test
        void aRingOfFenceClosesEvenIfItsEndsMissEachOther() {
            for (double gapM : new double[] {0, 0.04}) {
                Ways ways =
                        fences(fence(0, 0, 6, 0, 6, 6, 0, 6, 0, gapM)).space().ways(points(3, 3, 9, 9));
                assertThat(ways.distanceM(0, 1)).isInfinite();
            }
        }
    }

    @Nested
    class Boundary {
        private final Optional<Region> angle = Optional.of(solid(0, 0, 9, 0, 9, 9, 6, 9, 6, 3, 0, 3));

        @Test
        void theWalkStaysInside() {
            assertThat(path(new Yards.Scene(List.of(), List.of(), angle), 0, 3, 6, 9))
                    .isEqualTo(points(0, 3, 6, 3, 6, 9));
        }

        @Test
        void anObstacleAcrossTheYardDividesIt() {
            Ways ways = new Yards.Scene(List.of(solid(2, -1, 3, -1, 3, 4, 2, 4)), List.of(), angle)
                    .space()
                    .ways(points(1, 1, 5, 1, 8, 8));
            assertThat(ways.distanceM(0, 1)).isInfinite();
            assertThat(ways.distanceM(1, 2)).isFinite();
            assertThat(ways.unreachableFrom(0)).containsExactly(1, 2);
            assertThat(ways.unreachableFrom(2)).containsExactly(0);
        }

        @Test
        void aHoleInTheYardIsNotYard() {
            Region yard = solid(-9, -9, 9, -9, 9, 9, -9, 9).minus(HOUSE);
            Ways ways = new Yards.Scene(List.of(), List.of(), Optional.of(yard))
                    .space()
                    .ways(points(0, 4, 6, 4, 3, 0));
            assertThat(ways.path(0, 1)).contains(fence(0, 4, 2, 5, 4, 5, 6, 4));
            assertThat(ways.standing(2)).isEqualTo(Ways.Standing.OFF_YARD);
        }

        @Test
        void aYardInTwoPartsIsTwoYards() {
            Region parts = Region.union(List.of(solid(0, 0, 1, 0, 1, 1, 0, 1), solid(1, 1, 2, 1, 2, 2, 1, 2)));
            Ways ways = new Yards.Scene(List.of(), List.of(), Optional.of(parts))
                    .space()
                    .ways(points(0.5, 0.5, 1.5, 1.5));
            assertThat(ways.distanceM(0, 1)).isInfinite();
        }
    }

    @Nested
    class Stops {
        @Test
        void aStopInAnObstacleOrOffTheYardCannotBeReached() {
            Ways ways = new Yards.Scene(List.of(HOUSE), List.of(), Optional.of(solid(0, -9, 9, -9, 9, 9, 0, 9)))
                    .space()
                    .ways(points(1, 0, 3, 0, 20, 0, 8, 0));
            assertThat(ways.standing(0)).isEqualTo(Ways.Standing.OPEN);
            assertThat(ways.standing(1)).isEqualTo(Ways.Standing.IN_OBSTACLE);
            assertThat(ways.standing(2)).isEqualTo(Ways.Standing.OFF_YARD);
            assertThat(ways.unreachableFrom(0)).containsExactly(1, 2);
            assertThat(ways.unreachableFrom(1)).containsExactly(0, 2, 3);
            assertThat(ways.path(0, 1)).isEmpty();
            assertThat(ways.distanceM(1, 1)).isZero();
        }

        @Test
        void aStopOnAWallIsReachedAlongIt() {
            assertThat(path(scene(List.of(HOUSE)), 2, 3, 4, 4)).isEqualTo(points(2, 3, 2, 5, 4, 5, 4, 4));
            assertThat(path(scene(List.of(HOUSE)), 2, 5, 4, 5)).isEqualTo(points(2, 5, 4, 5));
        }

        @Test
        void aStopBetweenTwoObstaclesThatShareTheWallIsInThem() {
            Ways ways = scene(List.of(HOUSE, solid(4, -5, 6, -5, 6, 5, 4, 5)))
                    .space()
                    .ways(points(0, 0, 4, 0, 4, 5));
            assertThat(ways.standing(1)).isEqualTo(Ways.Standing.IN_OBSTACLE);
            assertThat(ways.distanceM(0, 2)).isCloseTo(Math.sqrt(29) + 2, within(TOLERANCE_M));
        }

        @Test
        void aStopJustInsideAWallIsReachedFromTheWallAndTheLegCounts() {
            Ways ways = scene(List.of(HOUSE)).space().ways(points(0, 0, 2.04, 0, 2.06, 0));
            assertThat(ways.distanceM(0, 1)).isCloseTo(2.04, within(TOLERANCE_M));
            assertThat(ways.strayM(1)).isCloseTo(0.04, within(TOLERANCE_M));
            assertThat(ways.path(0, 1)).contains(fence(0, 0, 2.04, 0));
            assertThat(ways.standing(2)).isEqualTo(Ways.Standing.IN_OBSTACLE);
            assertThat(scene(List.of(HOUSE)).space().isOpen(new Point(0, 0), new Point(2.04, 0)))
                    .isFalse();
        }

        @Test
        void aStopOnAFenceIsReachedFromTheSideThatReachesMore() {
            Polyline ring = fence(0, 0, 6, 0, 6, 6, 0, 6, 0, 0);
            Ways mostInside = fences(ring).space().ways(points(3, 0, 1, 1, 2, 2, 9, 9));
            assertThat(mostInside.unreachableFrom(0)).containsExactly(3);
            Ways mostOutside = fences(ring).space().ways(points(3, 0, 1, 1, 8, 8, 9, 9));
            assertThat(mostOutside.unreachableFrom(0)).containsExactly(1);
        }

        @Test
        void aStopOnAFenceIsReachedFromTheSideWithTheShorterWays() {
            for (int north : new int[] {1, -1}) {
                Ways ways = fences(fence(-9, 0, 9, 0))
                        .space()
                        .ways(points(0, 0, 0, 3 * north, 1, 4 * north, 0, -2 * north));
                assertThat(ways.distanceM(0, 1)).isEqualTo(3);
                assertThat(ways.distanceM(0, 3)).isCloseTo(9 + Math.sqrt(85), within(TOLERANCE_M));
                assertThat(ways.distanceM(1, 3)).as("not through the stop").isGreaterThan(18);
            }
        }

        @Test
        void aStopWhereObstaclesTouchIsReachedFromOneSide() {
            Yards.Scene scene = scene(List.of(solid(0, 0, 2, 0, 2, 2, 0, 2), solid(2, 2, 5, 2, 5, 5, 2, 5)));
            Ways ways = scene.space().ways(points(2, 2, 1, 3, 1.5, 2.5, 3, 1));
            assertThat(ways.distanceM(0, 1)).isCloseTo(Math.sqrt(2), within(TOLERANCE_M));
            assertThat(ways.distanceM(0, 3)).isCloseTo(2 + 2 + 2 + Math.sqrt(2), within(TOLERANCE_M));
        }

        @Test
        void stopsThatShareAPlaceAreAtNoDistance() {
            Ways ways = fences(fence(-9, 0, 9, 0)).space().ways(points(0, 0, 0, 0, 1, 1, 1, 1));
            assertThat(ways.distanceM(0, 1)).isZero();
            assertThat(ways.distanceM(2, 3)).isZero();
            assertThat(ways.path(2, 3)).contains(fence(1, 1));
            assertThat(ways.path(2, 2)).contains(fence(1, 1));
        }

        @Test
        void aStopIsNoObstacleForOtherWays() {
            Ways ways = fences().space().ways(points(0, 0, 1, 0, 2, 0));
            assertThat(ways.path(0, 2)).contains(fence(0, 0, 2, 0));
            assertThat(ways.path(2, 0)).contains(fence(2, 0, 0, 0));
        }

        @Test
        void aCourtyardIsNotReached() {
            Region round = solid(0, 0, 9, 0, 9, 9, 0, 9).minus(solid(3, 3, 6, 3, 6, 6, 3, 6));
            Ways ways = scene(List.of(round)).space().ways(points(-1, 0, 4, 4, 5, 5));
            assertThat(ways.unreachableFrom(0)).containsExactly(1, 2);
            assertThat(ways.standing(1)).isEqualTo(Ways.Standing.OPEN);
            assertThat(ways.distanceM(1, 2)).isCloseTo(Math.sqrt(2), within(TOLERANCE_M));
        }

        @Test
        void noStopsHaveNoWays() {
            Ways ways = Yards.PUBLISHED.space().ways(List.of());
            assertThat(ways.size()).isZero();
            assertThat(ways.distancesM()).isEmpty();
        }
    }

    @Test
    void aYardOfManyMetresFromItsOriginHasTheSameWays() {
        Region far = Region.of(HOUSE.outline().map(p -> p.plus(329_280, 4_425_363)));
        Ways ways = scene(List.of(far)).space().ways(points(329_280, 4_425_367, 329_286, 4_425_367));
        assertThat(ways.distanceM(0, 1)).isCloseTo(2 * Math.sqrt(5) + 2, within(TOLERANCE_M));
    }

    @Test
    void aSolidWithoutAreaIsNoObstacle() {
        assertThat(distanceM(scene(List.of(Region.of(Outline.of(1, -1, 1, 1)))), 0, 0, 2, 0))
                .isEqualTo(2);
    }
}
