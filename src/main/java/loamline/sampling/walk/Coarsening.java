package loamline.sampling.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;

/**
 * Ground with fewer edges that lies within other ground and leaves its fences out.
 *
 * @param ground the new ground
 * @param movedM no edge of the new ground lies farther from the old ground's edge and fences, m
 */
record Coarsening(Ground ground, double movedM) {
    /** Walls become twice this thick on either side, so that things which meet leave no gap. */
    private static final double FIRST_STEP_M = FreeSpace.MEETS_M / 4;

    private static final double STEP_GROWTH = 4;

    /** After so many steps walls are as thick as a county. */
    private static final int MAX_STEPS = 12;

    /** How many vertices may be made thick, as a multiple of the edges that may be left: bounds the time it takes. */
    private static final int THICK_SHARE = 2;

    /** The same for vertices of long lines, which may wind and then take more time. */
    private static final double THICK_LONG_SHARE = 0.5;

    /** A line of so many vertices, as of a rectangle, is not long. */
    private static final int SHORT = 5;

    /** Lines are thinned by one step, thickened by two and thinned again by almost one: so they cover the old ones. */
    private static final double THICKNESS_STEPS = 2;

    private static final double LAST_THINNING_STEPS = 0.9;
    private static final double MOVED_STEPS = 1 + THICKNESS_STEPS + LAST_THINNING_STEPS;

    /** Nowhere to stand. */
    private static final Coarsening CLOSED = new Coarsening(new Ground(Region.EMPTY, true), Double.POSITIVE_INFINITY);

    /**
     * Walls thinned and made thick, more and more until they are few enough.
     *
     * @param maxEdges how many edges the new ground may have
     * @return no ground at all if thousands of obstacles stand so far apart that they never become one
     */
    static Coarsening of(Ground exact, List<Polyline> fences, int maxEdges) {
        return DoubleStream.iterate(FIRST_STEP_M, stepM -> stepM * STEP_GROWTH)
                .limit(MAX_STEPS)
                .mapToObj(stepM -> attempt(exact, fences, maxEdges, stepM))
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(CLOSED);
    }

    private static Optional<Coarsening> attempt(Ground exact, List<Polyline> fences, int maxEdges, double stepM) {
        Outline rings = thinned(exact.region().outline(), stepM);
        List<Polyline> lines = Stream.concat(
                        rings.rings().map(Coarsening::closed), fences.stream().map(Polyline::points))
                .map(line -> new Polyline(Sleeve.thinned(line, stepM)))
                .toList();
        if (!isQuicklyThick(lines, maxEdges)) {
            return Optional.empty();
        }
        Region walls = Region.union(lines.stream()
                .map(line -> Region.around(line, THICKNESS_STEPS * stepM))
                .toList());
        Region area = Region.of(rings);
        Region region = exact.openInside() ? area.minus(walls) : area.union(walls);
        Outline smooth = thinned(region.outline(), LAST_THINNING_STEPS * stepM);
        return vertices(smooth.rings()) > maxEdges
                ? Optional.empty()
                : Optional.of(new Coarsening(new Ground(Region.of(smooth), exact.openInside()), MOVED_STEPS * stepM));
    }

    private static boolean isQuicklyThick(List<Polyline> lines, int maxEdges) {
        int all = vertices(lines.stream().map(Polyline::points));
        int ofLong = vertices(lines.stream().map(Polyline::points).filter(line -> line.size() > SHORT));
        return all <= THICK_SHARE * maxEdges && ofLong <= THICK_LONG_SHARE * maxEdges;
    }

    private static int vertices(Stream<List<Point>> lines) {
        return lines.mapToInt(List::size).sum();
    }

    private static Outline thinned(Outline outline, double toleranceM) {
        return new Outline(outline.parts().stream()
                .map(part -> new Outline.Part(
                        thinnedRing(part.shell(), toleranceM),
                        part.holes().stream()
                                .map(hole -> thinnedRing(hole, toleranceM))
                                .toList()))
                .toList());
    }

    private static List<Point> thinnedRing(List<Point> ring, double toleranceM) {
        List<Point> kept = Sleeve.thinned(closed(ring), toleranceM);
        return kept.subList(0, kept.size() - 1);
    }

    private static List<Point> closed(List<Point> ring) {
        List<Point> line = new ArrayList<>(ring);
        line.add(ring.get(0));
        return line;
    }
}
