package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;

class RingsTest {
    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    @Test
    void aCircleHasItsAreaAndNearlyItsRadius() {
        List<Point> ring = Rings.circle(p(300, -200), 5);

        assertThat(Region.of(Outline.of(ring)).areaM2()).isCloseTo(25 * Math.PI, within(1e-9));
        assertThat(ring)
                .allSatisfy(
                        corner -> assertThat(corner.distanceTo(p(300, -200))).isCloseTo(5, within(0.0015 * 5)));
    }

    @Test
    void theLastSideCrossesOnlyIfItGoesThrough() {
        assertThat(Rings.lastSideCrosses(List.of(p(0, 0), p(4, 0), p(2, 2), p(2, -1))))
                .isTrue();
        assertThat(Rings.lastSideCrosses(List.of(p(0, 0), p(4, 0), p(2, 2), p(2, 0))))
                .isFalse();
        assertThat(Rings.lastSideCrosses(List.of(p(0, 0), p(4, 0), p(2, 2), p(0, 0))))
                .isFalse();
        assertThat(Rings.lastSideCrosses(List.of(p(0, 0), p(4, 0)))).isFalse();
        assertThat(Rings.lastSideCrosses(List.of(p(0, 0)))).isFalse();
    }
}
