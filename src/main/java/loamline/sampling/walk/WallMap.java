package loamline.sampling.walk;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.geometry.Edge;
import loamline.geometry.Point;
import loamline.geometry.Turn;

/**
 * Edges that meet only at their ends, as arrays, and how the ground round each end is split into sectors.
 *
 * <p>A <b>corner</b> is an end of an edge or a place where a stop stands. Corners are numbered in order of x, then y.
 * The edges at a corner leave it as rays; between one ray and the next, counterclockwise, lies a sector. A corner
 * without edges has one sector, all round. Rays and the sectors that begin at them share numbers, and those of a
 * corner follow each other. To walk is to be in a sector: two sectors of one corner are two sides of a wall, and no
 * step leads from the one to the other.
 */
final class WallMap {
    /** Coordinates of the corners, m. */
    final double[] x;

    final double[] y;

    /** Corners at the ends of each edge, the lower number first. */
    final int[] edgeFrom;

    final int[] edgeTo;

    /** Number of the first ray of each corner; one entry more than there are corners. */
    final int[] firstRay;

    /** The corner a ray leads to; the corner itself, if it has no edges. */
    final int[] rayTo;

    /** The edge a ray is, seen from one of its ends; -1 if its corner has no edges. */
    final int[] rayEdge;

    /** Whether one may walk in the sector that begins at a ray. */
    final boolean[] open;

    /** Whether a sector is half a turn or more, so that shortest ways may pass through it. */
    final boolean[] wide;

    /** Whether a stop stands at a corner. */
    final boolean[] stop;

    private final Map<Point, Integer> numbers = new HashMap<>();

