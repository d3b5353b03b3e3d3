package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Comparator;
import java.util.List;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StraighteningTest {
    private static final int SIDE = 200;
    private static final double TOLERANCE = 2;

    private static Ring ring(Outline outline) {
        Region region = Region.of(outline);
        Cells cells = Cells.of(SIDE, SIDE, 2, i -> {
            int row = i / SIDE;
            return region.covers(new Point(i % SIDE + 0.5, row + 0.5));
        });
        return Ring.around(cells).stream()
                .max(Comparator.comparingInt(Ring::area))
                .orElseThrow();
    }

    private static double distance(List<Point> corners, Point p) {
        return corners.stream().mapToDouble(p::distanceTo).min().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 7, 20, 31, 45, 60, 88})
    void aTurnedRectangleComesBackAsFourCorners(double degrees) {
        Outline truth = Canvas.turned(Canvas.box(50, 60, 150, 120), degrees, new Point(100, 90));
        List<Point> corners = Straightening.corners(ring(truth), TOLERANCE);
        assertThat(corners).hasSize(4);
        truth.vertices().forEach(p -> assertThat(distance(corners, p)).isLessThan(0.6));
    }

    @Test
    void anLShapedRoofComesBackSquare() {
        Outline truth =
                Canvas.turned(Outline.of(40, 40, 140, 40, 140, 90, 90, 90, 90, 150, 40, 150), 12, new Point(90, 90));
        List<Point> corners = Straightening.corners(ring(truth), TOLERANCE);
        assertThat(corners).hasSize(6);
        for (int k = 0; k < 6; k++) {
            Point a = corners.get(k);
            Point b = corners.get((k + 1) % 6);
            Point c = corners.get((k + 2) % 6);
            double along = (b.x() - a.x()) * (c.x() - b.x()) + (b.y() - a.y()) * (c.y() - b.y());
            assertThat(along / a.distanceTo(b) / b.distanceTo(c)).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void aRoundPondTakesFewVertices() {
        Ring ring = ring(Canvas.oval(100, 100, 70, 50));
        List<Point> corners = Straightening.corners(ring, TOLERANCE);
        assertThat(corners).hasSizeBetween(8, 24);
        assertThat(Canvas.iou(Outline.of(corners), Region.of(Canvas.oval(100, 100, 70, 50))))
                .isGreaterThan(0.97);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 13, 40})
    void theAreaIsThatOfTheCells(double degrees) {
        Outline odd = Outline.of(30, 50, 90, 40, 150, 70, 160, 130, 100, 100, 60, 150);
        Ring ring = ring(Canvas.turned(odd, degrees, new Point(100, 100)));
        List<Point> corners = Straightening.corners(ring, TOLERANCE);
        assertThat(Region.of(Outline.of(corners)).areaM2())
                .isCloseTo(ring.area(), withinPercentage(100 * AreaFit.ACCURACY));
    }

    @Test
    void aFewCellsAreKeptAsTheyAre() {
        assertThat(Straightening.corners(ring(Canvas.box(10, 10, 13, 12)), TOLERANCE))
                .containsExactly(new Point(10, 10), new Point(13, 10), new Point(13, 12), new Point(10, 12));
    }
}
