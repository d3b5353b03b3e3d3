package loamline.sampling.walk;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.ShortestPaths;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class FreeSpaceTest {
    static final double TOLERANCE_M = 1e-9;

    static Barrier fence(String key, List<Barrier.Opening> gates, double... xy) {
        List<Point> points = IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Point(xy[2 * i], xy[2 * i + 1]))
                .toList();
        return new Barrier(key, Kind.FENCE, 1.8, gates, true, new Polyline(points), Extras.NONE);
    }

    static Barrier fence(double... xy) {
        return fence("fence " + xy[0] + " " + xy[1] + " " + xy[2], List.of(), xy);
    }

    /** The yard of the worked walking instance: house, two beds, pool, two fences. */
    static Yard workedYard() {
        return yard(
                new Boundary("lot", "", Outline.of(box(0, 0, 40, 30)), Extras.NONE),
                building(12, 10, 26, 10, 26, 14, 20, 14, 20, 20, 12, 20),
                cover(Kind.BED, 4, 5, 7, 4, 8, 7, 5, 8),
                cover(Kind.BED, 30, 20, 35, 19, 36, 23, 33, 25, 30, 24),
                cover(Kind.WATER, box(30, 6, 36, 11)),
                fence(16, 20, 16, 30),
                fence(20, 10, 20, 1.5));
    }

    private static double lengthM(Yard yard, double x0, double y0, double x1, double y1) {
        return FreeSpace.of(yard)
                .paths(List.of(new Point(x0, y0), new Point(x1, y1)))
                .lengthM(0, 1);
    }

    @Test
    void roundAFreeStandingFence() {
        // 2 √34, by hand
        assertThat(lengthM(yard(fence(5, -3, 5, 3)), 0, 0, 10, 0)).isCloseTo(2 * Math.sqrt(34), within(TOLERANCE_M));
    }

    @Test
    void notThroughThePlaceWhereAFenceMeetsTheHouse() {
        // round the free end at (20, 1.5): 10.296111; squeezed through the anchor it would be 9.627805
        double expected = Math.hypot(2, 3.5) + Math.hypot(3, 5.5);
        assertThat(expected).isCloseTo(10.296111, within(1e-6));
        assertThat(lengthM(workedYard(), 18, 5, 23, 7)).isCloseTo(expected, within(TOLERANCE_M));
    }

    @Test
    void alongBothSidesOfAFenceButNotThroughIt() {
        Yard yard = yard(fence(0, 0, 10, 0));
        assertThat(lengthM(yard, 2, 0, 8, 0)).isCloseTo(6, within(TOLERANCE_M));
        assertThat(lengthM(yard, 2, 1, 2, -1)).isCloseTo(2 * Math.sqrt(5), within(TOLERANCE_M));
    }

    @Test
    void notThroughACornerOfTwoFences() {
        Yard yard = yard(
                new Boundary("lot", "", Outline.of(box(-10, -10, 10, 10)), Extras.NONE),
                fence(0, 0, 10, 0),
                fence(0, 0, 0, 10));
        assertThat(lengthM(yard, 1, 1, -1, -1)).isInfinite();
    }

    @Test
    void notThroughACrossingOfTwoFences() {
        Yard yard = yard(fence(-5, 0, 5, 0), fence(0, -5, 0, 5));
        // from one quarter into the opposite one: round two free ends
        assertThat(lengthM(yard, 1, 1, -1, -1)).isCloseTo(2 * Math.sqrt(17) + 5 * Math.sqrt(2), within(TOLERANCE_M));
    }

    @Test
    void notBetweenTwoBedsThatTouchAtACorner() {
        Yard yard = yard(
                new Boundary("lot", "", Outline.of(box(0, 0, 10, 10)), Extras.NONE),
                cover(Kind.BED, box(0, 0, 5, 5)),
                cover(Kind.BED, box(5, 5, 10, 10)));
        assertThat(lengthM(yard, 1, 8, 8, 1)).isInfinite();
    }

    @Test
    void throughAGateInTheFence() {
        Yard yard = yard(
                new Boundary("lot", "", Outline.of(box(0, 0, 20, 20)), Extras.NONE),
                fence("f", List.of(new Barrier.Opening(15, 2)), 0, 10, 20, 10));
        assertThat(lengthM(yard, 4, 8, 4, 12)).isCloseTo(2 * Math.hypot(10, 2), within(TOLERANCE_M));
    }

    @Test
    void aFenceThatStopsAHandsBreadthShortOfTheHouseIsClosed() {
        Yard yard = yard(
                new Boundary("lot", "", Outline.of(box(0, 0, 20, 20)), Extras.NONE),
                building(box(8, 8, 12, 12)),
                fence(0, 10, 7.96, 10),
                fence(12.03, 10, 20, 10));
        assertThat(lengthM(yard, 4, 5, 4, 15)).isInfinite();
    }

    @Test
    void aWiderGapIsAWayThrough() {
        Yard yard = yard(
                new Boundary("lot", "", Outline.of(box(0, 0, 20, 20)), Extras.NONE),
                building(box(8, 8, 12, 12)),
                fence(0, 10, 7, 10),
                fence(12, 10, 20, 10));
        assertThat(lengthM(yard, 7.5, 9, 7.5, 11)).isCloseTo(2, within(TOLERANCE_M));
    }

    @Test
    void aStopInsideAHouseIsNotReached() {
        assertThat(lengthM(yard(building(box(0, 0, 4, 4))), 2, 2, 9, 9)).isInfinite();
    }

    @Test
    void aStopOnAHouseWallIsReached() {
        assertThat(lengthM(yard(building(box(0, 0, 4, 4))), 4, 2, 9, 2)).isCloseTo(5, within(TOLERANCE_M));
    }

    @Test
    void pathsTurnOnlyAtCorners() {
        ShortestPaths paths =
                FreeSpace.of(yard(building(box(0, 0, 4, 4)))).paths(List.of(new Point(-1, 2), new Point(5, 3)));
        assertThat(paths.path(0, 1))
                .containsExactly(new Point(-1, 2), new Point(0, 4), new Point(4, 4), new Point(5, 3));
        assertThat(paths.path(0, 0)).containsExactly(new Point(-1, 2));
    }

    @Test
    void anOutlineOfAHundredThousandPointsIsWalkedRound() {
        double[] xy = new double[200_000];
        for (int i = 0; i < 100_000; i++) {
            double angle = 2 * Math.PI * i / 100_000;
            xy[2 * i] = 10 * Math.cos(angle);
            xy[2 * i + 1] = 10 * Math.sin(angle);
        }
        // two tangents and the arc between them, by hand
        double byHand = 2 * Math.sqrt(300) + 10 * (Math.PI - 2 * Math.acos(0.5));
        double walked = lengthM(yard(cover(Kind.WATER, xy)), -20, 0, 20, 0);
        assertThat(walked).isBetween(byHand - 0.001, byHand + 0.2);
    }

    @Test
    void moreObstaclesNeverMakeTheWayShorter() {
        List<Feature> features = new ArrayList<>();
        double before = 0;
        java.util.Random random = new java.util.Random(3);
        for (int i = 0; i < 25; i++) {
            double x = 5 + 30 * random.nextDouble();
            double y = 30 * random.nextDouble();
            features.add(i % 3 == 0 ? fence(x, y, x + 3, y + 4) : building(box(x, y, x + 3, y + 2)));
            double now = lengthM(yard(features.toArray(Feature[]::new)), 0, 15, 45, 15);
            assertThat(now).isGreaterThanOrEqualTo(before - TOLERANCE_M);
            before = now;
        }
    }
}
