package loamline.desk.map;

import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.scene.View;

/**
 * The part of the ground in the map's window.
 *
 * @param middle place in the middle of the window
 * @param metresPerPx metres to a logical pixel, above 0
 * @param widthPx width of the window, logical pixels
 * @param heightPx height of the window
 */
record Viewport(Point middle, double metresPerPx, double widthPx, double heightPx) {
    /** Logical pixels in a millimetre of scene paper: 96 to the inch. */
    static final double PX_PER_MM = 96 / 25.4;

    private static final double LEAST_METRES_PER_PX = 0.002;
    private static final double MOST_METRES_PER_PX = 10;

    private static final double HALF_PX = 0.5;

    /** Space left round a yard that is fitted, as a share of the window. */
    private static final double MARGIN = 0.06;

    /** The window with a box in it, as large as fits. */
    static Viewport fitting(Box box, double widthPx, double heightPx) {
        double room = 1 - 2 * MARGIN;
        double scale = Math.max(box.widthM() / (widthPx * room), box.heightM() / (heightPx * room));
        return new Viewport(box.centre(), clamped(scale), widthPx, heightPx);
    }

    private static double clamped(double metresPerPx) {
        return Math.max(LEAST_METRES_PER_PX, Math.min(MOST_METRES_PER_PX, metresPerPx));
    }

    /** The place under a pixel, counted from the window's upper left corner. */
    Point ground(double xPx, double yPx) {
        return middle.plus((xPx - widthPx / 2) * metresPerPx, (heightPx / 2 - yPx) * metresPerPx);
    }

    double xPx(Point place) {
        return widthPx / 2 + (place.x() - middle.x()) / metresPerPx;
    }

    double yPx(Point place) {
        return heightPx / 2 - (place.y() - middle.y()) / metresPerPx;
    }

    /** Nearer (factor above 1) or farther, the place under a pixel staying under it. */
    Viewport zoomed(double factor, double xPx, double yPx) {
        double scale = clamped(metresPerPx / factor);
        Point fixed = ground(xPx, yPx);
        Point newMiddle = fixed.plus((widthPx / 2 - xPx) * scale, (yPx - heightPx / 2) * scale);
        return new Viewport(newMiddle, scale, widthPx, heightPx);
    }

    /** The ground drawn along by some pixels. */
    Viewport moved(double dxPx, double dyPx) {
        return new Viewport(middle.plus(-dxPx * metresPerPx, dyPx * metresPerPx), metresPerPx, widthPx, heightPx);
    }

    /** Where it looks, without its size. */
    Sight sight() {
        return new Sight(middle, metresPerPx);
    }

    /** The window over other ground, as far as it may be zoomed. */
    Viewport looking(Sight sight) {
        return new Viewport(sight.middle(), clamped(sight.metresPerPx()), widthPx, heightPx);
    }

    Viewport resized(double newWidthPx, double newHeightPx) {
        return new Viewport(middle, metresPerPx, newWidthPx, newHeightPx);
    }

    /** A window with more on every side. */
    Viewport grown(double marginPx) {
        return resized(widthPx + 2 * marginPx, heightPx + 2 * marginPx);
    }

    /** Whether a place can be seen, or lies within half a pixel of what can. */
    boolean shows(Point place) {
        double x = xPx(place);
        double y = yPx(place);
        return x >= -HALF_PX && y >= -HALF_PX && x <= widthPx + HALF_PX && y <= heightPx + HALF_PX;
    }

    /** Whether all that another window shows can be seen in this one. */
    boolean covers(Viewport other) {
        return shows(other.ground(0, 0)) && shows(other.ground(other.widthPx, other.heightPx));
    }

    /** The same window for the scene. */
    View view() {
        double halfWidthM = widthPx * metresPerPx / 2;
        double halfHeightM = heightPx * metresPerPx / 2;
        Box ground = new Box(
                middle.x() - halfWidthM, middle.y() - halfHeightM, middle.x() + halfWidthM, middle.y() + halfHeightM);
        return new View(ground, metresPerPx * PX_PER_MM);
    }
}
