package loamline.geometry;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Edges in square buckets, to ask quickly whether a straight line meets one. Not for several threads at once. */
final class EdgeGrid {
    /** Edges a bucket, about. */
    private static final double EDGES_PER_BUCKET = 2;

    /** Buckets in a row at most: more would cost more to make than they save. */
    private static final int MOST_COLUMNS = 400;

    private final List<Linework.Edge> edges;
    private final Envelope extent = new Envelope();
    private final double side;
    private final int columns;
    private final int rows;
    private final int[][] buckets;
    private final int[] seen;
    private int stamp;

    EdgeGrid(List<Linework.Edge> edges) {
        this.edges = edges;
        this.seen = new int[edges.size()];
        edges.forEach(edge -> {
            extent.expandToInclude(edge.a());
            extent.expandToInclude(edge.b());
        });
        double cells = Math.max(1, edges.size() / EDGES_PER_BUCKET);
        double longest = Math.max(extent.getWidth(), extent.getHeight());
        this.side =
                Math.max(Math.sqrt(Math.max(extent.getArea(), 1e-6) / cells), Math.max(longest, 1e-3) / MOST_COLUMNS);
        this.columns = (int) (extent.getWidth() / side) + 1;
        this.rows = (int) (extent.getHeight() / side) + 1;
        this.buckets = new int[columns * rows][0];
        for (int i = 0; i < edges.size(); i++) {
            put(i);
        }
    }

    private void put(int index) {
        Linework.Edge edge = edges.get(index);
        eachBucket(edge.a(), edge.b(), bucket -> {
            buckets[bucket] = Arrays.copyOf(buckets[bucket], buckets[bucket].length + 1);
            buckets[bucket][buckets[bucket].length - 1] = index;
            return false;
        });
    }

    /** Whether the straight line between two nodes meets an edge that ends at neither of them. */
    boolean meets(Coordinate u, Coordinate v) {
        stamp++;
        return eachBucket(u, v, bucket -> {
            for (int i : buckets[bucket]) {
                if (seen[i] != stamp) {
                    seen[i] = stamp;
                    Linework.Edge edge = edges.get(i);
                    boolean ends = edge.a().equals2D(u)
                            || edge.b().equals2D(u)
                            || edge.a().equals2D(v)
                            || edge.b().equals2D(v);
                    if (!ends && touch(u, v, edge.a(), edge.b())) {
                        return true;
                    }
                }
            }
            return false;
        });
    }

    /** Whether two closed segments have a point in common; exact for the doubles given. */
    static boolean touch(Coordinate u, Coordinate v, Coordinate a, Coordinate b) {
        if (!Envelope.intersects(u, v, a, b)) {
            return false;
        }
        int aSide = Orientation.index(u, v, a);
        int bSide = Orientation.index(u, v, b);
        return aSide * bSide <= 0 && Orientation.index(a, b, u) * Orientation.index(a, b, v) <= 0;
    }

    private interface Visit {
        boolean stopAt(int bucket);
    }

    /** Visits the buckets a segment runs through, column by column; true as soon as a visit says stop. */
    private boolean eachBucket(Coordinate u, Coordinate v, Visit visit) {
        Coordinate west = u.x <= v.x ? u : v;
        Coordinate east = u.x <= v.x ? v : u;
        double slope = east.x > west.x ? (east.y - west.y) / (east.x - west.x) : 0;
        int first = column(west.x);
        int last = column(east.x);
        for (int c = first; c <= last; c++) {
            double yIn = c == first ? west.y : west.y + slope * (extent.getMinX() + c * side - west.x);
            double yOut = c == last ? east.y : west.y + slope * (extent.getMinX() + (c + 1) * side - west.x);
            // one bucket more on either side, so that rounding at a bucket's border misses nothing
            int low = Math.max(0, row(Math.min(yIn, yOut)) - 1);
            int high = Math.min(rows - 1, row(Math.max(yIn, yOut)) + 1);
            for (int r = low; r <= high; r++) {
                if (visit.stopAt(r * columns + c)) {
                    return true;
                }
            }
        }
        return false;
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, Math.floor((x - extent.getMinX()) / side)));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, Math.floor((y - extent.getMinY()) / side)));
    }
}
