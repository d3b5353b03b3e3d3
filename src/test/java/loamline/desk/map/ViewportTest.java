package loamline.desk.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import loamline.geometry.Box;
import loamline.geometry.Point;
import org.junit.jupiter.api.Test;

class ViewportTest {
    private final Viewport viewport = Viewport.fitting(new Box(0, 0, 40, 30), 800, 600);

    @Test
    void aFittedYardLiesWholeInTheWindow() {
        assertThat(viewport.xPx(new Point(0, 0))).isBetween(0.0, 60.0);
        assertThat(viewport.yPx(new Point(0, 0))).isBetween(540.0, 600.0);
        assertThat(viewport.xPx(new Point(40, 30))).isBetween(740.0, 800.0);
    }

    @Test
    void pixelsAndPlacesGoBothWays() {
        Point place = viewport.ground(123, 456);
        assertThat(viewport.xPx(place)).isCloseTo(123, within(1e-9));
        assertThat(viewport.yPx(place)).isCloseTo(456, within(1e-9));
    }

    @Test
    void zoomingKeepsThePlaceUnderThePointer() {
        Point place = viewport.ground(200, 150);
        Viewport nearer = viewport.zoomed(3, 200, 150);
        assertThat(nearer.metresPerPx()).isCloseTo(viewport.metresPerPx() / 3, within(1e-12));
        assertThat(nearer.xPx(place)).isCloseTo(200, within(1e-9));
        assertThat(nearer.yPx(place)).isCloseTo(150, within(1e-9));
    }

    @Test
    void draggingTakesTheGroundAlong() {
        Point place = viewport.ground(100, 100);
        Viewport moved = viewport.moved(30, -20);
        assertThat(moved.xPx(place)).isCloseTo(130, within(1e-9));
        assertThat(moved.yPx(place)).isCloseTo(80, within(1e-9));
    }

    @Test
    void zoomStopsAtItsLimits() {
        assertThat(viewport.zoomed(1e9, 1, 1).metresPerPx()).isEqualTo(0.002);
        assertThat(viewport.zoomed(1e-9, 1, 1).metresPerPx()).isEqualTo(10);
    }

    @Test
    void theSceneSeesTheSameWindow() {
        assertThat(viewport.view().paper().widthMm()).isCloseTo(800 * 25.4 / 96, within(1e-9));
        assertThat(viewport.view().onGround(new Point(0, 0)).distanceTo(viewport.ground(0, 0)))
                .isLessThan(1e-9);
    }
}
