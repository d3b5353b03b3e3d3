package loamline.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.cancel.Cancellation;
import loamline.geometry.Lines;
import loamline.geometry.Polyline;
import loamline.geometry.Region;

/**
 * The head-to-head check: the nearest head on every side of an arc should be within the throw (US EPA, WaterSense at
 * Work, section 5.3: spacing equal to the radius).
 *
 * <p>A neighbour is a head of any valve on the same lawn: no farther than {@link #FARTHEST_RADII} throws, with most of
 * the straight way to it over turf. Heads stand on edges, so a side takes in what lies a little outside it.
 */
final class Neighbours {
    /** A head farther than so many throws waters another part: common practice, no source. */
    static final double FARTHEST_RADII = 4;

    /** Heads in the same box are no neighbours, m. */
    private static final double SAME_PLACE_M = 0.1;

    /** A side takes in heads so far outside its edges: arcs are set by hand, degrees. */
    private static final double EDGE_SLACK_DEG = 10;

    /** Placing heads, measuring and setting throws is good to so much, as a share of the distance. */
    private static final double REACH_SLACK = 0.005;

    private static final double LONGEST_SIDE_DEG = 90;
    private static final double LEAST_TURF_SHARE = 0.5;

    private final List<SprinklerHead> heads;
    private final Region lawn;

    /** @param lawn turf with the edges on which heads stand */
    Neighbours(List<SprinklerHead> heads, Region lawn) {
        this.heads = heads;
        this.lawn = lawn;
    }

    /** The check of every head, in order. */
    List<HeadToHead> check() {
        return heads.stream().map(this::check).toList();
    }

    private HeadToHead check(SprinklerHead head) {
        Cancellation.check();
        Arc arc = head.pattern().arc();
        int count = (int) Math.ceil(arc.sweepDeg() / LONGEST_SIDE_DEG - 1e-9);
        List<SprinklerHead> near = near(head);
        List<HeadToHead.Side> sides = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            sides.add(side(head, near, Arc.of(arc.startDeg() + i * arc.sweepDeg() / count, arc.sweepDeg() / count)));
        }
        OptionalDouble nearestM =
                sides.stream().flatMapToDouble(side -> side.nearestM().stream()).min();
        OptionalDouble reach = nearestM.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(head.pattern().radiusM() / nearestM.getAsDouble());
        return new HeadToHead(head.head().id(), head.head().key(), nearestM, reach, sides);
    }

    private List<SprinklerHead> near(SprinklerHead head) {
        return heads.stream()
                .filter(other -> distanceM(head, other) >= SAME_PLACE_M
                        && distanceM(head, other)
                                <= FARTHEST_RADII * head.pattern().radiusM())
                .sorted(Comparator.comparingDouble(other -> distanceM(head, other)))
                .toList();
    }

    private HeadToHead.Side side(SprinklerHead head, List<SprinklerHead> near, Arc part) {
        double sweepDeg = Math.min(Arc.FULL_DEG, part.sweepDeg() + 2 * EDGE_SLACK_DEG);
        Arc wide = Arc.of(part.startDeg() - (sweepDeg - part.sweepDeg()) / 2, sweepDeg);
        Optional<SprinklerHead> next = near.stream()
                .filter(other -> wide.holds(
                        other.head().at().x() - head.head().at().x(),
                        other.head().at().y() - head.head().at().y()))
                .filter(other -> overTurf(head, other))
                .findFirst();
        double reachM = head.pattern().radiusM() * (1 + REACH_SLACK);
        return new HeadToHead.Side(
                part.startDeg(),
                part.sweepDeg(),
                next.map(other -> other.head().id()),
                next.isPresent() ? OptionalDouble.of(distanceM(head, next.get())) : OptionalDouble.empty(),
                next.isEmpty() || distanceM(head, next.get()) <= reachM);
    }

    private static double distanceM(SprinklerHead a, SprinklerHead b) {
        return a.head().at().distanceTo(b.head().at());
    }

    private boolean overTurf(SprinklerHead a, SprinklerHead b) {
        Polyline way = new Polyline(List.of(a.head().at(), b.head().at()));
        double onTurfM = Lines.within(List.of(way), lawn).stream()
                .mapToDouble(Polyline::lengthM)
                .sum();
        return onTurfM >= LEAST_TURF_SHARE * way.lengthM();
    }
}
