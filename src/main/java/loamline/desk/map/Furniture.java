package loamline.desk.map;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import loamline.geometry.Point;
import loamline.scene.Mark;
import loamline.scene.NorthArrow;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.scene.ScaleBar;
import loamline.scene.Scene;
import loamline.scene.SceneOptions;
import loamline.scene.TextMeasure;
import loamline.scene.View;
import loamline.units.UnitSystem;

/** Scale bar and north arrow: always in sight, drawn again only when the scale changes. */
final class Furniture {
    /** Room the bar takes at the left of the map's lower edge, pixels. */
    static final double BAR_PX = 212;

    /** Room the arrow takes at the right. */
    static final double NORTH_PX = 44;

    private static final double HEIGHT_PX = 60;
    private static final double FOOT_PX = 18;
    private static final double CARD_PX = 10;
    private static final double CARD_OPACITY = 0.8;

    /** The last number and its unit stand out beyond the bar. */
    private static final double LAST_NUMBER_PX = 26;

    private static final double LEFT_PX = 20;
    private static final double BAR_MM = 40;

    private final Canvas bar = canvas(BAR_PX);
    private final Canvas north = canvas(NORTH_PX);

    private static Canvas canvas(double widthPx) {
        Canvas canvas = new Canvas(widthPx, HEIGHT_PX);
        canvas.setManaged(false);
        canvas.setMouseTransparent(true);
        return canvas;
    }

    Canvas bar() {
        return bar;
    }

    Canvas north() {
        return north;
    }

    void place(double widthPx, double heightPx) {
        bar.relocate(0, heightPx - HEIGHT_PX);
        north.relocate(widthPx - NORTH_PX, heightPx - HEIGHT_PX);
    }

    void draw(View view, Palette palette, UnitSystem units, TextMeasure text) {
        SceneOptions options = SceneOptions.usual(view, text).with(palette).with(units);
        Point corner = view.onGround(new Point(0, 0));
        ScaleBar scale = ScaleBar.of(view, units, BAR_MM);
        card(bar, palette, LEFT_PX + scale.lengthMm() * Viewport.PX_PER_MM + LAST_NUMBER_PX);
        paint(bar, scale.marks(corner, options), view, LEFT_PX);
        card(north, palette, NORTH_PX - CARD_PX);
        paint(north, NorthArrow.marks(corner, options), view, (NORTH_PX - CARD_PX) / 2);
    }

    /** A see-through card behind the marks, so that they are seen on any image. */
    private static void card(Canvas canvas, Palette palette, double widthPx) {
        GraphicsContext graphics = canvas.getGraphicsContext2D();
        graphics.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        graphics.setFill(ScreenCanvas.color(palette.of(Role.PAPER).at(CARD_OPACITY)));
        double left = canvas.getWidth() > NORTH_PX ? CARD_PX : 0;
        graphics.fillRoundRect(left, 0, widthPx - left, HEIGHT_PX - CARD_PX, CARD_PX, CARD_PX);
    }

    private static void paint(Canvas canvas, Iterable<Mark> marks, View view, double leftPx) {
        Point at = new Point(leftPx / Viewport.PX_PER_MM, (HEIGHT_PX - FOOT_PX) / Viewport.PX_PER_MM);
        ScreenCanvas screen = new ScreenCanvas(canvas.getGraphicsContext2D());
        marks.forEach(mark -> Scene.paint(mark, view, screen, at));
    }
}
