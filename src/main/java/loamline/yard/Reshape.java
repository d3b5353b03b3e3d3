package loamline.yard;

import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import loamline.geometry.Box;
import loamline.geometry.Corner;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import loamline.place.Frame;

/**
 * Changes to where features are: corners one by one, and features moved, turned and mirrored whole.
 *
 * <p>Places come out on the steps of {@link Frame#onStep}, as a file keeps them. Gates stay where they were on the
 * ground as nearly as the line allows when a corner of it changes, and go along with it when it moves whole. Features
 * of unknown kind stay as they are.
 */
public final class Reshape {
    private Reshape() {}

    /** A feature with a corner elsewhere. */
    public static Feature cornerMoved(Feature feature, Corner corner, Point to) {
        return feature.shape()
                .map(shape -> reshaped(feature, corner.moved(shape, Frame.onStep(to))))
                .orElse(feature);
    }

    /** A feature with another corner after one. */
    public static Feature cornerAdded(Feature feature, Corner after, Point at) {
        return feature.shape()
                .map(shape -> reshaped(feature, after.followed(shape, Frame.onStep(at))))
                .orElse(feature);
    }

    /** A feature without a corner; empty if too few would be left. */
    public static Optional<Feature> cornerRemoved(Feature feature, Corner corner) {
        return feature.shape().flatMap(corner::removed).map(shape -> reshaped(feature, shape));
    }

    private static Feature reshaped(Feature feature, Shape shape) {
        Feature changed = feature.withShape(shape);
        if (changed instanceof Barrier after && feature instanceof Barrier before) {
            return after.withGates(before.gates().stream()
                    .map(gate -> new Barrier.Opening(
                            after.line().alongM(before.line().at(gate.atM())), gate.widthM(), gate.extras()))
                    .toList());
        }
        return changed;
    }

    /** Features moved by an offset in metres, which is taken to the nearest step so that they keep their form. */
    public static Yard moved(Yard yard, Set<String> keys, double dx, double dy) {
        Point by = Frame.onStep(new Point(dx, dy));
        return changed(yard, keys, feature -> mapped(feature, p -> p.plus(by.x(), by.y())));
    }

    /** Features turned about a centre, clockwise, in degrees; the arcs of heads turn with them. */
    public static Yard turned(Yard yard, Set<String> keys, Point centre, double clockwiseDeg) {
        double sin = sin(clockwiseDeg);
        double cos = sin(clockwiseDeg + 90);
        UnaryOperator<Point> turn = p -> {
            double x = p.x() - centre.x();
            double y = p.y() - centre.y();
            return centre.plus(cos * x + sin * y, cos * y - sin * x);
        };
        return changed(yard, keys, feature -> {
            Feature there = mapped(feature, turn);
            return there instanceof Head head
                    ? head.withArc(azimuth(head.arcStartDeg() + clockwiseDeg), head.arcSweepDeg())
                    : there;
        });
    }

    /** The sine of an angle in degrees, exact for whole quarter turns. */
    private static double sin(double deg) {
        double quarters = deg / 90;
        return quarters == Math.rint(quarters)
                ? new double[] {0, 1, 0, -1}[(int) Math.floorMod((long) quarters, 4L)]
                : Math.sin(Math.toRadians(deg));
    }

    /**
     * Features mirrored across the line through two places; as they are if the two coincide. The arc of a head is
     * mirrored with it, and a panel goes on facing what it faced.
     */
    public static Yard mirrored(Yard yard, Set<String> keys, Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double squared = dx * dx + dy * dy;
        if (squared == 0) {
            return yard;
        }
        double axisDeg = Math.toDegrees(Math.atan2(dx, dy));
        UnaryOperator<Point> mirror = p -> {
            double off = ((p.y() - from.y()) * dx - (p.x() - from.x()) * dy) / squared;
            return p.plus(2 * off * dy, -2 * off * dx);
        };
        return changed(yard, keys, feature -> handed(mapped(feature, mirror), axisDeg));
    }

    private static Feature handed(Feature mirrored, double axisDeg) {
        if (mirrored instanceof Head head) {
            double start = 2 * axisDeg - head.arcStartDeg() - head.arcSweepDeg();
            return head.withArc(azimuth(start), head.arcSweepDeg());
        } else if (mirrored instanceof Panel panel) {
            return panel.withShape(panel.base().reversed());
        }
        return mirrored;
    }

    /** The smallest box round some features; empty if none of them is anywhere. */
    public static Optional<Box> box(Yard yard, Set<String> keys) {
        return Box.around(yard.features().stream()
                .filter(feature -> keys.contains(feature.key()))
                .flatMap(feature -> feature.shape().stream())
                .flatMap(Shape::vertices));
    }

    static Feature mapped(Feature feature, UnaryOperator<Point> change) {
        return feature.shape()
                .map(shape -> feature.withShape(shape.map(p -> Frame.onStep(change.apply(p)))))
                .orElse(feature);
    }

    private static Yard changed(Yard yard, Set<String> keys, UnaryOperator<Feature> change) {
        return yard.withFeatures(yard.features().stream()
                .map(feature -> keys.contains(feature.key()) ? change.apply(feature) : feature)
                .toList());
    }

    /** An angle as an azimuth: 0 to under 360 degrees. */
    public static double azimuth(double deg) {
        double turned = deg % 360;
        return turned < 0 ? (turned + 360) % 360 : turned + 0.0;
    }

    /** The azimuth of the way from one place to another, degrees; 0 if they coincide. */
    public static double azimuth(Point from, Point to) {
        return azimuth(Math.toDegrees(Math.atan2(to.x() - from.x(), to.y() - from.y())));
    }
}
