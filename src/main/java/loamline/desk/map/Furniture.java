package loamline.desk.map;

import javafx.scene.canvas.Canvas;
import loamline.geometry.Point;
import loamline.scene.Mark;
import loamline.scene.NorthArrow;
import loamline.scene.Palette;
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

    private static final double HEIGHT_PX = 48;
    private static final double FOOT_PX = 16;
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
        paint(bar, ScaleBar.of(view, units, BAR_MM).marks(corner, options), view, LEFT_PX);
        paint(north, NorthArrow.marks(corner, options), view, NORTH_PX / 2);
    }

    private static void paint(Canvas canvas, Iterable<Mark> marks, View view, double leftPx) {
        canvas.getGraphicsContext2D().clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        Point at = new Point(leftPx / Viewport.PX_PER_MM, (HEIGHT_PX - FOOT_PX) / Viewport.PX_PER_MM);
        ScreenCanvas screen = new ScreenCanvas(canvas.getGraphicsContext2D());
        marks.forEach(mark -> Scene.paint(mark, view, screen, at));
    }
}
