package loamline.sampling.walk;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FreeSpaceOfYardTest {
    private static final Point WEST = new Point(0, 0);
    private static final Point EAST = new Point(10, 0);
    private static final double ROUND_M = 2 * Math.sqrt(5 * 5 + 3 * 3);

    private static double distanceM(Feature... features) {
        return FreeSpace.of(yard(features)).ways(List.of(WEST, EAST)).distanceM(0, 1);
    }

    private static Barrier fence(List<Barrier.Opening> gates) {
        return new Barrier("fence", Kind.FENCE, 1.8, gates, true, Yards.fence(5, -4, 5, 3), Extras.NONE);
    }

    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            names = {"BED", "WATER", "PAVING", "GRAVEL", "DECK"})
    void bedsAndWaterAreWalkedRoundAndPavingGravelAndDecksAcross(Kind kind) {
        boolean open = kind != Kind.BED && kind != Kind.WATER;
        assertThat(distanceM(cover(kind, box(4, -3, 6, 3))) == 10).isEqualTo(open);
    }

    @Test
    void buildingsAreWalkedRound() {
        assertThat(distanceM(building(box(4, -3, 6, 3)))).isCloseTo(10 + 2, within(1e-9)); // 3-4-5 twice, and 2
    }

    @Test
    void aFenceIsPassedByItsGate() {
        assertThat(distanceM(fence(List.of()))).isCloseTo(ROUND_M, within(1e-9));
        assertThat(distanceM(fence(List.of(new Barrier.Opening(4, 1))))).isEqualTo(10);
        assertThat(distanceM(fence(List.of(new Barrier.Opening(2, 1))))) // nearest post at (5, -1.5)
                .isCloseTo(2 * Math.hypot(5, 1.5), within(1e-9));
    }

    @Test
    void aGateOfNoWidthIsClosed() {
        assertThat(distanceM(fence(List.of(new Barrier.Opening(4, 0))))).isCloseTo(ROUND_M, within(1e-9));
        assertThat(distanceM(fence(List.of(new Barrier.Opening(4, FreeSpace.MEETS_M - 1e-9)))))
                .isCloseTo(ROUND_M, within(1e-9));
    }

    @Test
    void theBoundaryIsNotLeft() {
        Boundary boundary = new Boundary(
                "boundary", "", Outline.of(-1, -1, 2, -1, 2, 5, 8, 5, 8, -1, 11, -1, 11, 9, -1, 9), Extras.NONE);
        assertThat(distanceM(boundary)).isCloseTo(2 * Math.hypot(2, 5) + 6, within(1e-9));
    }

    @Test
    void aGateOutsideTheBoundaryIsReachedByAStraightWay() {
        Boundary boundary = new Boundary("boundary", "", Outline.of(box(-1, -5, 7, 5)), Extras.NONE);
        assertThat(distanceM(boundary)).isInfinite();
        assertThat(distanceM(boundary, gate(EAST.x(), EAST.y()))).isEqualTo(10);
    }

    @Test
    void aBoundaryThatEnclosesNothingIsNone() {
        assertThat(distanceM(new Boundary("boundary", "", Outline.of(0, 0, 10, 0), Extras.NONE)))
                .isEqualTo(10);
    }

    @Test
    void anEmptyYardIsOpen() {
        assertThat(distanceM()).isEqualTo(10);
    }
}
