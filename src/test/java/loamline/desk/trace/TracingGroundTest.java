package loamline.desk.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.tracing.Doubt;
import loamline.tracing.Pixel;
import loamline.yard.Backdrop;
import loamline.yard.Backdrop.Placement;
import loamline.yard.Extras;
import org.junit.jupiter.api.Test;

/** Between pixels and ground: windows, neighbours, and the words for sides. */
class TracingGroundTest {
    private static final Placement NORTH_UP = new Placement(0.025, 0, 0, 0, -0.025, 400);
    private static final Region LOT = Region.of(new Box(0, 0, 20, 20).outline());

    private static Backdrop image(int widthPx, int heightPx) {
        return new Backdrop("a.png", widthPx, heightPx, NORTH_UP, 0, 1, List.of(), Extras.NONE);
    }

    @Test
    void cornersNearANeighbourShareItsEdge() {
        Region drive = Region.of(new Box(0, 0, 5, 20).outline());
        Outline traced = Outline.of(5.08, 0.05, 15, 0.02, 15, 20.04, 4.95, 19.93);
        Region fitted = Abutting.fit(traced, Optional.of(LOT), List.of(drive), 0.1);
        assertThat(fitted.areaM2()).isCloseTo(200, within(1e-6));
        assertThat(fitted.intersection(drive).areaM2()).isZero();
        assertThat(fitted.outline().vertices().count()).isEqualTo(4);
    }

    @Test
    void whatLiesOnANeighbourOrBeyondTheLotIsCutOff() {
        Region drive = Region.of(new Box(0, 0, 5, 20).outline());
        Region fitted = Abutting.fit(Outline.of(2, 5, 30, 5, 30, 9, 2, 9), Optional.of(LOT), List.of(drive), 0.1);
        assertThat(fitted).isEqualTo(Region.of(new Box(5, 5, 20, 9).outline()));
    }

    @Test
    void scrapsLeftByFittingAreDropped() {
        Region bed = Region.of(new Box(8, 0, 19.9, 20).outline());
        Region fitted = Abutting.fit(Outline.of(0, 0, 20, 0, 20, 2, 0, 2), Optional.of(LOT), List.of(bed), 0.01);
        assertThat(fitted).isEqualTo(Region.of(new Box(0, 0, 8, 2).outline()));
    }

    @Test
    void aSmallImageIsLookedAtWhole() {
        PixelWindow window = PixelWindow.of(image(2000, 1000), List.of(), List.of(new Point(1, 399)));
        assertThat(window.width()).isEqualTo(2000);
        assertThat(window.step()).isEqualTo(1);
    }

    @Test
    void ofALargeImageTheLotOrTheGroundRoundTheClicksIsLookedAt() {
        Backdrop large = image(20_000, 10_000);
        Box lot = new Box(100, 300, 130, 330);
        PixelWindow byLot = PixelWindow.of(large, List.of(lot), List.of(new Point(110, 310)));
        assertThat(byLot.part().width).isBetween(1360, 1362);
        PixelWindow beyond = PixelWindow.of(large, List.of(lot), List.of(new Point(200, 310)));
        assertThat(beyond.step()).isEqualTo(2);
        assertThat(beyond.width() * beyond.height()).isLessThanOrEqualTo(PixelWindow.MOST_PIXELS);
        assertThat(beyond.holds(List.of(new Point(200, 310)))).isTrue();
        assertThat(beyond.holds(List.of(new Point(100, 310)))).isFalse();
        // by hand: the window begins 40 m west of the click at column 6400, and 40 m north of it at row 2000
        assertThat(beyond.pixels(List.of(new Point(200, 310)))).containsExactly(new Pixel(800, 800));
        Outline square = Outline.of(190, 300, 210, 300, 210, 320, 190, 320);
        assertThat(beyond.onGround(beyond.onWindow(square))
                        .vertices()
                        .findFirst()
                        .orElseThrow()
                        .distanceTo(new Point(190, 300)))
                .isLessThan(1e-9);
    }

    @Test
    void clicksOffTheImageHaveNoPixel() {
        PixelWindow window = PixelWindow.of(image(20_000, 10_000), List.of(), List.of(new Point(-500, 310)));
        assertThat(window.isEmpty()).isTrue();
        assertThat(window.pixels(List.of(new Point(-500, 310)))).isEmpty();
    }

    @Test
    void sidesAreNamedByTheCompassHoweverTheImageLies() {
        assertThat(DoubtWords.compass(Doubt.Side.TOP, NORTH_UP)).isEqualTo("north");
        assertThat(DoubtWords.compass(Doubt.Side.LEFT, NORTH_UP)).isEqualTo("west");
        Placement quarter = new Placement(0, -0.1, 0, -0.1, 0, 0);
        assertThat(DoubtWords.compass(Doubt.Side.TOP, quarter)).isEqualTo("east");
        assertThat(DoubtWords.compass(Doubt.Side.RIGHT, quarter)).isEqualTo("south");
        Doubt faint = new Doubt(Doubt.Kind.FAINT, Optional.of(Doubt.Side.BOTTOM), 0.123);
        assertThat(DoubtWords.of(faint, NORTH_UP))
                .isEqualTo("The south side is not clear (12 % of the border): check it by eye.");
    }
}
