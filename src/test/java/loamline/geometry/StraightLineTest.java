package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StraightLineTest {
    private static final Point ORIGIN = new Point(0, 0);
    private static final StraightLine SLOPE = StraightLine.between(ORIGIN, new Point(4, 3));

    private static Edge edge(double x0, double y0, double x1, double y1) {
        return new Edge(new Point(x0, y0), new Point(x1, y1), true, true);
    }

    @Test
    void itsDirectionHasLengthOne() {
        assertThat(SLOPE.dx()).isEqualTo(0.8);
        assertThat(SLOPE.dy()).isEqualTo(0.6);
        assertThatThrownBy(() -> StraightLine.between(ORIGIN, ORIGIN)).hasMessageContaining("no line");
    }

    @Test
    void azimuthsRunClockwiseFromNorth() {
        assertThat(StraightLine.at(ORIGIN, 0).at(2)).isEqualTo(new Point(0, 2));
        assertThat(StraightLine.at(ORIGIN, 90).at(2).distanceTo(new Point(2, 0)))
                .isLessThan(1e-15);
        assertThat(StraightLine.at(ORIGIN, 225).at(Math.sqrt(2)).distanceTo(new Point(-1, -1)))
                .isLessThan(1e-15);
    }

    @Test
    void theSquareTurnsLeft() {
        assertThat(SLOPE.square()).isEqualTo(new StraightLine(ORIGIN, -0.6, 0.8));
    }

    @Test
    void theFootOfThePerpendicularLiesOnTheLine() {
        assertThat(SLOPE.nearestTo(new Point(4 - 3, 3 + 4)).distanceTo(new Point(4, 3)))
                .isLessThan(1e-14);
        assertThat(SLOPE.alongM(new Point(-4, -3))).isCloseTo(-5, within(1e-14));
    }

    @Test
    void linesMeetUnlessTheyAreParallel() {
        StraightLine upright = new StraightLine(new Point(8, -100), 0, 1);
        assertThat(SLOPE.meets(upright).orElseThrow().distanceTo(new Point(8, 6)))
                .isLessThan(1e-13);
        assertThat(SLOPE.meets(SLOPE.through(new Point(1, 0)))).isEmpty();
        assertThat(SLOPE.meets(SLOPE)).isEmpty();
    }

    @Test
    void aLineMeetsAnEdgeWithinItsEndsOnly() {
        StraightLine level = new StraightLine(new Point(-50, 1), 1, 0);
        assertThat(level.meets(edge(3, 0, 3, 4))).contains(new Point(3, 1));
        assertThat(level.meets(edge(3, 1, 3, 4))).contains(new Point(3, 1));
        assertThat(level.meets(edge(3, 1.001, 3, 4))).isEmpty();
        assertThat(level.meets(edge(3, 1, 9, 1))).isEmpty();
        assertThat(level.meets(edge(3, 1, 3, 1))).isEmpty();
    }
}
