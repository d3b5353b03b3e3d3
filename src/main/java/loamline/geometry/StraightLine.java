package loamline.geometry;

import java.util.Optional;

/**
 * A line without ends.
 *
 * @param through a place on it
 * @param dx its direction, of length 1: towards the east
 * @param dy towards the north
 */
public record StraightLine(Point through, double dx, double dy) {
    /** Sine of the angle below which two lines count as parallel: beyond it rounding decides where they meet. */
    private static final double PARALLEL = 1e-9;

    /** The line through two places. @throws IllegalArgumentException if they are one */
    public static StraightLine between(Point from, Point to) {
        double length = from.distanceTo(to);
        if (length == 0) {
            throw new IllegalArgumentException("no line from " + from + " to itself");
        }
        return new StraightLine(from, (to.x() - from.x()) / length, (to.y() - from.y()) / length);
    }

    /** The line through a place at an azimuth in degrees, clockwise from north. */
    public static StraightLine at(Point through, double azimuthDeg) {
        double radians = Math.toRadians(azimuthDeg);
        return new StraightLine(through, Math.sin(radians), Math.cos(radians));
    }

    /** The line at a right angle to this one, turned to the left, through the same place. */
    public StraightLine square() {
        return new StraightLine(through, -dy, dx);
    }

    /** The parallel through another place. */
    public StraightLine through(Point other) {
        return new StraightLine(other, dx, dy);
    }

    /** How far along the line a point lies, seen from {@link #through()}; negative behind it, m. */
    public double alongM(Point p) {
        return (p.x() - through.x()) * dx + (p.y() - through.y()) * dy;
    }

    /** The place on the line at a distance from {@link #through()}, m; negative behind it. */
    public Point at(double alongM) {
        return through.plus(alongM * dx, alongM * dy);
    }

    /** The foot of the perpendicular from a point. */
    public Point nearestTo(Point p) {
        return at(alongM(p));
    }

    /** Where the lines meet, to be found on this one; empty if they are parallel. */
    public Optional<Point> meets(StraightLine other) {
        double sine = dx * other.dy - dy * other.dx;
        if (Math.abs(sine) < PARALLEL) {
            return Optional.empty();
        }
        double toOtherX = other.through.x() - through.x();
        double toOtherY = other.through.y() - through.y();
        return Optional.of(at((toOtherX * other.dy - toOtherY * other.dx) / sine));
    }

    /** Where the line crosses or touches an edge, to be found on the line; empty if it misses it or runs along it. */
    public Optional<Point> meets(Edge edge) {
        double from = leftM(edge.from());
        double to = leftM(edge.to());
        boolean isMissed = from == to || (from < 0 && to < 0) || (from > 0 && to > 0);
        return isMissed ? Optional.empty() : Optional.of(nearestTo(edge.from().towards(edge.to(), from / (from - to))));
    }

    /** Distance to the left of the line, negative to its right, m. */
    private double leftM(Point p) {
        return (p.y() - through.y()) * dx - (p.x() - through.x()) * dy;
    }
}
