package loamline.desk.map;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import loamline.desk.session.Results;
import loamline.geometry.Point;
import loamline.scene.Ink;
import loamline.scene.Legend;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.scene.SceneOptions;
import loamline.units.UnitSystem;

/** The sign of a layer beside its name: the first thing of the yard's legend that lies in the layer. */
final class LayerSign extends Canvas {
    private static final double WIDTH_PX = Math.ceil(Legend.SAMPLE.widthMm() * Viewport.PX_PER_MM);
    private static final double HEIGHT_PX = Math.ceil(Legend.SAMPLE.heightMm() * Viewport.PX_PER_MM);

    private final MapLayer layer;

    LayerSign(MapLayer layer) {
        super(WIDTH_PX, HEIGHT_PX);
        this.layer = layer;
    }

    void draw(Results results, Palette palette, ScreenText text) {
        GraphicsContext graphics = getGraphicsContext2D();
        graphics.clearRect(0, 0, WIDTH_PX, HEIGHT_PX);
        switch (layer) {
            case IMAGE -> drawImage(graphics, palette);
            case OUTLINES -> drawSwatch(graphics, palette.of(Role.TURF), palette.of(Role.TURF_EDGE));
            case LABELS -> drawLetters(graphics, palette);
            default -> {
                SceneOptions options = SceneOptions.usual(Legend.view(), text)
                        .with(palette)
                        .with(UnitSystem.US)
                        .with(layer.drawn());
                Legend.of(results.yard(), results.plan(), options).stream()
                        .findFirst()
                        .ifPresent(entry -> entry.sample().paint(new ScreenCanvas(graphics), new Point(0, 0)));
            }
        }
    }

    private static void drawSwatch(GraphicsContext graphics, Ink wash, Ink edge) {
        graphics.setFill(ScreenCanvas.color(wash));
        graphics.setStroke(ScreenCanvas.color(edge));
        graphics.setLineWidth(1);
        graphics.fillRect(1.5, 1.5, WIDTH_PX - 3, HEIGHT_PX - 3);
        graphics.strokeRect(1.5, 1.5, WIDTH_PX - 3, HEIGHT_PX - 3);
    }

    /** Ground, crowns and a roof, as an aerial image has them. */
    private static void drawImage(GraphicsContext graphics, Palette palette) {
        drawSwatch(graphics, palette.of(Role.CROWN), palette.of(Role.SOFT));
        graphics.setFill(ScreenCanvas.color(palette.of(Role.BUILDING)));
        graphics.fillRect(13, 4, 9, 6);
        graphics.setFill(ScreenCanvas.color(palette.of(Role.CROWN_EDGE)));
        graphics.fillOval(4, 4, 6, 6);
        graphics.fillOval(8, 9, 5, 5);
    }

    private static void drawLetters(GraphicsContext graphics, Palette palette) {
        graphics.setFill(ScreenCanvas.color(palette.of(Role.INK)));
        graphics.setFont(ScreenCanvas.font(12, true));
        graphics.fillText("Abc", 2, HEIGHT_PX - 4);
    }
}
