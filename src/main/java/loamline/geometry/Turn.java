package loamline.geometry;

import org.locationtech.jts.algorithm.CGAlgorithmsDD;

/** Which way a corner turns, without rounding: a filter in doubles, then 106 bits where the filter is in doubt. */
public final class Turn {
    private Turn() {}

    /**
     * The side on which (cx, cy) lies of the way from (ax, ay) to (bx, by): 1 left, -1 right, 0 on its line or where
     * the two first places coincide. All coordinates finite.
     */
    public static int of(double ax, double ay, double bx, double by, double cx, double cy) {
        return CGAlgorithmsDD.orientationIndex(ax, ay, bx, by, cx, cy);
    }

    /** The side on which a point lies of the way from {@code a} to {@code b}: 1 left, -1 right, 0 on its line. */
    public static int of(Point a, Point b, Point c) {
        return of(a.x(), a.y(), b.x(), b.y(), c.x(), c.y());
    }
}
