package loamline.desk.tool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.geometry.Corner;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import loamline.yard.Barrier;
import loamline.yard.Feature;
import loamline.yard.Head;

/** The grips of a feature: the sizes first, then corners, then the middles of sides. */
final class Grips {
    private Grips() {}

    /** All of them; none for a feature of unknown kind. A thing at a point is dragged itself, not by a grip. */
    static List<Grip> of(Feature feature) {
        List<Grip> grips = new ArrayList<>();
        if (feature instanceof Barrier barrier) {
            IntStream.range(0, barrier.gates().size()).forEach(i -> grips.add(new Grip.OfGate(i)));
        } else if (feature instanceof Head) {
            grips.add(new Grip.OfArc(false));
            grips.add(new Grip.OfArc(true));
        }
        if (Grip.hasRadius(feature)) {
            grips.add(new Grip.OfRadius());
        }
        feature.shape().filter(shape -> !(shape instanceof Point)).ifPresent(shape -> addCorners(shape, grips));
        return grips;
    }

    private static void addCorners(Shape shape, List<Grip> grips) {
        List<Grip> middles = new ArrayList<>();
        List<List<Point>> rings = Corner.rings(shape);
        for (int ring = 0; ring < rings.size(); ring++) {
            for (int i = 0; i < rings.get(ring).size(); i++) {
                grips.add(new Grip.OfCorner(new Corner(ring, i)));
            }
            for (int i = 0; i < Corner.sides(shape, ring); i++) {
                middles.add(new Grip.OfSide(new Corner(ring, i)));
            }
        }
        grips.addAll(middles);
    }

    /** The grip that is meant by a place: within reach the nearest, of equals the first; corners before middles. */
    static Optional<Grip> at(Feature feature, Point place, double reachM) {
        return of(feature).stream()
                .filter(grip -> grip.at(feature).distanceTo(place) <= reachM)
                .min(Comparator.comparing(Grip::isMiddle)
                        .thenComparingDouble(grip -> grip.at(feature).distanceTo(place)));
    }
}
