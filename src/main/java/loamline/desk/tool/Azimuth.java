package loamline.desk.tool;

import loamline.geometry.Point;

/** Directions in degrees clockwise from north: 0 is up on the map, 90 to the right. */
final class Azimuth {
    static final double FULL_DEG = 360;

    private Azimuth() {}

    /** From one place to another, 0 to below 360; 0 if they are one. */
    static double deg(Point from, Point to) {
        return turned(Math.toDegrees(Math.atan2(to.x() - from.x(), to.y() - from.y())));
    }

    /** The same direction from 0 to below 360. */
    static double turned(double deg) {
        double rest = deg % FULL_DEG;
        double positive = rest < 0 ? rest + FULL_DEG : rest;
        return positive == FULL_DEG ? 0 : positive;
    }
}
