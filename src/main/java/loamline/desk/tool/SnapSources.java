package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.desk.tool.SnapCandidate.Rank;
import loamline.geometry.Edge;
import loamline.geometry.Point;
import loamline.geometry.StraightLine;

/** Where snaps come from: each a function from what is asked to the places it offers, within reach or not. */
final class SnapSources {
    /** With fewer places drawn there is nothing to close. */
    static final int LEAST_TO_CLOSE = 3;

    static final List<Function<SnapAsk, Stream<SnapCandidate>>> ALL = List.of(
            SnapSources::start,
            SnapSources::corners,
            SnapSources::crossings,
            SnapSources::tracksAtEdges,
            SnapSources::edges,
            SnapSources::trackCrossings,
            SnapSources::tracks);

    private SnapSources() {}

    static Stream<SnapCandidate> start(SnapAsk ask) {
        return ask.drawn().size() < LEAST_TO_CLOSE
                ? Stream.empty()
                : Stream.of(new SnapCandidate(ask.drawn().get(0), Rank.START, "close", List.of()));
    }

    static Stream<SnapCandidate> corners(SnapAsk ask) {
        return ask.near().stream().flatMap(edge -> {
            String word = edge.lengthM() == 0 ? "point" : "corner";
            return Stream.of(edge.from(), edge.to()).map(end -> new SnapCandidate(end, Rank.CORNER, word, List.of()));
        });
    }

    static Stream<SnapCandidate> crossings(SnapAsk ask) {
        List<Edge> sides =
                ask.near().stream().filter(edge -> edge.lengthM() > 0).toList();
        return pairs(sides, SnapSources::meeting)
                .map(at -> new SnapCandidate(at, Rank.CROSSING, "crossing", List.of()));
    }

    /** Where two edges cross or touch. */
    private static Optional<Point> meeting(Edge a, Edge b) {
        return line(b).meets(a).isEmpty() ? Optional.empty() : line(a).meets(b);
    }

    private static StraightLine line(Edge edge) {
        return StraightLine.between(edge.from(), edge.to());
    }

    static Stream<SnapCandidate> tracksAtEdges(SnapAsk ask) {
        return ask.tracks().stream().flatMap(track -> atEdges(track, ask));
    }

    /** Where a track meets the edges near by. */
    static Stream<SnapCandidate> atEdges(Track track, SnapAsk ask) {
        return ask.near().stream()
                .flatMap(edge -> track.line().meets(edge).stream())
                .map(at -> new SnapCandidate(at, Rank.TRACK_AT_EDGE, track.word() + ", edge", List.of(track.help(at))));
    }

    static Stream<SnapCandidate> edges(SnapAsk ask) {
        return ask.near().stream()
                .map(edge -> new SnapCandidate(edge.nearestTo(ask.pointer()), Rank.EDGE, "edge", List.of()));
    }

    static Stream<SnapCandidate> trackCrossings(SnapAsk ask) {
        return pairs(ask.tracks(), SnapSources::crossing);
    }

    /** Where two tracks meet, unless both start there. */
    static Optional<SnapCandidate> crossing(Track a, Track b) {
        if (a.line().through().equals(b.line().through())) {
            return Optional.empty();
        }
        String word = a.word().equals(b.word()) ? a.word() : a.word() + ", " + b.word();
        return a.line()
                .meets(b.line())
                .map(at -> new SnapCandidate(at, Rank.TRACKS, word, List.of(a.help(at), b.help(at))));
    }

    static Stream<SnapCandidate> tracks(SnapAsk ask) {
        return ask.tracks().stream().map(track -> {
            Point at = track.line().nearestTo(ask.pointer());
            return new SnapCandidate(at, Rank.TRACK, track.word(), List.of(track.help(at)));
        });
    }

    /** What every two of a list give. */
    private static <T, R> Stream<R> pairs(List<T> all, BiFunction<T, T, Optional<R>> meeting) {
        return IntStream.range(0, all.size())
                .boxed()
                .flatMap(i -> all.subList(i + 1, all.size()).stream()
                        .flatMap(other -> meeting.apply(all.get(i), other).stream()));
    }
}
