package loamline.scene;

import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.Polyline;

/**
 * A direction on the ground.
 *
 * @param x share to the east, of a length of 1
 * @param y share to the north
 */
record Heading(double x, double y) {
    /** From one point to another; to the east if they coincide. */
    static Heading from(Point a, Point b) {
        double length = a.distanceTo(b);
        return length == 0 ? new Heading(1, 0) : new Heading((b.x() - a.x()) / length, (b.y() - a.y()) / length);
    }

    /** The direction of a line at a distance along it; at a corner, that of the side before. */
    static Heading along(Polyline line, double alongM) {
        List<Point> points = line.points();
        double left = alongM;
        for (int i = 1; i < points.size(); i++) {
            double side = points.get(i - 1).distanceTo(points.get(i));
            if (side > 0 && (left <= side || i == points.size() - 1)) {
                return from(points.get(i - 1), points.get(i));
            }
            left -= side;
        }
        return from(points.get(0), points.get(points.size() - 1));
    }

    /** A step of length 1 to the left. */
    Point left() {
        return new Point(-y, x);
    }

    /** A sign drawn as if it headed right on paper, turned to this heading. */
    Path turn(Path mm) {
        return mm.map(p -> new Point(x * p.x() + y * p.y(), -y * p.x() + x * p.y()));
    }
}
