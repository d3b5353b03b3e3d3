package loamline.sampling.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.geometry.Edge;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Turn;

/**
 * The shortest ways between all pairs of stops, and how long they are. Stops are numbered from 0 in the order in which
 * they were given. Distances are the same both ways, 0 from a stop to itself, infinite where no way leads, and but for
 * rounding neither shorter than the straight line nor longer than the detour over a third stop.
 */
public final class Ways {
    /** Where a stop stands. */
    public enum Standing {
        /** On open ground or, within {@link FreeSpace#STOP_REACH_M}, at its edge. */
        OPEN,
        /** In an obstacle: no way leads there. */
        IN_OBSTACLE,
        /** Beyond the boundary: no way leads there. */
        OFF_YARD
    }

    private final WallMap map;
    private final List<Point> stops;
    private final List<Foothold> footholds;

    /** The sector in which each stop is reached; -1 if no way leads there. */
    private final int[] sectors;

    /** From the sector of each stop; one that reaches nothing if it has none. */
    private final List<Network.Reach> reaches;

    private Ways(WallMap map, List<Point> stops, List<Foothold> footholds) {
        this.map = map;
        this.stops = List.copyOf(stops);
        this.footholds = List.copyOf(footholds);
        Network network = Sight.of(map);
        sectors = new Sides(map, network, footholds).chosen();
        reaches = IntStream.of(sectors).mapToObj(network::from).toList();
    }

    /**
     * The ways between stops on a map of walls.
     *
     * @param walls noded
     * @param stops as given
     * @param footholds one for each stop; at an end of a wall or off all of them
     */
    static Ways of(List<Edge> walls, List<Point> stops, List<Foothold> footholds) {
        List<Point> places =
                footholds.stream().filter(Foothold::isOpen).map(Foothold::at).toList();
        return new Ways(new WallMap(walls, places), stops, footholds);
    }

    /** Number of stops. */
    public int size() {
        return stops.size();
    }

    /** Where a stop stands. */
    public Standing standing(int stop) {
        return footholds.get(stop).standing();
    }

    /**
     * How far a stop that can be reached stands off the open ground, m: 0 for most, up to
     * {@link FreeSpace#STOP_REACH_M} for one drawn a little inside an obstacle or outside the boundary.
     */
    public double strayM(int stop) {
        return footholds.get(stop).legM();
    }

    /** Length of the shortest way, m; infinite if there is none. */
    public double distanceM(int from, int to) {
        if (from == to) {
            return 0;
        }
        if (from > to) {
            return distanceM(to, from);
        }
        return sectors[from] < 0 || sectors[to] < 0
                ? Double.POSITIVE_INFINITY
                : strayM(from) + reaches.get(from).distanceM(sectors[to]) + strayM(to);
    }

    /** All distances, m, one row and one column a stop. */
    public double[][] distancesM() {
        return IntStream.range(0, size())
                .mapToObj(i -> IntStream.range(0, size())
                        .mapToDouble(j -> distanceM(i, j))
                        .toArray())
                .toArray(double[][]::new);
    }

    /** The stops to which no way leads from a stop, in order; all others if none leads to that stop itself. */
    public List<Integer> unreachableFrom(int stop) {
        return IntStream.range(0, size())
                .filter(other -> Double.isInfinite(distanceM(stop, other)))
                .boxed()
                .toList();
    }

    /**
     * The shortest way: the first stop, every place where it turns, the last stop. One point if the stops share a
     * place; empty if no way leads there. Of several ways of one length always the same is given.
     */
    public Optional<Polyline> path(int from, int to) {
        if (Double.isInfinite(distanceM(from, to))) {
            return Optional.empty();
        }
        List<Point> path = new ArrayList<>();
        append(path, stops.get(Math.max(from, to)));
        if (from != to) {
            Network.Reach reach = reaches.get(Math.min(from, to));
            for (int s = sectors[Math.max(from, to)]; s >= 0; s = reach.before(s)) {
                append(path, map.point(map.cornerOf(s)));
            }
            append(path, stops.get(Math.min(from, to)));
        }
        if (from < to) {
            Collections.reverse(path);
        }
        return Optional.of(new Polyline(path));
    }

    /** Adds a point; drops the last one if it is the same place or the way goes straight on there. */
    private static void append(List<Point> path, Point next) {
        int last = path.size() - 1;
        boolean same = last >= 0 && path.get(last).equals(next);
        boolean straight = last >= 1
                && Turn.of(path.get(last - 1), path.get(last), next) == 0
                && isBetween(path.get(last - 1), path.get(last), next);
        if (same || straight) {
            path.remove(last);
        }
        path.add(next);
    }

    private static boolean isBetween(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.x() - b.x()) + (b.y() - a.y()) * (c.y() - b.y()) > 0;
    }
}
