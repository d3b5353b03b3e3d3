package loamline.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Ground and lines cut along a drawn line.
 *
 * <p>Ground case by case: a line that misses it, only touches it, runs along its edge or ends inside it parts nothing
 * off; a stretch between an edge and a hole parts nothing off unless another closes the way round; a line that crosses
 * itself parts off its loops. The pieces do not overlap, and their areas sum to the whole within {@value #AREA_SHARE}
 * of it.
 */
public final class Cut {
    /** What rounding where lines cross may cost, as a share of the area; the tests hold it. */
    public static final double AREA_SHARE = 1e-9;

    /** A piece narrower than this, m, is a near miss of an edge, not ground: it stays with its neighbour. */
    private static final double SLIVER_M = 1e-5;

    private Cut() {}

    /**
     * The pieces of one or more parts of ground, largest first.
     *
     * @return the parts that the line does not divide as they were, the others in their pieces
     */
    public static List<Region> of(Region region, Polyline along) {
        return region.parts().stream()
                .flatMap(part -> pieces(part, along).stream())
                .sorted(Comparator.comparingDouble(Region::areaM2).reversed())
                .toList();
    }

    private static List<Region> pieces(Region part, Polyline along) {
        Geometry borders = part.area().getBoundary();
        Geometry lines = OverlayNGRobust.overlay(borders, Jts.line(along.points()), OverlayNG.UNION);
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(lines);
        List<Region> faces = new ArrayList<>();
        for (Object face : (Collection<?>) polygonizer.getPolygons()) {
            Region piece = Region.of((Polygon) face);
            if (piece.innerPoint().filter(part::holdsInside).isPresent()) {
                faces.add(piece);
            }
        }
        List<Region> whole = withoutSlivers(faces);
        return whole.size() < 2 ? List.of(part) : whole;
    }

    private static List<Region> withoutSlivers(List<Region> faces) {
        List<Region> kept =
                new ArrayList<>(faces.stream().filter(face -> !isSliver(face)).toList());
        for (Region sliver : faces.stream().filter(Cut::isSliver).toList()) {
            Optional<Region> neighbour = kept.stream().max(Comparator.comparingDouble(face -> sharedM(face, sliver)));
            neighbour.ifPresent(face -> kept.set(kept.indexOf(face), face.union(sliver)));
        }
        return kept;
    }

    private static boolean isSliver(Region face) {
        return face.areaM2() < SLIVER_M * face.perimeterM() / 2;
    }

    private static double sharedM(Region a, Region b) {
        return (a.perimeterM() + b.perimeterM() - a.union(b).perimeterM()) / 2;
    }

    /**
     * Where a line is crossed or touched by another, strictly between its ends.
     *
     * @return distances along the first line in metres, rising, each once; a stretch that both share gives none of its
     *     own
     */
    public static List<Double> distancesM(Polyline line, Polyline along) {
        SortedSet<Double> found = new TreeSet<>();
        double before = 0;
        for (int i = 1; i < line.points().size(); i++) {
            Point from = line.points().get(i - 1);
            Point to = line.points().get(i);
            for (int j = 1; j < along.points().size(); j++) {
                double start = before;
                crossing(from, to, along.points().get(j - 1), along.points().get(j))
                        .ifPresent(p -> found.add(start + from.distanceTo(p)));
            }
            before += from.distanceTo(to);
        }
        return apart(found, before);
    }

    /** Without those nearer than a sliver to the one before or to an end. */
    private static List<Double> apart(SortedSet<Double> found, double lengthM) {
        List<Double> kept = new ArrayList<>();
        double last = 0;
        for (double distance : found) {
            if (distance - last > SLIVER_M && lengthM - distance > SLIVER_M) {
                kept.add(distance);
                last = distance;
            }
        }
        return kept;
    }

    private static Optional<Point> crossing(Point a, Point b, Point c, Point d) {
        RobustLineIntersector intersector = new RobustLineIntersector();
        Coordinate[] ends = {Jts.coordinate(a), Jts.coordinate(b), Jts.coordinate(c), Jts.coordinate(d)};
        intersector.computeIntersection(ends[0], ends[1], ends[2], ends[3]);
        return intersector.getIntersectionNum() == RobustLineIntersector.POINT_INTERSECTION
                ? Optional.of(Jts.point(intersector.getIntersection(0)))
                : Optional.empty();
    }
}
