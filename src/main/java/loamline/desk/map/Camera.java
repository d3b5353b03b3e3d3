package loamline.desk.map;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import loamline.geometry.Point;

/** Where the map looks, and how it is moved. Pixels are logical and count from the map's upper left corner. */
final class Camera {
    /** Nearer by this with each notch of a wheel or press of a key. */
    static final double STEP = 1.25;

    /** What JavaFX reports for one notch of a wheel. */
    private static final double NOTCH_PX = 40;

    private final ReadOnlyObjectWrapper<Viewport> viewport =
            new ReadOnlyObjectWrapper<>(new Viewport(new Point(0, 0), 0.1, 1, 1));

    ReadOnlyObjectProperty<Viewport> viewport() {
        return viewport.getReadOnlyProperty();
    }

    Viewport now() {
        return viewport.get();
    }

    void centreOn(Point place) {
        look(new Sight(place, now().metresPerPx()));
    }

    void look(Sight sight) {
        viewport.set(now().looking(sight));
    }

    void resize(double widthPx, double heightPx) {
        viewport.set(now().resized(Math.max(1, widthPx), Math.max(1, heightPx)));
    }

    void pan(double dxPx, double dyPx) {
        viewport.set(now().moved(dxPx, dyPx));
    }

    /** Nearer (above 1) or farther at a pixel. */
    void zoom(double factor, double xPx, double yPx) {
        viewport.set(now().zoomed(factor, xPx, yPx));
    }

    /** Nearer or farther in the middle. */
    void zoom(double factor) {
        zoom(factor, now().widthPx() / 2, now().heightPx() / 2);
    }

    /** As a wheel turns: a whole notch is one step, the small ones of a trackpad their share of it. */
    void wheel(double turnedPx, double xPx, double yPx) {
        zoom(Math.pow(STEP, turnedPx / NOTCH_PX), xPx, yPx);
    }
}
