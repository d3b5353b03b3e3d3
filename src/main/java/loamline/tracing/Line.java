package loamline.tracing;

import java.util.Optional;
import loamline.geometry.Point;

/**
 * A straight line through a point.
 *
 * @param through a point on it, the middle of what it stands for
 * @param dx column part of its unit direction
 * @param dy row part of its unit direction
 * @param length how much border it stands for, cells
 */
record Line(Point through, double dx, double dy, double length) {
    /** Lines that meet at less than this sine, 11°, do not make a corner. */
    private static final double PARALLEL = 0.2;

    /** Cells at each end of a stretch that the corner may have rounded. */
    private static final int CORNER_CELLS = 3;

    /** Fewer cells do not tell a direction better than their ends do. */
    private static final int LEAST_CELLS = 6;

    /**
     * The line that best fits a stretch of a ring, corners left out: least squares across it.
     *
     * @param to index of the end, above {@code from}; may run past the ring's end
     */
    static Line along(Ring ring, int from, int to) {
        // The chord, for the sense of the direction and for stretches too short to fit.
        int n = ring.length();
        int inset = to - from >= LEAST_CELLS + 2 * CORNER_CELLS ? CORNER_CELLS : 0;
        double x0 = ring.middleX(from % n);
        double y0 = ring.middleY(from % n);
        double endX = ring.middleX(to % n) - x0;
        double endY = ring.middleY(to % n) - y0;
        double length = Math.hypot(endX, endY);
        // Moments about the first place.
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        int count = to - from + 1 - 2 * inset;
        for (int i = from + inset; i <= to - inset; i++) {
            double x = ring.middleX(i % n) - x0;
            double y = ring.middleY(i % n) - y0;
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
            syy += y * y;
        }
        Point middle = new Point(x0 + sx / count, y0 + sy / count);
        if (inset == 0) {
            return length == 0 ? new Line(middle, 1, 0, 0) : new Line(middle, endX / length, endY / length, length);
        }
        // The main axis of the moments about the middle.
        double angle = Math.atan2(2 * (sxy - sx * sy / count), sxx - syy - (sx * sx - sy * sy) / count) / 2;
        double sign = Math.cos(angle) * endX + Math.sin(angle) * endY < 0 ? -1 : 1;
        return new Line(middle, sign * Math.cos(angle), sign * Math.sin(angle), length);
    }

    /** Sine of the turn from this line to another. */
    double turn(Line next) {
        return dx * next.dy - dy * next.dx;
    }

    /** Where two lines meet; empty if they are nearly parallel. */
    Optional<Point> meets(Line other) {
        double sine = turn(other);
        if (Math.abs(sine) < PARALLEL) {
            return Optional.empty();
        }
        double along =
                ((other.through.x() - through.x()) * other.dy - (other.through.y() - through.y()) * other.dx) / sine;
        return Optional.of(through.plus(along * dx, along * dy));
    }

    /** The place on the line nearest to a point. */
    Point nearest(Point p) {
        double along = (p.x() - through.x()) * dx + (p.y() - through.y()) * dy;
        return through.plus(along * dx, along * dy);
    }

    /** The same stretch in another direction. */
    Line turned(double angle) {
        return new Line(through, Math.cos(angle), Math.sin(angle), length);
    }

    double angle() {
        return Math.atan2(dy, dx);
    }
}
