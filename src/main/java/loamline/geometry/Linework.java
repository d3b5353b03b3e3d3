package loamline.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;

/**
 * All lines that stop a walker, cut where they meet: the rings of free ground and the walls on it. Each edge
 * knows which of its sides is free ground. Edges meet at their ends only, and no two are the same.
 */
final class Linework {
    /** Points nearer than this are one point, m: well above rounding, far below tracing. */
    static final double SNAP_M = 1e-7;

    /** An edge between two nodes; left and right as seen from a to b. */
    record Edge(Coordinate a, Coordinate b, boolean leftFree, boolean rightFree) {
        Edge reversed() {
            return new Edge(b, a, rightFree, leftFree);
        }
    }

    private static final Object RING = "ring";
    private static final Object WALL = "wall";

    private final Region free;
    private List<Edge> edges = new ArrayList<>();

    /**
     * Cuts the lines.
     *
     * @param free ground to walk on
     * @param walls lines on it that cannot be crossed; what lies off the ground is dropped
     */
    Linework(Region free, List<Polyline> walls) {
        this.free = free;
        Map<Edge, Edge> joined = new LinkedHashMap<>();
        for (SegmentString piece : noded(walls)) {
            for (int i = 1; i < piece.size(); i++) {
                add(joined, piece.getCoordinate(i - 1), piece.getCoordinate(i), piece.getData() == RING);
            }
        }
        edges.addAll(joined.values());
    }

    private Collection<SegmentString> noded(List<Polyline> walls) {
        List<SegmentString> strings = new ArrayList<>();
        for (Polygon polygon : free.polygons()) {
            strings.add(ring(polygon.getExteriorRing(), true));
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                strings.add(ring(polygon.getInteriorRingN(i), false));
            }
        }
        for (Polyline wall : walls) {
            if (wall.lengthM() > SNAP_M) {
                strings.add(new BasicSegmentString(Jts.line(wall.points()).getCoordinates(), WALL));
            }
        }
        SnappingNoder noder = new SnappingNoder(SNAP_M);
        noder.computeNodes(strings);
        @SuppressWarnings("unchecked")
        Collection<SegmentString> result = noder.getNodedSubstrings();
        return result;
    }

    /** A ring with the ground on its left. */
    private static SegmentString ring(LineString ring, boolean shell) {
        LineString turned = Orientation.isCCW(ring.getCoordinateSequence()) == shell ? ring : ring.reverse();
        return new BasicSegmentString(turned.getCoordinates(), RING);
    }

    private void add(Map<Edge, Edge> joined, Coordinate a, Coordinate b, boolean ring) {
        if (a.equals2D(b) || !(ring || onGround(a, b))) {
            return;
        }
        boolean upward = a.compareTo(b) < 0;
        Edge edge = upward ? new Edge(a, b, true, !ring) : new Edge(b, a, !ring, true);
        Edge place = new Edge(edge.a, edge.b, false, false);
        joined.merge(place, edge, (p, q) -> new Edge(p.a, p.b, p.leftFree && q.leftFree, p.rightFree && q.rightFree));
    }

    private boolean onGround(Coordinate a, Coordinate b) {
        return free.holdsInside(new Point((a.x + b.x) / 2, (a.y + b.y) / 2));
    }

    List<Edge> edges() {
        return edges;
    }

    /**
     * Makes a point part of the lines: where it lies on an edge (within {@link #SNAP_M}), the edge is cut there.
     *
     * @return the node at the point: the point itself, or the end of an edge that is as good as it
     */
    Coordinate node(Coordinate p) {
        List<Edge> cut = new ArrayList<>(edges.size() + 1);
        for (Edge edge : edges) {
            if (edge.a.distance(p) <= SNAP_M) {
                return edge.a;
            }
            if (edge.b.distance(p) <= SNAP_M) {
                return edge.b;
            }
            if (new LineSegment(edge.a, edge.b).distance(p) <= SNAP_M) {
                cut.add(new Edge(edge.a, p, edge.leftFree, edge.rightFree));
                cut.add(new Edge(p, edge.b, edge.leftFree, edge.rightFree));
            } else {
                cut.add(edge);
            }
        }
        edges = cut;
        return p;
    }

    /** Edges by the node they leave, going round counter-clockwise. */
    Map<Coordinate, List<Edge>> stars() {
        Map<Coordinate, List<Edge>> stars = new HashMap<>();
        for (Edge edge : edges) {
            stars.computeIfAbsent(edge.a, k -> new ArrayList<>()).add(edge);
            stars.computeIfAbsent(edge.b, k -> new ArrayList<>()).add(edge.reversed());
        }
        stars.values().forEach(star -> star.sort((p, q) -> Double.compare(bearing(p), bearing(q))));
        return stars;
    }

    private static double bearing(Edge edge) {
        return Math.atan2(edge.b.y - edge.a.y, edge.b.x - edge.a.x);
    }
}
