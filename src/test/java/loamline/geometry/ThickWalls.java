package loamline.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Another way to the same distances, slow and plain: every wall is made thick, so that what meets is closed and no line
 * has sides; all pairs of corners are tried; all triples are relaxed.
 */
final class ThickWalls {
    /** Half the width of a fence and what is added to solids, m. */
    static final double HALF_WIDTH_M = 1e-5;

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final BufferParameters SQUARE =
            new BufferParameters(1, BufferParameters.CAP_SQUARE, BufferParameters.JOIN_MITRE, 20);

    private ThickWalls() {}

    /** Distances between stops, m; infinite where no way leads or a stop does not stand on open ground. */
    static double[][] distancesM(Yards.Scene scene, List<Point> stops) {
        Geometry free = free(scene);
        PreparedGeometry open = PreparedGeometryFactory.prepare(free.buffer(HALF_WIDTH_M / 100));
        List<Coordinate> nodes = new ArrayList<>();
        stops.forEach(p -> nodes.add(new Coordinate(p.x(), p.y())));
        nodes.addAll(corners(free));
        int n = nodes.size();
        double[][] d = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                Coordinate[] ends = {nodes.get(i), nodes.get(j)};
                boolean sees = open.covers(FACTORY.createLineString(ends));
                d[i][j] = d[j][i] = sees ? ends[0].distance(ends[1]) : Double.POSITIVE_INFINITY;
            }
        }
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    d[i][j] = Math.min(d[i][j], d[i][k] + d[k][j]);
                }
            }
        }
        return d;
    }

    /** Corners of the walls round which a way can bend. */
    private static List<Coordinate> corners(Geometry free) {
        Geometry shellsClockwise = free.norm();
        List<Coordinate> bends = new ArrayList<>();
        for (Object line : LinearComponentExtracter.getLines(shellsClockwise)) {
            Coordinate[] ring = ((LineString) line).getCoordinates();
            for (int i = 0; i + 1 < ring.length; i++) {
                Coordinate before = ring[i == 0 ? ring.length - 2 : i - 1];
                if (Orientation.index(before, ring[i], ring[i + 1]) == Orientation.LEFT) {
                    bends.add(ring[i]);
                }
            }
        }
        return bends;
    }

    private static Geometry free(Yards.Scene scene) {
        Geometry all = FACTORY.createPolygon();
        for (Region solid : scene.solids()) {
            all = OverlayNGRobust.overlay(all, thick(jts(solid)), OverlayNG.UNION);
        }
        for (Polyline fence : scene.fences()) {
            for (int i = 1; i < fence.points().size(); i++) {
                Coordinate[] side = coordinates(fence.points().subList(i - 1, i + 1).stream());
                all = side[0].equals2D(side[1])
                        ? all
                        : OverlayNGRobust.overlay(all, thick(FACTORY.createLineString(side)), OverlayNG.UNION);
            }
        }
        Geometry yard =
                scene.boundary().map(ThickWalls::jts).orElse(FACTORY.toGeometry(new Envelope(-100, 140, -100, 130)));
        return OverlayNGRobust.overlay(yard, all, OverlayNG.DIFFERENCE);
    }

    private static Geometry thick(Geometry g) {
        return BufferOp.bufferOp(g, HALF_WIDTH_M, SQUARE);
    }

    private static Geometry jts(Region region) {
        Polygon[] parts = region.outline().parts().stream()
                .map(part -> FACTORY.createPolygon(
                        ring(part.shell()),
                        part.holes().stream().map(ThickWalls::ring).toArray(LinearRing[]::new)))
                .toArray(Polygon[]::new);
        return FACTORY.createMultiPolygon(parts);
    }

    private static LinearRing ring(List<Point> open) {
        return FACTORY.createLinearRing(coordinates(Stream.concat(open.stream(), Stream.of(open.get(0)))));
    }

    private static Coordinate[] coordinates(Stream<Point> points) {
        return points.map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
    }
}
