package loamline.sampling.walk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loamline.geometry.Edge;
import loamline.geometry.Edges;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Gate;
import loamline.yard.Kind;
import loamline.yard.Yard;

/**
 * The ground that can be walked: round buildings, water and beds, through the gates of fences, inside the boundary.
 *
 * <p>One walks as a person of no width, but of more than none: along the edge of an obstacle, of the boundary and of a
 * fence, round a fence's free end, but not between two things that touch. Case by case:
 *
 * <ul>
 *   <li>Obstacles that overlap or share a side are one; between two that meet at a point there is no way.
 *   <li>A fence that meets an obstacle, the boundary or a fence is closed there: where it ends on it, crosses it, shares
 *       a corner with it.
 *   <li>What misses by {@link #MEETS_M} or less meets, be it obstacles, fences, the boundary or the two ends of one
 *       fence; a gap in a fence that is no wider is none. A narrow place within one obstacle's outline stays open.
 *   <li>A stop on an edge is reached from the open side. On a fence, or where obstacles touch, it is reached from one
 *       side only: the one from which most other stops can be reached, by the shorter ways if there are as many.
 *   <li>A stop in an obstacle or off the yard, by {@link #STOP_REACH_M} or less, is reached from the nearest open
 *       place; the straight leg from there counts. Farther in it cannot be reached, and {@link Ways#standing} says so.
 *   <li>A yard's gate outside its boundary is reached by a straight way from the nearest place of the boundary.
 *   <li>More than {@link #MAX_EDGES} edges are too many. Then all walls, fences made solid, are moved outwards and
 *       smoothed until they have no more, and {@link #coarsenedM} says by how much at most. The ways are still free,
 *       but may be longer than the shortest, and a passage narrower than twice that may be lost.
 * </ul>
 */
public final class FreeSpace {
    /** Things this near to each other meet: nobody fits through, and hands do not draw finer, m. */
    public static final double MEETS_M = 0.05;

    /** A stop this far inside an obstacle or outside the boundary stands at its edge: as drawn by hand, m. */
    public static final double STOP_REACH_M = 0.05;

    /** A stop this near to a wall stands at it: above rounding, below all measures, m. */
    static final double CONTACT_M = 1e-9;

    /** What is looked at without smoothing; all ways of a yard with this many edges take some seconds. */
    public static final int MAX_EDGES = 6000;

    /** Half the width of the way to a gate outside the boundary, m. */
    private static final double GATE_WAY_M = 0.25;

    private final Region closed;
    private final Ground ground;
    private final List<Edge> border;
    private final List<Edge> fences;
    private final double coarsenedM;

    private FreeSpace(Region closed, Ground ground, List<Edge> fences, double coarsenedM) {
        this.closed = closed;
        this.ground = ground;
        this.border = List.copyOf(ground.border());
        this.fences = List.copyOf(fences);
        this.coarsenedM = coarsenedM;
    }

    /** A yard's: no way through its buildings, water and beds, nor through fences and walls but at their gates. */
    public static FreeSpace of(Yard yard) {
        List<Outline> solids = Stream.concat(
                        yard.all(Building.class).map(Building::outline),
                        yard.all(Cover.class)
                                .filter(c -> c.cover() == Kind.WATER || c.cover() == Kind.BED)
                                .map(Cover::outline))
                .toList();
        return of(
                solids.stream().map(Region::of).toList(),
                yard.all(Barrier.class)
                        .flatMap(b -> b.closedStretches().stream())
                        .toList(),
                boundary(yard));
    }

    private static Optional<Region> boundary(Yard yard) {
        Region property = Region.union(
                yard.all(Boundary.class).map(b -> Region.of(b.outline())).toList());
        if (property.isEmpty()) {
            return Optional.empty();
        }
        List<Region> parts = new ArrayList<>(List.of(property));
        yard.all(Gate.class)
                .map(Gate::at)
                .filter(at -> !property.covers(at))
                .forEach(at -> parts.add(way(at, property)));
        return Optional.of(Region.union(parts));
    }

