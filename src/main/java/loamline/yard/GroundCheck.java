package loamline.yard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.account.Where;
import loamline.geometry.Box;
import loamline.geometry.EdgeDistance;
import loamline.geometry.Point;
import loamline.geometry.Region;

/** Whether the features of a yard lie where they can: on the lot, on the turf, not on each other. */
final class GroundCheck {
    /** Ground smaller than this is the wobble of two edges traced by hand, m² (about 1 ft²). */
    static final double WOBBLE_M2 = 0.1;

    /** A head stands at the very edge of the turf, and tracing moves that edge by up to this, m. */
    static final double HEAD_SLACK_M = 0.5;

    /** Overlaps told; who has more has drawn the same turf twice. */
    static final int MAX_OVERLAPS = 100;

    private final Yard yard;
    private final Map<Integer, Region> grounds;
    private final List<Problem> problems = new ArrayList<>();

    /** @param grounds what each outline encloses, by its feature's position; none is empty */
    GroundCheck(Yard yard, Map<Integer, Region> grounds) {
        this.yard = yard;
        this.grounds = grounds;
    }

    List<Problem> check() {
        Region turf = union(Turf.class);
        if (yard.all(Turf.class).findAny().isEmpty()) {
            problems.add(Problem.error("NO_TURF", Where.WHOLE, "there is no turf in this yard yet: trace it"));
        }
        if (yard.all(Boundary.class).findAny().isEmpty()) {
            problems.add(Problem.info(
                    "NO_BOUNDARY",
                    Where.WHOLE,
                    "no property line is drawn: walks are not kept inside it, water over it is not counted"));
        }
        with(Boundary.class)
                .skip(1)
                .forEach(index -> tell(
                        Severity.WARNING,
                        "SEVERAL_BOUNDARIES",
                        index,
                        "is not the only property line; all together count as the lot: remove what does not belong"));
        Region lot = union(Boundary.class);
        if (!lot.isEmpty()) {
            checkAgainst(lot, turf);
        }
        checkHeadsAndTrees(turf, union(Building.class));
        checkOverlaps();
        return problems;
    }

    private void checkAgainst(Region lot, Region turf) {
        Region outside = turf.minus(lot);
        with(Turf.class).filter(index -> !outside.isEmpty()).forEach(index -> {
            double outsideM2 = ground(index).intersection(outside).areaM2();
            if (outsideM2 > WOBBLE_M2) {
                tell(
                        Severity.WARNING,
                        "TURF_OUTSIDE_BOUNDARY",
                        index,
                        "lies outside the property line with " + CheckWords.area(outsideM2) + ": move one of the two");
            }
        });
        with(Building.class)
                .filter(grounds::containsKey)
                .filter(index -> ground(index).intersection(lot).areaM2() <= WOBBLE_M2)
                .forEach(index -> tell(
                        Severity.INFO,
                        "BUILDING_OUTSIDE_BOUNDARY",
                        index,
                        "stands outside the property line: it counts for its shade"));
        Region nearLot = lot.buffer(HEAD_SLACK_M);
        with(Head.class)
                .filter(index -> !nearLot.covers(head(index)))
                .forEach(index -> tell(
                        Severity.WARNING, "HEAD_OUTSIDE_BOUNDARY", index, "stands outside the property line: move it"));
    }

    private void checkHeadsAndTrees(Region turf, Region buildings) {
        EdgeDistance edge = new EdgeDistance(turf);
        with(Head.class).forEach(index -> {
            if (buildings.holdsInside(head(index))) {
                tell(Severity.WARNING, "HEAD_ON_BUILDING", index, "stands inside a building: move it");
            } else if (!turf.isEmpty() && !isOn(turf, edge, head(index))) {
                tell(Severity.WARNING, "HEAD_OFF_TURF", index, "stands off the turf: move it, or trace that turf");
            }
        });
        with(Tree.class)
                .filter(index -> buildings.holdsInside(((Tree) yard.features().get(index)).at()))
                .forEach(index -> tell(
                        Severity.WARNING,
                        "TREE_ON_BUILDING",
                        index,
                        "has its trunk inside a building: move one of the two"));
    }

    private static boolean isOn(Region region, EdgeDistance edge, Point p) {
        return region.covers(p) || edge.to(p) <= HEAD_SLACK_M;
    }

    /** Ground that turf of two zones claims. */
    private record Overlap(int first, int second, double areaM2) {}

    private void checkOverlaps() {
        List<Overlap> overlaps = overlaps();
        overlaps.stream()
                .sorted(Comparator.comparingInt(Overlap::second).thenComparingInt(Overlap::first))
                .forEach(overlap -> tell(
                        Severity.WARNING,
                        "ZONES_OVERLAP",
                        overlap.second(),
                        "overlaps " + CheckWords.name(yard.features().get(overlap.first())) + " by "
                                + CheckWords.area(overlap.areaM2())
                                + ", which count once, to the zone listed first: move the border between them"));
        if (overlaps.size() == MAX_OVERLAPS) {
            problems.add(Problem.warning(
                    "ZONES_OVERLAP_MORE", Where.WHOLE, "more zones may overlap: mend these first, then check again"));
        }
    }

    /** The first so many pairs, found by going through the boxes from west to east. */
    private List<Overlap> overlaps() {
        List<Integer> fromWest = with(Turf.class)
                .filter(grounds::containsKey)
                .sorted(Comparator.comparingDouble(index -> box(index).minX()))
                .toList();
        List<Overlap> overlaps = new ArrayList<>();
        for (int i = 0; i < fromWest.size(); i++) {
            double eastM = box(fromWest.get(i)).maxX();
            for (int j = i + 1; j < fromWest.size() && box(fromWest.get(j)).minX() < eastM; j++) {
                int first = Math.min(fromWest.get(i), fromWest.get(j));
                int second = Math.max(fromWest.get(i), fromWest.get(j));
                double areaM2 = zone(first).equals(zone(second)) ? 0 : sharedM2(first, second);
                if (areaM2 > WOBBLE_M2) {
                    overlaps.add(new Overlap(first, second, areaM2));
                }
                if (overlaps.size() == MAX_OVERLAPS) {
                    return overlaps;
                }
            }
        }
        return overlaps;
    }

    private double sharedM2(int a, int b) {
        boolean apart = box(a).maxY() <= box(b).minY() || box(b).maxY() <= box(a).minY();
        return apart ? 0 : ground(a).intersection(ground(b)).areaM2();
    }

    private Stream<Integer> with(Class<? extends Feature> type) {
        return IntStream.range(0, yard.features().size())
                .boxed()
                .filter(index -> type.isInstance(yard.features().get(index)));
    }

    private Region union(Class<? extends Feature> type) {
        return Region.union(with(type).map(this::ground).toList());
    }

    /** What a feature's outline encloses; nothing if it encloses nothing. */
    private Region ground(int index) {
        return grounds.getOrDefault(index, Region.EMPTY);
    }

    private Box box(int index) {
        return ground(index).box().orElseThrow();
    }

    private String zone(int index) {
        return ((Turf) yard.features().get(index)).zone();
    }

    private Point head(int index) {
        return ((Head) yard.features().get(index)).at();
    }

    private void tell(Severity severity, String code, int index, String what) {
        String message = CheckWords.name(yard.features().get(index)) + " " + what;
        problems.add(new Problem(severity, code, Where.feature(index), message));
    }
}
