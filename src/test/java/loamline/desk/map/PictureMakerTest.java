package loamline.desk.map;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loamline.desk.session.Results;
import loamline.files.ImageOverview;
import loamline.files.ImagePixels;
import loamline.geometry.Point;
import loamline.scene.Layer;
import loamline.scene.Palette;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.Extras;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class PictureMakerTest {
    private static final Viewport WINDOW = new Viewport(new Point(0, 0), 0.1, 200, 100);
    private static final int PAPER = 0xFAF8F3;
    private static final int TURF = 0xDCE9CE;
    private static final Yard LAWN = yard(turf("front", box(-8, -4, 0, 4)));

    private final PictureMaker maker = new PictureMaker();

    static MapPicture.Content content(Yard yard, Optional<ImagePixels> pixels) {
        return new MapPicture.Content(
                Results.ground(yard),
                Optional.empty(),
                Found.NOTHING,
                pixels,
                Set.of(Layer.TURF),
                true,
                Palette.LIGHT,
                UnitSystem.METRIC);
    }

    /** A red image of 10 m by 5 m whose upper left corner is at (-10, 5), its pixels 0.5 m. */
    private static Yard imaged(Yard yard, double opacity) {
        Backdrop.Placement placement = new Backdrop.Placement(0.5, 0, -10, 0, -0.5, 5);
        return yard.withBackdrop(
                Optional.of(new Backdrop("a.png", 40, 10, placement, 0, opacity, List.of(), Extras.NONE)));
    }

    private static Optional<ImagePixels> red() {
        BufferedImage image = new BufferedImage(40, 10, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.RED);
        graphics.fillRect(0, 0, 40, 10);
        graphics.dispose();
        return Optional.of(new ImageOverview(40, 10, 1, image));
    }

    private int pixel(MapPicture.Content what, int x, int y) {
        return maker.draw(new MapPicture.Ask(1, WINDOW, 1, what)).getRGB(x, y) & 0xFFFFFF;
    }

    @Test
    void withoutAnImageTheTurfHidesThePaper() {
        MapPicture.Content what = content(LAWN, Optional.empty());
        assertThat(pixel(what, 60, 50)).isEqualTo(TURF);
        assertThat(pixel(what, 150, 50)).isEqualTo(PAPER);
    }

    @Test
    void overAnImageTheTurfIsSeeThrough() {
        MapPicture.Content what = content(imaged(LAWN, 1), red());
        assertThat(pixel(what, 60, 30)).isNotIn(TURF, 0xFF0000);
        assertThat(pixel(what, 150, 30)).as("on the image alone").isEqualTo(0xFF0000);
        assertThat(pixel(what, 150, 70)).as("below the image").isEqualTo(PAPER);
    }

    @Test
    void anImageCanBeFaint() {
        Color half = new Color(pixel(content(imaged(LAWN, 0.5), red()), 150, 30));
        assertThat(half.getRed()).isGreaterThan(0xFA);
        assertThat(half.getGreen()).isBetween(0x78, 0x80);
    }

    @Test
    void aHiddenImageIsNotDrawn() {
        MapPicture.Content shown = content(imaged(LAWN, 1), red());
        MapPicture.Content hidden = new MapPicture.Content(
                shown.results(),
                shown.plan(),
                shown.found(),
                shown.pixels(),
                shown.layers(),
                false,
                shown.palette(),
                shown.units());
        assertThat(pixel(shown, 150, 30)).isEqualTo(0xFF0000);
        assertThat(pixel(hidden, 150, 30)).isEqualTo(PAPER);
        assertThat(pixel(hidden, 60, 30)).isEqualTo(TURF);
    }

    @Test
    void anImageLiesWhereItsPlacementSays() {
        Backdrop turned = new Backdrop(
                "a.png", 40, 20, new Backdrop.Placement(0, 0.5, 1, 0.5, 0, 2), 0, 1, List.of(), Extras.NONE);
        ImagePixels half = new ImageOverview(20, 10, 1, new BufferedImage(20, 10, BufferedImage.TYPE_INT_RGB));
        AffineTransform to = PictureMaker.toDevice(turned, half, WINDOW, 2);
        var at = to.transform(new java.awt.geom.Point2D.Double(10, 5), null);
        Point ground = new Point(0.5 * 10 + 1, 0.5 * 20 + 2);
        assertThat(at.getX()).isEqualTo(2 * WINDOW.xPx(ground));
        assertThat(at.getY()).isEqualTo(2 * WINDOW.yPx(ground));
    }
}
