package loamline.sampling.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.geometry.ShortestPaths;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Gate;
import loamline.yard.Kind;
import loamline.yard.Yard;

/**
 * Where one may walk in a yard: inside the property line if there is one, not through buildings, beds and water,
 * not over fences and walls except through their gates.
 *
 * <p>The end of a fence or wall that meets a building, a bed, water, the property line or another barrier, or stops
 * short of it by less than {@link #CLOSED_GAP_M}, is closed. A gate that was put outside the property line can be
 * walked to in a straight line.
 */
public final class FreeSpace {
    /** A gap at a fence's end that is tracing, not a way through, m: a few pixels of an aerial image. */
    public static final double CLOSED_GAP_M = 0.05;

    private static final Set<Kind> WALKED_ROUND = Set.of(Kind.BED, Kind.WATER);

    /** Corners up to which the walk is exact; beyond, obstacles are drawn a little larger with fewer corners. */
    private static final int MOST_CORNERS = 2000;

    /** First margin of coarser obstacles, m; doubled until the corners are few enough. */
    private static final double FIRST_MARGIN_M = 0.01;

    /** Doublings of the margin at most: 0.01 m to 5 m. */
    private static final int MOST_DOUBLINGS = 9;

    /** Free ground beyond all that is drawn, where no property line bounds it, m. */
    private static final double AROUND_M = 100;

    /** Half the width of the way to a gate outside the property line, m. */
    private static final double GATE_WAY_M = 0.25;

    private final Region free;
    private final List<Polyline> walls;

    private FreeSpace(Region free, List<Polyline> walls) {
        this.free = free;
        this.walls = walls;
    }

    /** The free space of a yard. */
    public static FreeSpace of(Yard yard) {
        Region solids = withFewCorners(solids(yard), 1);
        Region bounds = bounds(yard);
        return new FreeSpace(bounds.minus(solids), walls(yard, solids, bounds));
    }

    /** Shortest paths between stops. */
    public ShortestPaths paths(List<Point> stops) {
        return ShortestPaths.over(free, walls, stops);
    }

    /** A region with few enough corners: larger (sign 1) or smaller (-1) than the one given, or the same. */
    private static Region withFewCorners(Region region, int sign) {
        Region coarse = region;
        double marginM = FIRST_MARGIN_M;
        for (int i = 0; i < MOST_DOUBLINGS && coarse.outline().vertices().count() > MOST_CORNERS; i++) {
            coarse = region.coarser(sign * marginM);
            marginM *= 2;
        }
        return coarse;
    }

    private static Region solids(Yard yard) {
        return Region.union(Stream.concat(
                        yard.all(Building.class).map(Building::outline),
                        yard.all(Cover.class)
                                .filter(cover -> WALKED_ROUND.contains(cover.cover()))
                                .map(Cover::outline))
                .map(Region::of)
                .toList());
    }

    private static Region bounds(Yard yard) {
        Region property = Region.union(
                yard.all(Boundary.class).map(b -> Region.of(b.outline())).toList());
        if (property.isEmpty()) {
            return yard.box()
                    .map(box -> Region.of(box.grown(AROUND_M).outline()))
                    .orElse(Region.EMPTY);
        }
        Region inside = withFewCorners(property, -1);
        List<Region> ways = new ArrayList<>(List.of(inside));
        yard.all(Gate.class).map(Gate::at).filter(at -> !inside.covers(at)).forEach(at -> ways.add(way(at, inside)));
        return Region.union(ways);
    }

    private static Region way(Point gate, Region property) {
        Point nearest = rings(property)
                .map(ring -> ring.nearestTo(gate))
                .min(Comparator.comparingDouble(gate::distanceTo))
                .orElse(gate);
        return Region.around(new Polyline(List.of(gate, nearest)), GATE_WAY_M);
    }

    private static Stream<Polyline> rings(Region region) {
        return region.outline().rings().map(FreeSpace::closed);
    }

    private static Polyline closed(List<Point> ring) {
        List<Point> points = new ArrayList<>(ring);
        points.add(ring.get(0));
        return new Polyline(points);
    }

    /** The stretches that stop a walker, ends that nearly meet something drawn up to it. */
    private static List<Polyline> walls(Yard yard, Region solids, Region bounds) {
        List<Polyline> rings = Stream.concat(rings(solids), rings(bounds)).toList();
        List<Barrier> barriers = yard.all(Barrier.class).toList();
        List<Polyline> walls = new ArrayList<>();
        for (Barrier barrier : barriers) {
            List<Polyline> others = new ArrayList<>(rings);
            barriers.stream().filter(b -> !b.equals(barrier)).map(Barrier::line).forEach(others::add);
            List<Point> line = barrier.line().points();
            Point first = line.get(0);
            Point last = line.get(line.size() - 1);
            for (Polyline stretch : barrier.closedStretches()) {
                walls.add(stretch.map(p -> p.equals(first) || p.equals(last) ? drawnUp(p, others) : p));
            }
        }
        return walls;
    }

    private static Point drawnUp(Point end, List<Polyline> others) {
        return others.stream()
                .map(line -> line.nearestTo(end))
                .filter(p -> p.distanceTo(end) <= CLOSED_GAP_M)
                .min(Comparator.comparingDouble(end::distanceTo))
                .orElse(end);
    }
}
