package loamline.geometry;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A place in the yard's plane.
 *
 * @param x metres east of the frame's origin, finite
 * @param y metres north of the frame's origin, finite
 */
public record Point(double x, double y) implements Shape {
    /** @throws IllegalArgumentException if a coordinate is NaN or infinite */
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point needs finite coordinates, not (" + x + ", " + y + ")");
        }
        x += 0.0; // -0.0 becomes 0.0, so that equal places are equal points
        y += 0.0;
    }

    /** Straight distance, m. */
    public double distanceTo(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The point moved by an offset in metres. */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** The point a share of the way to another: 0 is here, 1 is there. */
    public Point towards(Point other, double share) {
        return new Point(x + share * (other.x - x), y + share * (other.y - y));
    }

    @Override
    public Stream<Point> vertices() {
        return Stream.of(this);
    }

    @Override
    public Point map(UnaryOperator<Point> change) {
        return change.apply(this);
    }
}
