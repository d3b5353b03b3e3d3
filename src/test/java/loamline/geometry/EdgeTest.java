package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EdgeTest {
    private final Edge edge = new Edge(new Point(1, 1), new Point(5, 1), true, false);

    @Test
    void theNearestPlaceIsTheFootOfThePerpendicularOrAnEnd() {
        assertThat(edge.nearestTo(new Point(2, 4))).isEqualTo(new Point(2, 1));
        assertThat(edge.nearestTo(new Point(-3, 4))).isEqualTo(new Point(1, 1));
        assertThat(edge.nearestTo(new Point(6, 0))).isEqualTo(new Point(5, 1));
        assertThat(edge.distanceTo(new Point(-2, 5))).isEqualTo(5);
    }

    @Test
    void anEdgeWithoutLengthIsNearestAtItsOnlyPlace() {
        Edge dot = edge.with(edge.from(), edge.from());
        assertThat(dot.nearestTo(new Point(9, 9))).isEqualTo(edge.from());
        assertThat(dot.lengthM()).isZero();
    }
}
