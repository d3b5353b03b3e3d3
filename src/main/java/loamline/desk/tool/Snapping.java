package loamline.desk.tool;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.desk.tool.Input.Held;
import loamline.geometry.Edge;
import loamline.geometry.EdgeIndex;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.place.Frame;
import loamline.yard.Yard;

/**
 * Draws the pointer to what is there: corners and edges of any feature, their crossings, and the lines that a side
 * would follow (straight on, at a right angle, parallel, in line). Where two of these meet they hold together.
 *
 * <p>Case by case: Alt leaves the pointer alone. Shift, once a place is drawn, keeps the side to steps of 45° from
 * north, however far that is, and then to what it meets there. Otherwise the best candidate within reach wins, by
 * rank and then by distance; without one the pointer stays where it is. The last place drawn is never offered.
 *
 * <p>Made once a yard; an answer looks at what is near only.
 */
public final class Snapping {
    /** How far a snap moves the pointer, in logical pixels. Common practice, no source. */
    public static final double REACH_PX = 10;

    /** Shorter sides are none, m: a millimetre is finer than anyone traces. */
    public static final double LEAST_SIDE_M = 0.001;

    /** How near an edge is to lend its direction, in logical pixels. */
    static final double NEIGHBOUR_PX = 40;

    /** How long it must be for that, in logical pixels: the sides of a drawn circle lend none. */
    static final double LEAST_NEIGHBOUR_PX = 25;

    /** More directions at once would be a maze. */
    private static final int MOST_NEIGHBOURS = 6;

    /** More edges within reach cannot be told apart on the screen. */
    private static final int MOST_NEAR = 32;

    /** With nothing to snap to. */
    static final Snapping TO_NOTHING = over(Yard.empty("", Frame.local()));

    private final Yard yard;
    private final EdgeIndex edges;

    private Snapping(Yard yard) {
        this.yard = yard;
        edges = new EdgeIndex(yard.features().stream()
                .flatMap(feature -> feature.shape().stream())
                .flatMap(Snapping::edges)
                .toList());
    }

    /** Snapping to the features of a yard. */
    public static Snapping over(Yard yard) {
        return new Snapping(yard);
    }

    /** The same for a yard; itself if it is made for an equal one. */
    public Snapping current(Yard now) {
        return now.equals(yard) ? this : over(now);
    }

    /**
     * Where the pointer is taken to be.
     *
     * @param held keys held down
     * @param drawn the places drawn so far, in order, any two in a row apart; the next side starts from the last
     * @param metresPerPx ground to a logical pixel
     */
    public Snapped snap(Point pointer, Held held, List<Point> drawn, double metresPerPx) {
        if (held.alt()) {
            return Snapped.free(pointer);
        }
        if (held.shift() && !drawn.isEmpty() && !drawn.get(drawn.size() - 1).equals(pointer)) {
            return stepped(pointer, drawn, metresPerPx);
        }
        SnapAsk ask = ask(pointer, drawn, metresPerPx);
        return best(SnapSources.ALL.stream().flatMap(source -> source.apply(ask)), ask)
                .orElse(Snapped.free(pointer));
    }

    /** On the nearest of eight directions from the last place, and there at what it meets. */
    private Snapped stepped(Point pointer, List<Point> drawn, double metresPerPx) {
        Track step = Tracks.stepped(drawn.get(drawn.size() - 1), pointer);
        Point on = step.line().nearestTo(pointer);
        SnapAsk ask = ask(on, drawn, metresPerPx);
        Stream<SnapCandidate> met = Stream.concat(
                SnapSources.atEdges(step, ask),
                ask.tracks().stream().flatMap(track -> SnapSources.crossing(step, track).stream()));
        return best(met, ask).orElse(new Snapped(on, step.word(), List.of(step.help(on))));
    }

    private static Optional<Snapped> best(Stream<SnapCandidate> candidates, SnapAsk ask) {
        Predicate<SnapCandidate> isElsewhere = candidate -> ask.last()
                .filter(last -> last.distanceTo(candidate.at()) < LEAST_SIDE_M)
                .isEmpty();
        return candidates
                .filter(candidate -> ask.reaches(candidate.at()))
                .filter(isElsewhere)
                .min(Comparator.comparing(SnapCandidate::rank)
                        .thenComparingDouble(candidate -> candidate.at().distanceTo(ask.pointer())))
                .map(SnapCandidate::snapped);
    }

    private SnapAsk ask(Point pointer, List<Point> drawn, double metresPerPx) {
        double reachM = REACH_PX * metresPerPx;
        List<Edge> neighbours = neighbours(pointer, NEIGHBOUR_PX, metresPerPx);
        List<Edge> begunAt =
                drawn.isEmpty() ? List.of() : neighbours(drawn.get(drawn.size() - 1), REACH_PX, metresPerPx);
        List<Edge> both =
                Stream.concat(begunAt.stream(), neighbours.stream()).distinct().toList();
        List<Track> tracks = Stream.of(
                        Tracks.ofLastSide(drawn),
                        Tracks.ofNeighbours(drawn, both),
                        Tracks.ofStart(drawn),
                        Tracks.ofExtensions(neighbours))
                .flatMap(some -> some)
                .toList();
        return new SnapAsk(pointer, reachM, drawn, edges.near(pointer, reachM, MOST_NEAR), tracks);
    }

    /** The nearest edges that lend their direction. */
    private List<Edge> neighbours(Point place, double withinPx, double metresPerPx) {
        return edges.near(place, withinPx * metresPerPx, MOST_NEAR).stream()
                .filter(edge -> edge.lengthM() > LEAST_NEIGHBOUR_PX * metresPerPx)
                .limit(MOST_NEIGHBOURS)
                .toList();
    }

    private static Stream<Edge> edges(Shape shape) {
        if (shape instanceof Point p) {
            return Stream.of(edge(p, p));
        }
        if (shape instanceof Polyline line) {
            return sides(line.points());
        }
        return ((Outline) shape).rings().filter(ring -> !ring.isEmpty()).flatMap(Snapping::ring);
    }

    private static Stream<Edge> ring(List<Point> ring) {
        return Stream.concat(sides(ring), Stream.of(edge(ring.get(ring.size() - 1), ring.get(0))));
    }

    private static Stream<Edge> sides(List<Point> points) {
        return IntStream.range(1, points.size()).mapToObj(i -> edge(points.get(i - 1), points.get(i)));
    }

    private static Edge edge(Point from, Point to) {
        return new Edge(from, to, true, true);
    }
}
