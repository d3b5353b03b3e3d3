package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TurnTest {
    @Test
    void leftIsPositiveRightIsNegativeStraightIsZero() {
        Point a = new Point(0, 0);
        Point b = new Point(4, 0);
        assertThat(Turn.of(a, b, new Point(7, 1))).isEqualTo(1);
        assertThat(Turn.of(a, b, new Point(7, -1))).isEqualTo(-1);
        assertThat(Turn.of(a, b, new Point(-7, 0))).isZero();
        assertThat(Turn.of(a, a, b)).isZero();
    }

    /** Points a few units in the last place off a line, where a determinant in doubles is mostly noise. */
    @Test
    void signsAreThoseOfExactArithmetic() {
        Random random = new Random(1);
        for (int i = 0; i < 2000; i++) {
            Point a = new Point(100 * random.nextDouble(), 100 * random.nextDouble());
            Point b = new Point(100 * random.nextDouble(), 100 * random.nextDouble());
            Point near = a.towards(b, 2 * random.nextDouble() - 0.5);
            Point c = new Point(nudged(near.x(), random), nudged(near.y(), random));
            assertThat(Turn.of(a, b, c)).isEqualTo(exact(a, b, c));
        }
    }

    private static double nudged(double value, Random random) {
        return value + (random.nextInt(5) - 2) * Math.ulp(value);
    }

    private static int exact(Point a, Point b, Point c) {
        return minus(b.x(), a.x())
                .multiply(minus(c.y(), a.y()))
                .compareTo(minus(b.y(), a.y()).multiply(minus(c.x(), a.x())));
    }

    private static BigDecimal minus(double a, double b) {
        return new BigDecimal(a).subtract(new BigDecimal(b));
    }
}
