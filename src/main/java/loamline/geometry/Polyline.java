package loamline.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A line through at least one point, in order. One point, or points that coincide, give a line of length 0.
 *
 * @param points the vertices, copied
 */
public record Polyline(List<Point> points) implements Shape {
    /** @throws IllegalArgumentException if there is no point */
    public Polyline {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a line needs at least one point");
        }
        points = List.copyOf(points);
    }

    /** Length along the line, m. */
    public double lengthM() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i - 1).distanceTo(points.get(i));
        }
        return sum;
    }

    /**
     * The point at a distance along the line.
     *
     * @param alongM metres from the first point; below 0 gives the first point, past the end the last
     */
    public Point at(double alongM) {
        double left = alongM;
        for (int i = 1; i < points.size(); i++) {
            Point from = points.get(i - 1);
            Point to = points.get(i);
            double side = from.distanceTo(to);
            if (left < side) {
                return from.towards(to, Math.max(0, left) / side);
            }
            left -= side;
        }
        return points.get(points.size() - 1);
    }

    /**
     * The stretch of line between two distances, ends cut where they fall; both are clamped to the line.
     *
     * @param fromM metres along the line
     * @param toM metres along the line, not less than {@code fromM}
     */
    public Polyline between(double fromM, double toM) {
        List<Point> cut = new ArrayList<>();
        cut.add(at(fromM));
        double along = 0;
        for (int i = 1; i < points.size(); i++) {
            along += points.get(i - 1).distanceTo(points.get(i));
            if (along > fromM && along < toM) {
                cut.add(points.get(i));
            }
        }
        cut.add(at(toM));
        return new Polyline(cut);
    }

    /** The point on the line that is nearest to another; of equals, the first along the line. */
    public Point nearestTo(Point p) {
        Point nearest = points.get(0);
        for (int i = 1; i < points.size(); i++) {
            Point from = points.get(i - 1);
            Point to = points.get(i);
            double side = from.distanceTo(to);
            double along = ((p.x() - from.x()) * (to.x() - from.x()) + (p.y() - from.y()) * (to.y() - from.y()))
                    / (side * side);
            Point foot = side == 0 || along <= 0 ? from : along >= 1 ? to : from.towards(to, along);
            nearest = p.distanceTo(foot) < p.distanceTo(nearest) ? foot : nearest;
        }
        return nearest;
    }

    /** The same line from its other end. */
    public Polyline reversed() {
        List<Point> back = new ArrayList<>(points);
        Collections.reverse(back);
        return new Polyline(back);
    }

    /** How far along the line its place nearest to a point is, m; of equals, the first. */
    public double alongM(Point p) {
        double nearestM = Double.POSITIVE_INFINITY;
        double found = 0;
        double before = 0;
        for (int i = 1; i < points.size(); i++) {
            Edge side = new Edge(points.get(i - 1), points.get(i), true, true);
            Point foot = side.nearestTo(p);
            if (foot.distanceTo(p) < nearestM) {
                nearestM = foot.distanceTo(p);
                found = before + side.from().distanceTo(foot);
            }
            before += side.lengthM();
        }
        return found;
    }

    @Override
    public Stream<Point> vertices() {
        return points.stream();
    }

    @Override
    public Polyline map(UnaryOperator<Point> change) {
        return new Polyline(points.stream().map(change).toList());
    }
}
