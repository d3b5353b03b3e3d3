package loamline.yard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.CellMosaic;
import loamline.geometry.Edge;
import loamline.geometry.Edges;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.StraightLine;
import loamline.yard.ZoneDivision.Part;

/**
 * Parts of a yard by which its zones may be divided. Each proposal covers all of the yard; it is empty where the yard
 * lacks what it goes by.
 */
public final class Divisions {
    /** Paving that comes this near to the property line leaves the yard there, m. */
    private static final double AT_LINE_M = 0.5;

    /** Parts reach this far beyond all that is drawn, m. */
    private static final double BEYOND_M = 10;

    /** Side of the cells by which ground goes to a valve, m; {@link #MOST_CELLS} makes it larger in a large yard. */
    private static final double CELL_M = 0.5;

    private static final int MOST_CELLS = 200_000;

    private Divisions() {}

    /**
     * Front and back: parted through the middle of the largest building along its wall that looks most to the street.
     * The street is where paving meets the property line, else where the gate is.
     */
    public static Optional<List<Part>> byHouse(Yard yard) {
        Optional<Region> house = yard.all(Building.class)
                .map(building -> Region.of(building.outline()))
                .filter(region -> !region.isEmpty())
                .max(Comparator.comparingDouble(Region::areaM2));
        Optional<Point> street =
                atStreet(yard).or(() -> yard.all(Gate.class).map(Gate::at).findFirst());
        return house.flatMap(h -> street.map(to -> {
            StraightLine outward = outward(h, to);
            Region all = everything(yard);
            Region front = all.intersection(ahead(outward, all));
            return List.of(new Part("front", front), new Part("back", all.minus(front)));
        }));
    }

    private static Optional<Point> atStreet(Yard yard) {
        Region line = Region.union(yard.all(Boundary.class)
                .map(boundary -> Region.of(boundary.outline()))
                .map(lot -> lot.buffer(AT_LINE_M).minus(lot.buffer(-AT_LINE_M)))
                .toList());
        return yard.all(Cover.class)
                .filter(cover -> cover.cover() == Kind.PAVING)
                .map(cover -> Region.of(cover.outline()).intersection(line))
                .filter(met -> !met.isEmpty())
                .max(Comparator.comparingDouble(Region::areaM2))
                .flatMap(Region::centroid);
    }

    /** From the middle of the house square to the wall that looks most towards a place. */
    private static StraightLine outward(Region house, Point to) {
        Point middle = house.centroid().orElseThrow();
        StraightLine wall = Edges.around(house, true).stream()
                .max(Comparator.comparingDouble(Edge::lengthM))
                .map(edge -> StraightLine.between(edge.from(), edge.to()).through(middle))
                .orElseThrow();
        return Stream.of(wall, wall.square())
                .flatMap(axis -> Stream.of(axis, new StraightLine(middle, -axis.dx(), -axis.dy())))
                .max(Comparator.comparingDouble(axis -> axis.alongM(to)))
                .orElseThrow();
    }

    private static Region everything(Yard yard) {
        Box box = Box.around(yard.features().stream()
                        .flatMap(feature -> feature.shape().stream())
                        .flatMap(shape -> shape.vertices()))
                .orElseThrow();
        return Region.of(box.grown(BEYOND_M).outline());
    }

    /** All of some ground that lies ahead of a line's own place. */
    private static Region ahead(StraightLine line, Region ground) {
        Box box = ground.box().orElseThrow();
        double farM = box.widthM() + box.heightM();
        StraightLine across = line.square();
        StraightLine farther = across.through(line.at(farM));
        return Region.of(Outline.of(Stream.of(across.at(-farM), across.at(farM), farther.at(farM), farther.at(-farM))
                .flatMap(p -> Stream.of(p.x(), p.y()))
                .mapToDouble(Double::doubleValue)
                .toArray()));
    }

    /** Trouble spots as drawn, and the rest. */
    public static Optional<List<Part>> byTrouble(Yard yard) {
        Region spots = Region.union(yard.all(Trouble.class)
                .map(trouble -> Region.of(trouble.outline()))
                .toList());
        return spots.isEmpty()
                ? Optional.empty()
                : Optional.of(List.of(
                        new Part("trouble", spots),
                        new Part("sound", everything(yard).minus(spots))));
    }

    /** Each spot goes to the valve of the nearest head that throws that far and that way, else of the nearest head. */
    public static Optional<List<Part>> byValve(Yard yard) {
        List<Head> heads = yard.all(Head.class)
                .filter(head -> !head.valve().isBlank() && head.radiusM().orElse(0) > 0)
                .toList();
        List<String> valves = new ArrayList<>(
                new LinkedHashSet<>(heads.stream().map(Head::valve).toList()));
        if (valves.size() < 2) {
            return Optional.empty();
        }
        Box box = everything(yard).box().orElseThrow();
        double cellM = Math.max(CELL_M, Math.sqrt(box.widthM() * box.heightM() / MOST_CELLS));
        int columns = (int) Math.ceil(box.widthM() / cellM);
        int rows = (int) Math.ceil(box.heightM() / cellM);
        int[] cells = IntStream.range(0, columns * rows).toArray();
        int[] labels = IntStream.of(cells)
                .map(cell -> {
                    int column = cell % columns;
                    int row = cell / columns;
                    Point middle = new Point(box.minX() + (column + 0.5) * cellM, box.minY() + (row + 0.5) * cellM);
                    return valves.indexOf(nearest(heads, middle).valve());
                })
                .toArray();
        List<Region> grounds =
                new CellMosaic(box.minX(), box.minY(), cellM, columns).regions(cells, labels, valves.size());
        return Optional.of(IntStream.range(0, valves.size())
                .mapToObj(i -> new Part("valve " + valves.get(i), grounds.get(i)))
                .toList());
    }

    private static Head nearest(List<Head> heads, Point spot) {
        return heads.stream()
                .min(Comparator.comparing((Head head) -> !reaches(head, spot))
                        .thenComparingDouble(head -> head.at().distanceTo(spot)))
                .orElseThrow();
    }

    private static boolean reaches(Head head, Point spot) {
        double eastM = spot.x() - head.at().x();
        double northM = spot.y() - head.at().y();
        double beyondStartDeg = Math.toDegrees(Math.atan2(eastM, northM)) - head.arcStartDeg();
        double turnDeg = beyondStartDeg - Math.floor(beyondStartDeg / Head.FULL_CIRCLE_DEG) * Head.FULL_CIRCLE_DEG;
        return Math.hypot(eastM, northM) <= head.radiusM().orElse(0) && turnDeg <= head.arcSweepDeg();
    }
}