    /**
     * @param edges noded, no two on the same ends
     * @param stops places that are no inner points of an edge; one off all edges must stand on open ground
     */
    WallMap(List<Edge> edges, List<Point> stops) {
        Point[] corners = Stream.concat(edges.stream().flatMap(e -> Stream.of(e.from(), e.to())), stops.stream())
                .distinct()
                .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y))
                .toArray(Point[]::new);
        for (int i = 0; i < corners.length; i++) {
            numbers.put(corners[i], i);
        }
        x = Arrays.stream(corners).mapToDouble(Point::x).toArray();
        y = Arrays.stream(corners).mapToDouble(Point::y).toArray();
        stop = new boolean[corners.length];
        stops.forEach(p -> stop[cornerAt(p)] = true);
        edgeFrom = edges.stream()
                .mapToInt(e -> Math.min(cornerAt(e.from()), cornerAt(e.to())))
                .toArray();
        edgeTo = edges.stream()
                .mapToInt(e -> Math.max(cornerAt(e.from()), cornerAt(e.to())))
                .toArray();
        firstRay = countRays();
        rayTo = new int[firstRay[x.length]];
        rayEdge = new int[rayTo.length];
        drawRays();
        open = new boolean[rayTo.length];
        wide = new boolean[rayTo.length];
        describeSectors(edges);
    }

    private int[] countRays() {
        int[] first = new int[x.length + 1];
        for (int e = 0; e < edgeFrom.length; e++) {
            first[edgeFrom[e] + 1]++;
            first[edgeTo[e] + 1]++;
        }
        for (int c = 0; c < x.length; c++) {
            first[c + 1] = first[c] + Math.max(1, first[c + 1]);
        }
        return first;
    }

    private void drawRays() {
        int[] next = firstRay.clone();
        for (int c = 0; c < x.length; c++) {
            rayTo[firstRay[c]] = c;
        }
        Arrays.fill(rayEdge, -1);
        for (int e = 0; e < edgeFrom.length; e++) {
            rayEdge[next[edgeFrom[e]]++] = e;
            rayEdge[next[edgeTo[e]]++] = e;
        }
        for (int c = 0; c < x.length; c++) {
            sortRays(c);
        }
    }

    /** Counterclockwise from straight down; by insertion, since few edges meet at a corner. */
    private void sortRays(int c) {
        for (int i = firstRay[c]; i < firstRay[c + 1] && rayEdge[i] >= 0; i++) {
            int edge = rayEdge[i];
            int to = edgeFrom[edge] == c ? edgeTo[edge] : edgeFrom[edge];
            int j = i;
            for (; j > firstRay[c] && isBefore(c, to, rayTo[j - 1]); j--) {
                rayTo[j] = rayTo[j - 1];
                rayEdge[j] = rayEdge[j - 1];
            }
            rayTo[j] = to;
            rayEdge[j] = edge;
        }
    }

    /** Whether corner a comes before b as seen from c, counterclockwise from straight down (exclusive). */
    private boolean isBefore(int c, int a, int b) {
        boolean aIsRight = a > c;
        return aIsRight == (b > c) ? turn(c, a, b) > 0 : aIsRight;
    }

    private void describeSectors(List<Edge> edges) {
        for (int c = 0; c < x.length; c++) {
            for (int s = firstRay[c]; s < firstRay[c + 1]; s++) {
                int end = rayAfter(c, s);
                boolean alone = s == end;
                int turn = alone ? -1 : turn(c, rayTo[s], rayTo[end]);
                wide[s] = turn <= 0;
                open[s] = rayEdge[s] < 0
                        || (openBeside(edges.get(rayEdge[s]), c, true)
                                && openBeside(edges.get(rayEdge[end]), c, false));
            }
        }
    }

    /** Whether the ground left or right of an edge is open, looking along it from the corner at one of its ends. */
    private boolean openBeside(Edge e, int corner, boolean left) {
        boolean forth = cornerAt(e.from()) == corner;
        return left == forth ? e.openLeft() : e.openRight();
    }

    /** The sectors of a corner in which one may walk. */
    int[] openSectors(int corner) {
        return IntStream.range(firstRay[corner], firstRay[corner + 1])
                .filter(s -> open[s])
                .toArray();
    }

    /** The corner at which a sector lies. */
    int cornerOf(int sector) {
        int at = Arrays.binarySearch(firstRay, sector);
        return at >= 0 ? at : -at - 2;
    }

    int cornerAt(Point p) {
        return Objects.requireNonNull(numbers.get(p));
    }

    Point point(int corner) {
        return new Point(x[corner], y[corner]);
    }

    /** The next ray of a corner, counterclockwise: the end of the sector that begins at the given one. */
    int rayAfter(int corner, int ray) {
        return ray + 1 == firstRay[corner + 1] ? firstRay[corner] : ray + 1;
    }

    /** The ray of a corner before the given one: the sector that ends at it. */
    int rayBefore(int corner, int ray) {
        return ray == firstRay[corner] ? firstRay[corner + 1] - 1 : ray - 1;
    }

    /** The ray from one corner along an edge to another; -1 if no edge joins them. */
    int rayBetween(int corner, int to) {
        for (int r = firstRay[corner]; r < firstRay[corner + 1]; r++) {
            if (rayTo[r] == to && rayEdge[r] >= 0) {
                return r;
            }
        }
        return -1;
    }

    /** The sector of a corner in which another corner lies; no edge of the corner may lead towards it. */
    int sectorTowards(int corner, int to) {
        int s = firstRay[corner + 1] - 1;
        for (int r = firstRay[corner];
                r < firstRay[corner + 1] && rayEdge[r] >= 0 && !isBefore(corner, to, rayTo[r]);
                r++) {
            s = r;
        }
        return s;
    }

    /**
     * Whether a shortest way may come from a corner to another through a sector and go on: straight on it must not
     * run into the wall. Where a stop stands the way may end.
     */
    boolean isUsefulTowards(int corner, int sector, int to) {
        return open[sector]
                && (stop[corner]
                        || turn(corner, rayTo[rayAfter(corner, sector)], to) >= 0
                        || turn(corner, rayTo[sector], to) <= 0);
    }

    /** Whether a shortest way may run along one of the rays that bound a sector. */
    boolean isUsefulAlong(int corner, int sector) {
        return open[sector] && (stop[corner] || wide[sector]);
    }

    /** Whether any shortest way may start, end or turn at a corner. */
    boolean isUseful(int corner) {
        for (int s = firstRay[corner]; s < firstRay[corner + 1]; s++) {
            if (isUsefulAlong(corner, s)) {
                return true;
            }
        }
        return false;
    }

    /** The side of the way from a to b on which c lies: 1 left, -1 right, 0 on its line. */
    int turn(int a, int b, int c) {
        return Turn.of(x[a], y[a], x[b], y[b], x[c], y[c]);
    }

    double distanceM(int a, int b) {
        return Math.hypot(x[b] - x[a], y[b] - y[a]);
    }
}
