package loamline.desk.map;

import javafx.geometry.Point2D;
import loamline.desk.session.Session;
import loamline.geometry.Point;

/** What a test sees of the map; asked on the screen's thread. */
public final class MapProbe {
    private MapProbe() {}

    public static Session session(MapView map) {
        return map.session();
    }

    /** Whether the map shows what it was asked to show last. */
    public static boolean isCurrent(MapView map) {
        return map.isCurrent();
    }

    /** Where a place on the ground lies on the screen. */
    public static Point2D onScreen(MapView map, Point place) {
        Viewport viewport = map.camera().now();
        return map.localToScreen(viewport.xPx(place), viewport.yPx(place));
    }

    public static double metresPerPx(MapView map) {
        return map.camera().now().metresPerPx();
    }
}
