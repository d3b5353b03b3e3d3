package loamline.desk.tool;

import java.util.List;
import java.util.stream.Stream;
import loamline.geometry.Edge;
import loamline.geometry.Point;
import loamline.geometry.StraightLine;

/** The lines that the next side may follow, those that matter most first. */
final class Tracks {
    private static final double STEP_DEG = 45;

    private static final String IN_LINE_WITH_START = "in line with the start";

    private Tracks() {}

    /** By the last side: straight on, and at a right angle. */
    static Stream<Track> ofLastSide(List<Point> drawn) {
        if (drawn.size() < 2) {
            return Stream.empty();
        }
        List<Point> side = drawn.subList(drawn.size() - 2, drawn.size());
        StraightLine on = StraightLine.between(side.get(0), side.get(1)).through(side.get(1));
        return Stream.of(new Track(on, "straight on", side), new Track(on.square(), "right angle", side));
    }

    /** From the last place along the sides near it and near the pointer, and square to them. */
    static Stream<Track> ofNeighbours(List<Point> drawn, List<Edge> neighbours) {
        if (drawn.isEmpty()) {
            return Stream.empty();
        }
        Point last = drawn.get(drawn.size() - 1);
        return neighbours.stream().flatMap(edge -> {
            StraightLine along = StraightLine.between(edge.from(), edge.to()).through(last);
            List<Point> side = List.of(edge.from(), edge.to());
            return Stream.of(new Track(along, "parallel", side), new Track(along.square(), "right angle", side));
        });
    }

    /** Through the first place, so that the last side closes straight: north, east, and square to the first side. */
    static Stream<Track> ofStart(List<Point> drawn) {
        if (drawn.size() < SnapSources.LEAST_TO_CLOSE) {
            return Stream.empty();
        }
        Point start = drawn.get(0);
        return Stream.of(
                        StraightLine.between(start, drawn.get(1)).square(),
                        new StraightLine(start, 0, 1),
                        new StraightLine(start, 1, 0))
                .map(line -> new Track(line, IN_LINE_WITH_START, List.of(start)));
    }

    /** Sides near the pointer, made longer. */
    static Stream<Track> ofExtensions(List<Edge> neighbours) {
        return neighbours.stream()
                .map(edge -> new Track(
                        StraightLine.between(edge.from(), edge.to()), "in line", List.of(edge.from(), edge.to())));
    }

    /** The line from a place in the direction, of eight, that is nearest to a pointer elsewhere. */
    static Track stepped(Point from, Point pointer) {
        double azimuthDeg = Azimuth.deg(from, pointer);
        int step = (int) Math.round(azimuthDeg / STEP_DEG);
        return new Track(StraightLine.at(from, step * STEP_DEG), "45°", List.of(from));
    }
}
