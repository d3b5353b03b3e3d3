package loamline.desk.tool;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.geometry.Box;
import loamline.geometry.Corner;
import loamline.geometry.Edge;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.Shape;
import loamline.yard.Boundary;
import loamline.yard.Feature;
import loamline.yard.Yard;

/**
 * Which feature a click means.
 *
 * <p>Points come first, then lines, then areas from the smallest; of equals the one drawn last. A property line is
 * picked by its line only, so that the ground inside stays free. What has no shape is never picked.
 */
public final class Picking {
    /** How far from a thing a click may be, in logical pixels. Common practice, no source. */
    static final double REACH_PX = 8;

    private Picking() {}

    /** The feature that is meant by a place, if any. */
    public static Optional<Feature> at(Yard yard, Point place, double reachM) {
        List<Feature> features = yard.features();
        return IntStream.range(0, features.size())
                .mapToObj(i -> features.get(features.size() - 1 - i))
                .filter(feature -> feature.shape()
                        .filter(shape -> isAt(shape, feature instanceof Boundary, place, reachM))
                        .isPresent())
                .min(Comparator.comparingInt(Picking::rank).thenComparingDouble(Picking::areaM2));
    }

    private static boolean isAt(Shape shape, boolean edgeOnly, Point place, double reachM) {
        return distanceM(shape, place) <= reachM
                || (!edgeOnly
                        && shape instanceof Outline outline
                        && Region.of(outline).covers(place));
    }

    /** Distance to the nearest side; infinite for an outline of no corners. */
    private static double distanceM(Shape shape, Point place) {
        if (shape instanceof Point at) {
            return at.distanceTo(place);
        }
        double nearest = Double.POSITIVE_INFINITY;
        List<List<Point>> rings = Corner.rings(shape);
        for (int ring = 0; ring < rings.size(); ring++) {
            List<Point> points = rings.get(ring);
            for (int i = 0; i < Corner.sides(shape, ring); i++) {
                Edge side = new Edge(points.get(i), points.get((i + 1) % points.size()), true, true);
                nearest = Math.min(nearest, side.distanceTo(place));
            }
        }
        return nearest;
    }

    private static int rank(Feature feature) {
        Shape shape = feature.shape().orElseThrow();
        return shape instanceof Point ? 0 : shape instanceof Outline ? 2 : 1;
    }

    private static double areaM2(Feature feature) {
        return feature.shape().orElseThrow() instanceof Outline outline
                ? Region.of(outline).areaM2()
                : 0;
    }

    /** Keys of the features that lie wholly inside an upright box, in the yard's order. */
    static List<String> inside(Yard yard, Box box) {
        return yard.features().stream()
                .filter(feature -> feature.shape()
                        .filter(shape -> shape.vertices().findAny().isPresent()
                                && shape.vertices().allMatch(box::contains))
                        .isPresent())
                .map(Feature::key)
                .toList();
    }
}