    /** The straight way to a gate from the nearest place of a property. */
    private static Region way(Point gate, Region property) {
        Point nearest = Edges.around(property, true).stream()
                .map(edge -> edge.nearestTo(gate))
                .min(Comparator.comparingDouble(gate::distanceTo))
                .orElse(gate);
        return Region.around(new Polyline(List.of(gate, nearest)), GATE_WAY_M);
    }

    /**
     * The ground round some obstacles.
     *
     * @param solids ground that is closed; may overlap
     * @param barriers lines that may not be crossed; may cross each other and the solids
     * @param boundary what may not be left; empty if the ground has no end
     */
    public static FreeSpace of(Collection<Region> solids, List<Polyline> barriers, Optional<Region> boundary) {
        Region closed = Region.union(solids);
        Ground ground = Ground.of(closed, boundary);
        List<Edge> fences = new ArrayList<>();
        barriers.forEach(barrier -> fences.addAll(Edges.along(barrier)));
        if (ground.border().size() + fences.size() > MAX_EDGES) {
            Coarsening coarse = Coarsening.of(ground, barriers, MAX_EDGES);
            return new FreeSpace(closed, coarse.ground(), List.of(), coarse.movedM());
        }
        List<Region> regions = new ArrayList<>(solids);
        boundary.ifPresent(regions::add);
        fences.addAll(Meeting.links(regions, barriers, MEETS_M));
        return new FreeSpace(closed, ground, fences, 0);
    }

    /**
     * How far walls were moved to make do with fewer edges, at most, m; 0 for most yards, whose ways are exact; infinite
     * if thousands of obstacles far apart left no ground that is known, and so no way.
     */
    public double coarsenedM() {
        return coarsenedM;
    }

    /** Whether the straight way between two places is open. */
    public boolean isOpen(Point a, Point b) {
        Ways ways = ways(List.of(a, b));
        return ways.strayM(0) + ways.strayM(1) == 0
                && ways.path(0, 1).filter(path -> path.points().size() <= 2).isPresent();
    }

    /**
     * The shortest ways between all stops.
     *
     * <p>Cost: O(n² log n) for n stops and ends of edges: about 50 ms for a hectare with 400 corners and 73 stops.
     *
     * @param stops in any order; may share a place
     */
    public Ways ways(List<Point> stops) {
        List<Foothold> footholds = stops.stream().map(this::foothold).toList();
        List<Edge> cut = new ArrayList<>(border);
        cut.addAll(fences);
        Set<Point> onWalls = new HashSet<>();
        for (Foothold f : footholds) {
            if (f.isOpen() && cutAt(f.at(), cut)) {
                onWalls.add(f.at());
            }
        }
        List<Edge> walls = Edges.noded(cut);
        List<Foothold> settled = footholds.stream()
                .map(f -> onWalls.contains(f.at()) ? f.movedTo(nearestEnd(walls, f.at())) : f)
                .toList();
        return Ways.of(walls, stops, settled);
    }

    private Foothold foothold(Point stop) {
        if (ground.holds(stop)) {
            return new Foothold(stop, 0, Ways.Standing.OPEN);
        }
        return border.stream()
                .map(edge -> edge.nearestTo(stop))
                .min(Comparator.comparingDouble(stop::distanceTo))
                .filter(foot -> foot.distanceTo(stop) <= STOP_REACH_M + coarsenedM)
                .map(foot -> new Foothold(foot, foot.distanceTo(stop), Ways.Standing.OPEN))
                .orElseGet(() -> new Foothold(
                        stop, 0, closed.covers(stop) ? Ways.Standing.IN_OBSTACLE : Ways.Standing.OFF_YARD));
    }

    /** Cuts all edges that pass by a place at it; says whether there were any. */
    private static boolean cutAt(Point at, List<Edge> edges) {
        boolean touched = false;
        for (int i = edges.size() - 1; i >= 0; i--) {
            Edge edge = edges.get(i);
            if (edge.distanceTo(at) <= CONTACT_M) {
                edges.set(i, edge.with(edge.from(), at));
                edges.add(edge.with(at, edge.to()));
                touched = true;
            }
        }
        return touched;
    }

    private static Point nearestEnd(List<Edge> walls, Point at) {
        return walls.stream()
                .flatMap(e -> Stream.of(e.from(), e.to()))
                .min(Comparator.comparingDouble(at::distanceTo))
                .orElseThrow();
    }
}
