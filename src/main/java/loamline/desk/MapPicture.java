package loamline.desk;

import java.awt.image.BufferedImage;
import java.util.Optional;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.scene.SceneOptions;
import loamline.scene.YardScene;
import loamline.sheets.Fonts;
import loamline.sheets.ImagePainter;
import loamline.units.UnitSystem;

/**
 * A picture of the map as it stood when it was asked for; drawn off the screen's thread.
 *
 * @param viewport what it shows
 * @param image its pixels
 */
record MapPicture(Viewport viewport, WritableImage image) {
    /** Draws the picture of some results. */
    static MapPicture of(
            Results results, Viewport viewport, Palette palette, UnitSystem units, double pixelScale, Fonts fonts) {
        SceneOptions options =
                SceneOptions.usual(viewport.view(), fonts).with(palette).with(units);
        var scene = YardScene.of(results.yard(), results.zones(), Optional.of(results.plan()), options);
        BufferedImage drawn = new ImagePainter(fonts, 96 * pixelScale, palette.of(Role.PAPER)).image(scene);
        int width = drawn.getWidth();
        int height = drawn.getHeight();
        int[] argb = drawn.getRGB(0, 0, width, height, null, 0, width);
        WritableImage image = new WritableImage(width, height);
        image.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        return new MapPicture(viewport, image);
    }
}
