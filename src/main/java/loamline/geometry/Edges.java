package loamline.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.FastNodingValidator;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/** From regions and lines to edges that meet only at their ends. */
public final class Edges {
    /** Places nearer than this share of the largest coordinate become one; 1e-10 m in a yard of 100 m. */
    static final double SNAP_SHARE = 1e-12;

    /** Grid of the last resort, as a share of the largest coordinate. */
    static final double GRID_SHARE = 1e-9;

    private Edges() {}

    /**
     * The edges of a region's rings.
     *
     * @param openInside whether the region is the open ground, or that which is not
     */
    public static List<Edge> around(Region region, boolean openInside) {
        List<Edge> edges = new ArrayList<>();
        for (Outline.Part part : region.outline().parts()) {
            addRing(part.shell(), openInside, edges);
            part.holes().forEach(hole -> addRing(hole, !openInside, edges));
        }
        return edges;
    }

    private static void addRing(List<Point> ring, boolean openInside, List<Edge> edges) {
        boolean insideIsLeft = Orientation.isCCW(Jts.ring(ring).getCoordinates());
        boolean openLeft = openInside == insideIsLeft;
        for (int i = 0; i < ring.size(); i++) {
            edges.add(new Edge(ring.get(i), ring.get((i + 1) % ring.size()), openLeft, !openLeft));
        }
    }

    /** The edges of a line, open on both sides; none if it has no length. */
    public static List<Edge> along(Polyline line) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 1; i < line.points().size(); i++) {
            if (!line.points().get(i - 1).equals(line.points().get(i))) {
                edges.add(new Edge(line.points().get(i - 1), line.points().get(i), true, true));
            }
        }
        return edges;
    }

    /**
     * The same edges, cut wherever they cross or touch, so that any two share at most an end. Ends keep their places
     * unless others lie within a trillionth of the largest coordinate: those become one. Edges that coincide become
     * one whose sides are open where all of them are open.
     *
     * @return edges of positive length, ends in order of x, then y; in an order that depends on the input only
     */
    public static List<Edge> noded(Collection<Edge> edges) {
        List<NodedSegmentString> strings = new ArrayList<>(edges.size());
        double largest = 0;
        for (Edge e : edges) {
            Coordinate[] ends = {Jts.coordinate(e.from()), Jts.coordinate(e.to())};
            strings.add(new NodedSegmentString(ends, e));
            largest = Math.max(largest, Math.max(reach(e.from()), reach(e.to())));
        }
        Map<List<Point>, Edge> merged = new LinkedHashMap<>();
        if (largest > 0) {
            pieces(strings, largest).stream()
                    .map(Edges::edge)
                    .forEach(e -> merged.merge(List.of(e.from(), e.to()), e, Edges::both));
        }
        return List.copyOf(merged.values());
    }

    private static double reach(Point p) {
        return Math.max(Math.abs(p.x()), Math.abs(p.y()));
    }

    /** Snapped pieces if they hold, else pieces on a fine grid. */
    private static List<SegmentString> pieces(List<NodedSegmentString> strings, double largest) {
        List<SegmentString> snapped = cut(new SnappingNoder(SNAP_SHARE * largest), strings);
        return new FastNodingValidator(snapped).isValid()
                ? snapped
                : cut(new SnapRoundingNoder(new PrecisionModel(1 / (GRID_SHARE * largest))), strings);
    }

    private static List<SegmentString> cut(Noder noder, List<NodedSegmentString> strings) {
        noder.computeNodes(strings);
        List<SegmentString> pieces = new ArrayList<>();
        for (Object piece : noder.getNodedSubstrings()) {
            pieces.add((SegmentString) piece);
        }
        return pieces;
    }

    private static Edge edge(SegmentString piece) {
        Edge whole = (Edge) piece.getData();
        return whole.with(Jts.point(piece.getCoordinate(0)), Jts.point(piece.getCoordinate(1)))
                .upright();
    }

    private static Edge both(Edge a, Edge b) {
        return new Edge(a.from(), a.to(), a.openLeft() && b.openLeft(), a.openRight() && b.openRight());
    }
}
