package loamline.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;

/** The bridge to JTS: our values in, JTS geometry out, and back. */
final class Jts {
    static final GeometryFactory FACTORY = new GeometryFactory();

    private Jts() {}

    static Coordinate coordinate(Point p) {
        return new Coordinate(p.x(), p.y());
    }

    static Point point(Coordinate c) {
        return new Point(c.x, c.y);
    }

    static LineString line(List<Point> points) {
        List<Point> atLeastTwo = points.size() == 1 ? List.of(points.get(0), points.get(0)) : points;
        return FACTORY.createLineString(atLeastTwo.stream().map(Jts::coordinate).toArray(Coordinate[]::new));
    }

    /** The closed ring through at least three points. */
    static LinearRing ring(List<Point> open) {
        Coordinate[] closed = new Coordinate[open.size() + 1];
        for (int i = 0; i < open.size(); i++) {
            closed[i] = coordinate(open.get(i));
        }
        closed[open.size()] = closed[0].copy();
        return FACTORY.createLinearRing(closed);
    }

    static List<Polygon> polygons(Geometry g) {
        return IntStream.range(0, g.getNumGeometries())
                .mapToObj(g::getGeometryN)
                .filter(part -> part instanceof Polygon && !part.isEmpty())
                .map(Polygon.class::cast)
                .toList();
    }

    /** The polygons of a result, lines and points dropped. */
    static MultiPolygon areal(Geometry g) {
        return FACTORY.createMultiPolygon(polygons(g).toArray(Polygon[]::new));
    }

    static Outline.Part part(Polygon polygon) {
        List<List<Point>> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            holes.add(open(polygon.getInteriorRingN(i)));
        }
        return new Outline.Part(open(polygon.getExteriorRing()), holes);
    }

    private static List<Point> open(LinearRing ring) {
        Coordinate[] closed = ring.getCoordinates();
        List<Point> points = new ArrayList<>(closed.length);
        for (int i = 0; i + 1 < closed.length; i++) {
            points.add(point(closed[i]));
        }
        return points;
    }
}
