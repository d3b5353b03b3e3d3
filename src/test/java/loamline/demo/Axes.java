package loamline.demo;

import loamline.geometry.Point;

/** Axes turned against the yard's: u along a heading, v to its left, metres from a point. */
final class Axes {
    private final Point origin;
    private final double cos;
    private final double sin;

    /** @param headingRad of u, counter-clockwise from east */
    Axes(Point origin, double headingRad) {
        this.origin = origin;
        cos = StrictMath.cos(headingRad);
        sin = StrictMath.sin(headingRad);
    }

    double u(double x, double y) {
        return (x - origin.x()) * cos + (y - origin.y()) * sin;
    }

    double v(double x, double y) {
        return (y - origin.y()) * cos - (x - origin.x()) * sin;
    }

    /** The place with these coordinates. */
    Point at(double u, double v) {
        return origin.plus(east(u, v), north(u, v));
    }

    /** How far east a step of u and v leads. */
    double east(double u, double v) {
        return u * cos - v * sin;
    }

    /** How far north a step of u and v leads. */
    double north(double u, double v) {
        return u * sin + v * cos;
    }
}
