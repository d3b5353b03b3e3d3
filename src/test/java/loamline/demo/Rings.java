package loamline.demo;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import loamline.geometry.Outline;
import loamline.geometry.Point;

/** Lists of points to build outlines from, on whole centimetres, so that neighbours share an edge exactly. */
final class Rings {
    private Rings() {}

    /** Points given as x0, y0, x1, y1, … in metres. */
    static List<Point> points(double... xy) {
        return IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Point(xy[2 * i], xy[2 * i + 1]))
                .toList();
    }

    /** A quadratic Bézier curve with both its ends, in eight steps. */
    static List<Point> bend(Point from, Point control, Point to) {
        return IntStream.rangeClosed(0, 8)
                .mapToObj(i -> i / 8.0)
                .map(t -> onCentimetre(from.towards(control, t).towards(control.towards(to, t), t)))
                .toList();
    }

    /** An oval of 24 points whose radius swells and shrinks by a share that depends on the bearing, radians. */
    static Outline oval(Point centre, double radiusX, double radiusY, DoubleUnaryOperator swell) {
        return Outline.of(IntStream.range(0, 24)
                .mapToObj(i -> {
                    double bearing = i * Math.PI / 12;
                    double share = 1 + swell.applyAsDouble(bearing);
                    return onCentimetre(centre.plus(
                            radiusX * share * StrictMath.cos(bearing), radiusY * share * StrictMath.sin(bearing)));
                })
                .toList());
    }

    /** The same points the other way round. */
    static List<Point> back(List<Point> points) {
        List<Point> turned = new ArrayList<>(points);
        Collections.reverse(turned);
        return turned;
    }

    /** The points of several stretches in a row; where two meet, the shared point counts once, also at the end. */
    @SafeVarargs
    static List<Point> chain(List<Point>... stretches) {
        List<Point> chain = new ArrayList<>();
        for (List<Point> stretch : stretches) {
            stretch.stream()
                    .filter(p -> chain.isEmpty() || !chain.get(chain.size() - 1).equals(p))
                    .forEach(chain::add);
        }
        if (chain.get(0).equals(chain.get(chain.size() - 1))) {
            chain.remove(chain.size() - 1);
        }
        return chain;
    }

    /** One ring through several stretches. */
    @SafeVarargs
    static Outline ring(List<Point>... stretches) {
        return Outline.of(chain(stretches));
    }

    /** The nearest point on whole centimetres. */
    static Point onCentimetre(Point p) {
        return new Point(Math.rint(p.x() * 100) / 100, Math.rint(p.y() * 100) / 100);
    }

    /** Distance from a place to the nearest ring, m. */
    static double distanceM(Outline outline, double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Outline.Part part : outline.parts()) {
            Point from = part.shell().get(part.shell().size() - 1);
            for (Point to : part.shell()) {
                nearest = Math.min(nearest, Line2D.ptSegDist(from.x(), from.y(), to.x(), to.y(), x, y));
                from = to;
            }
        }
        return nearest;
    }

    /** Direction of the longest side, radians counter-clockwise from east. */
    static double headingRad(Outline outline) {
        double longest = 0;
        double heading = 0;
        List<Point> shell = outline.parts().get(0).shell();
        Point from = shell.get(shell.size() - 1);
        for (Point to : shell) {
            if (from.distanceTo(to) > longest) {
                longest = from.distanceTo(to);
                heading = StrictMath.atan2(to.y() - from.y(), to.x() - from.x());
            }
            from = to;
        }
        return heading;
    }
}
