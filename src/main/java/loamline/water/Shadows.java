package loamline.water;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.yard.Barrier;
import loamline.yard.Building;
import loamline.yard.Yard;

/**
 * What stands in the way of water: buildings, and fences and walls that are solid, their gates open.
 *
 * <p>Water flies straight and low: whatever its height, an obstacle keeps dry all that lies behind it, seen from the
 * head. So this is the most that obstacles can do.
 */
final class Shadows {
    /** A head so near to a wall stands at it and throws away from it, m. */
    private static final double AT_THE_WALL_M = 0.05;

    private final List<Region> buildings;
    private final List<Polyline> walls;

    private Shadows(List<Region> buildings, List<Polyline> walls) {
        this.buildings = buildings;
        this.walls = walls;
    }

    static Shadows of(Yard yard) {
        List<Region> buildings = yard.all(Building.class)
                .map(building -> Region.of(building.outline()))
                .toList();
        Stream<Polyline> solid =
                yard.all(Barrier.class).filter(Barrier::solid).flatMap(barrier -> barrier.closedStretches().stream());
        Stream<Polyline> sides = buildings.stream()
                .flatMap(building -> building.outline().rings())
                .map(Shadows::closed);
        return new Shadows(buildings, Stream.concat(solid, sides).toList());
    }

    private static Polyline closed(List<Point> ring) {
        List<Point> points = new ArrayList<>(ring);
        points.add(ring.get(0));
        return new Polyline(points);
    }

    /** The ground that stays dry for a head: what stands in its way and what lies behind; perhaps none. */
    Region behindAll(HeadPattern head) {
        Box throwBox =
                new Box(head.at().x(), head.at().y(), head.at().x(), head.at().y()).grown(head.radiusM());
        Collection<Region> dark = new ArrayList<>();
        buildings.stream()
                .filter(building -> building.box().stream().anyMatch(throwBox::touches))
                .forEach(dark::add);
        for (Polyline wall : walls) {
            for (int i = 1; i < wall.points().size(); i++) {
                Polyline side = new Polyline(wall.points().subList(i - 1, i + 1));
                double farM = side.nearestTo(head.at()).distanceTo(head.at());
                if (farM > AT_THE_WALL_M && farM < head.radiusM()) {
                    dark.add(behind(head, side.points().get(0), side.points().get(1)));
                }
            }
        }
        return Region.union(dark);
    }

    /** The ground behind a straight wall, as far as the head throws and farther. */
    private static Region behind(HeadPattern head, Point from, Point to) {
        Point farFrom = beyond(head, from);
        Point farTo = beyond(head, to);
        Point farMiddle = beyond(head, farFrom.towards(farTo, 0.5));
        return Region.of(Outline.of(List.of(from, farFrom, farMiddle, farTo, to)));
    }

    /** Two throws out: a chord over a quarter turn then stays outside the circle. */
    private static Point beyond(HeadPattern head, Point p) {
        double farM = Math.max(AT_THE_WALL_M, head.at().distanceTo(p));
        return head.at().towards(p, Math.max(1, 2 * head.radiusM() / farM));
    }
}
