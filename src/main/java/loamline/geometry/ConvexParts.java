package loamline.geometry;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/** Polygons cut into convex rings. */
final class ConvexParts {
    private ConvexParts() {}

    static List<List<Point>> of(List<Polygon> polygons) {
        return polygons.stream().flatMap(ConvexParts::of).toList();
    }

    private static Stream<List<Point>> of(Polygon polygon) {
        Stream<Polygon> parts = isConvex(polygon)
                ? Stream.of(polygon)
                : Jts.polygons(ConstrainedDelaunayTriangulator.triangulate(polygon)).stream();
        return parts.map(part -> Jts.part(part).shell());
    }

    private static boolean isConvex(Polygon polygon) {
        if (polygon.getNumInteriorRing() > 0) {
            return false;
        }
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        int turned = 0;
        for (int i = 0; i + 1 < ring.length; i++) {
            int turn = Orientation.index(ring[i], ring[i + 1], ring[i + 2 < ring.length ? i + 2 : 1]);
            if (turn * turned < 0) {
                return false;
            }
            turned = turn == 0 ? turned : turn;
        }
        return true;
    }
}
