package loamline.desk.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;

/** Fits a traced outline to what is drawn round it, so that neighbours share their edge. */
final class Abutting {
    /** Pieces of less ground are left over from fitting and nothing that anybody traced, m². */
    private static final double LEAST_PIECE_M2 = 0.25;

    private Abutting() {}

    /**
     * The ground of an outline, its corners drawn to corners and edges within reach, less what the neighbours cover.
     *
     * @param lot what it is cut to; empty for no limit
     */
    static Region fit(Outline traced, Optional<Region> lot, List<Region> neighbours, double reachM) {
        List<List<Point>> rings = Stream.concat(neighbours.stream(), lot.stream())
                .flatMap(region -> region.outline().rings())
                .toList();
        Region loose = Region.of(traced);
        Region fitted = Region.of(traced.map(corner -> snapped(corner, rings, reachM)));
        Region ground = (isKept(loose, fitted, reachM) ? fitted : loose).minus(Region.union(neighbours));
        Region cut = lot.map(ground::intersection).orElse(ground);
        return Region.union(cut.parts().stream()
                .filter(piece -> piece.areaM2() >= LEAST_PIECE_M2)
                .toList());
    }

    /** Corners drawn together can pinch a ring so that it no longer encloses what it did, which repair then drops. */
    private static boolean isKept(Region loose, Region fitted, double reachM) {
        return loose.minus(fitted).buffer(-reachM).isEmpty()
                && fitted.minus(loose).buffer(-reachM).isEmpty();
    }

    private static Point snapped(Point corner, List<List<Point>> rings, double reachM) {
        Optional<Point> vertex = nearest(corner, rings.stream().flatMap(List::stream));
        if (vertex.filter(p -> p.distanceTo(corner) <= reachM).isPresent()) {
            return vertex.get();
        }
        Stream<Point> feet = rings.stream().map(ring -> closed(ring).nearestTo(corner));
        return nearest(corner, feet).filter(p -> p.distanceTo(corner) <= reachM).orElse(corner);
    }

    private static Optional<Point> nearest(Point to, Stream<Point> places) {
        return places.min((a, b) -> Double.compare(a.distanceTo(to), b.distanceTo(to)));
    }

    private static Polyline closed(List<Point> ring) {
        List<Point> line = new ArrayList<>(ring);
        line.add(ring.get(0));
        return new Polyline(line);
    }
}
