package loamline.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Shortest paths between stops over free ground with walls on it.
 *
 * <p><b>What.</b> The length and the turns of the shortest path between every two stops.
 *
 * <p><b>Ties and borders.</b> Edges of the ground and sides of walls may be walked along, and the free end of a
 * wall may be walked round; no path passes through a wall, through the place where a wall meets the ground's edge
 * or another wall, or between two obstacles that touch at a point. A stop on an edge may be left to every free
 * side of it. A stop off the ground reaches nothing but itself.
 *
 * <p><b>Accuracy.</b> Exact decisions for lines cut within {@value Linework#SNAP_M} m; lengths to rounding.
 *
 * <p><b>Cost.</b> Proportional to the square of corners plus stops, times the edges met on the way.
 *
 * <p><b>Reference.</b> Visibility graph: Lozano-Pérez and Wesley 1979, CACM 22:560-570. A corner is as many nodes
 * as free sectors meet in it, which keeps paths from slipping through closed corners.
 */
public final class ShortestPaths {
    private final List<Point> stops;
    private final double[][] lengthM;
    private final List<List<List<Point>>> paths;

    private ShortestPaths(List<Point> stops, double[][] lengthM, List<List<List<Point>>> paths) {
        this.stops = stops;
        this.lengthM = lengthM;
        this.paths = paths;
    }

    /**
     * Finds all shortest paths.
     *
     * @param free ground to walk on; its rings may be walked along
     * @param walls lines that cannot be crossed
     * @param stops where to go
     */
    public static ShortestPaths over(Region free, List<Polyline> walls, List<Point> stops) {
        VisibilityGraph graph = new VisibilityGraph(free, walls, stops);
        double[][] lengthM = new double[stops.size()][];
        List<List<List<Point>>> paths = new ArrayList<>();
        for (int from = 0; from < stops.size(); from++) {
            Search search = new Search(graph, from);
            lengthM[from] = new double[stops.size()];
            List<List<Point>> row = new ArrayList<>();
            for (int to = 0; to < stops.size(); to++) {
                lengthM[from][to] = to == from ? 0 : search.lengthM(to);
                row.add(search.path(to));
            }
            paths.add(row);
        }
        return new ShortestPaths(List.copyOf(stops), lengthM, paths);
    }

    /** The stops, in the order given. */
    public List<Point> stops() {
        return stops;
    }

    /** Length of the shortest path between two stops, m; infinite if there is none, 0 from a stop to itself. */
    public double lengthM(int from, int to) {
        return lengthM[from][to];
    }

    /** The turns of the shortest path, both stops included; empty if there is none. */
    public List<Point> path(int from, int to) {
        return paths.get(from).get(to);
    }

    /** Dijkstra's search from one stop. */
    private static final class Search {
        private record Reached(int node, double atM) {}

        private final VisibilityGraph graph;
        private final int from;
        private final double[] reachedM;
        private final int[] before;

        Search(VisibilityGraph graph, int from) {
            this.graph = graph;
            this.from = from;
            this.reachedM = new double[graph.size()];
            this.before = new int[graph.size()];
            Arrays.fill(reachedM, Double.POSITIVE_INFINITY);
            PriorityQueue<Reached> queue = new PriorityQueue<>(Comparator.comparingDouble(Reached::atM));
            for (int node : graph.nodesOfStop(from)) {
                reach(node, -1, 0, queue);
            }
            while (!queue.isEmpty()) {
                Reached next = queue.remove();
                if (next.atM == reachedM[next.node]) {
                    graph.neighbours(next.node, (other, sideM) -> reach(other, next.node, next.atM + sideM, queue));
                }
            }
        }

        private void reach(int node, int via, double atM, PriorityQueue<Reached> queue) {
            if (atM < reachedM[node]) {
                reachedM[node] = atM;
                before[node] = via;
                queue.add(new Reached(node, atM));
            }
        }

        double lengthM(int stop) {
            return Arrays.stream(graph.nodesOfStop(stop))
                    .mapToDouble(node -> reachedM[node])
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
        }

        List<Point> path(int stop) {
            int best = -1;
            for (int node : graph.nodesOfStop(stop)) {
                if (best < 0 || reachedM[node] < reachedM[best]) {
                    best = node;
                }
            }
            List<Point> points = new ArrayList<>();
            if (stop != from && (best < 0 || Double.isInfinite(reachedM[best]))) {
                return points;
            }
            points.add(graph.stop(stop));
            for (int node = stop == from ? -1 : before[best]; node >= 0; node = before[node]) {
                points.add(before[node] < 0 ? graph.stop(from) : graph.point(node));
            }
            Collections.reverse(points);
            return List.copyOf(points);
        }
    }
}
