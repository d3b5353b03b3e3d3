package loamline.desk.map;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import loamline.desk.session.Results;
import loamline.geometry.Point;
import loamline.scene.Layer;
import loamline.scene.Mark;
import loamline.scene.NorthArrow;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.scene.ScaleBar;
import loamline.scene.Scene;
import loamline.scene.SceneOptions;
import loamline.scene.View;
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
    private static final double MARGIN_MM = 6;
    private static final double BAR_MM = 40;

    /** Draws the picture of some results. */
    static MapPicture of(
            Results results, Viewport viewport, Palette palette, UnitSystem units, double pixelScale, Fonts fonts) {
        SceneOptions options =
                SceneOptions.usual(viewport.view(), fonts).with(palette).with(units);
        Scene yard = YardScene.of(results.yard(), results.zones(), results.plan(), options);
        BufferedImage drawn =
                new ImagePainter(fonts, 96 * pixelScale, palette.of(Role.PAPER)).image(withFurniture(yard, options));
        int width = drawn.getWidth();
        int height = drawn.getHeight();
        int[] argb = drawn.getRGB(0, 0, width, height, null, 0, width);
        WritableImage image = new WritableImage(width, height);
        image.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        return new MapPicture(viewport, image);
    }

    /** The scene with a scale bar in its lower left and a north arrow in its lower right corner. */
    private static Scene withFurniture(Scene scene, SceneOptions options) {
        View view = scene.view();
        double bottomMm = view.paper().heightMm() - MARGIN_MM;
        List<Mark> marks = new ArrayList<>(scene.layer(Layer.LABELS));
        marks.addAll(ScaleBar.of(view, options.units(), BAR_MM)
                .marks(view.onGround(new Point(MARGIN_MM, bottomMm)), options));
        marks.addAll(
                NorthArrow.marks(view.onGround(new Point(view.paper().widthMm() - 2 * MARGIN_MM, bottomMm)), options));
        Map<Layer, List<Mark>> layers = new EnumMap<>(scene.layers());
        layers.put(Layer.LABELS, marks);
        return new Scene(view, layers);
    }
}
