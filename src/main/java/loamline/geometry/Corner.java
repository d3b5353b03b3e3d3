package loamline.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A corner of a shape, to be moved, followed by another or taken out. A point is one ring of one corner, a line one ring that
 * does not close, an outline has a ring for each shell and each hole, in drawing order.
 *
 * @param ring which ring, from 0
 * @param index which corner of the ring, from 0
 */
public record Corner(int ring, int index) {
    /** Corners without which an outline's ring encloses nothing. */
    public static final int LEAST_OF_RING = 3;

    /** Corners without which a line has no length. */
    public static final int LEAST_OF_LINE = 2;

    /** The rings of a shape. */
    public static List<List<Point>> rings(Shape shape) {
        return shape instanceof Outline outline
                ? outline.rings().toList()
                : List.of(shape.vertices().toList());
    }

    /** The number of sides of a ring of a shape: as many as corners if it closes, else one less. */
    public static int sides(Shape shape, int ring) {
        int corners = rings(shape).get(ring).size();
        return shape instanceof Outline ? corners : corners - 1;
    }

    /** Whether a shape has this corner. */
    public boolean isOf(Shape shape) {
        List<List<Point>> rings = rings(shape);
        return ring < rings.size() && index < rings.get(ring).size();
    }

    /** Where the corner is. */
    public Point at(Shape shape) {
        return rings(shape).get(ring).get(index);
    }

    /** The middle of the side that leaves the corner. */
    public Point middle(Shape shape) {
        List<Point> points = rings(shape).get(ring);
        return points.get(index).towards(points.get((index + 1) % points.size()), 0.5);
    }

    /** The shape with the corner elsewhere. */
    public Shape moved(Shape shape, Point to) {
        List<Point> points = new ArrayList<>(rings(shape).get(ring));
        points.set(index, to);
        return withRing(shape, points);
    }

    /** The shape with another corner after this one. */
    public Shape followed(Shape shape, Point by) {
        List<Point> points = new ArrayList<>(rings(shape).get(ring));
        points.add(index + 1, by);
        return withRing(shape, points);
    }

    /** The shape without the corner; empty if its ring would have too few left. */
    public Optional<Shape> removed(Shape shape) {
        List<Point> points = new ArrayList<>(rings(shape).get(ring));
        points.remove(index);
        return points.size() < least(shape) ? Optional.empty() : Optional.of(withRing(shape, points));
    }

    /** How few corners a ring of the shape can have. */
    public static int least(Shape shape) {
        return shape instanceof Outline ? LEAST_OF_RING : shape instanceof Polyline ? LEAST_OF_LINE : 1;
    }

    private Shape withRing(Shape shape, List<Point> points) {
        if (shape instanceof Point) {
            return points.get(0);
        }
        return shape instanceof Outline outline ? withRing(outline, points) : new Polyline(points);
    }

    private Outline withRing(Outline outline, List<Point> points) {
        List<Outline.Part> parts = new ArrayList<>();
        int n = 0;
        for (Outline.Part part : outline.parts()) {
            List<List<Point>> rings = new ArrayList<>(part.rings().toList());
            if (ring >= n && ring < n + rings.size()) {
                rings.set(ring - n, points);
            }
            n += rings.size();
            parts.add(new Outline.Part(rings.get(0), rings.subList(1, rings.size())));
        }
        return new Outline(parts);
    }
}
