package loamline.geometry;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * An upright rectangle in metres; it may have no width or no height.
 *
 * @param minX west side
 * @param minY south side
 * @param maxX east side, not less than {@code minX}
 * @param maxY north side, not less than {@code minY}
 */
public record Box(double minX, double minY, double maxX, double maxY) {
    /** @throws IllegalArgumentException if a side is not finite or the box is inside out */
    public Box {
        if (!(maxX >= minX && maxY >= minY && Double.isFinite(maxX - minX) && Double.isFinite(maxY - minY))) {
            throw new IllegalArgumentException("no box from " + minX + ", " + minY + " to " + maxX + ", " + maxY);
        }
    }

    /** The smallest box round some points; empty if there are none. */
    public static Optional<Box> around(Stream<Point> points) {
        return points.map(p -> new Box(p.x(), p.y(), p.x(), p.y())).reduce(Box::union);
    }

    public double widthM() {
        return maxX - minX;
    }

    public double heightM() {
        return maxY - minY;
    }

    public Point centre() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }

    /** The smallest box that holds both. */
    public Box union(Box other) {
        return new Box(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /** The box grown on every side by a margin in metres, 0 or more. */
    public Box grown(double marginM) {
        return new Box(minX - marginM, minY - marginM, maxX + marginM, maxY + marginM);
    }

    /** Whether a point lies inside or on the border. */
    public boolean contains(Point p) {
        return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
    }

    /** Whether the two share a point. */
    public boolean touches(Box other) {
        return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
    }

    /** Its four corners as an outline. */
    public Outline outline() {
        return Outline.of(minX, minY, maxX, minY, maxX, maxY, minX, maxY);
    }
}
