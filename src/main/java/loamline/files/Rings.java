package loamline.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;

/** Rings as GeoJSON has them (closed, shells counterclockwise) and as an outline has them (open, as drawn). */
final class Rings {
    private Rings() {}

    /**
     * An outline for a file.
     *
     * @param outline rings closed, shells counterclockwise, holes clockwise
     * @param reversed the rings that were drawn the other way round, counted through all parts from 0
     */
    record ForFile(Outline outline, List<Integer> reversed) {}

    static ForFile forFile(Outline drawn) {
        List<Integer> reversed = new ArrayList<>();
        Outline outline = map(drawn, (number, isShell, ring) -> {
            boolean wrongWay = isShell ? turn(ring) < 0 : turn(ring) > 0;
            if (wrongWay) {
                reversed.add(number);
            }
            return closed(wrongWay ? reversed(ring) : ring);
        });
        return new ForFile(outline, reversed);
    }

    /** The outline as it was drawn: closing points taken off, the given rings turned back. */
    static Outline asDrawn(Outline inFile, Set<Integer> reversed) {
        return map(
                inFile, (number, isShell, ring) -> reversed.contains(number) ? reversed(opened(ring)) : opened(ring));
    }

    /** The rings of each part as lists of positions, the shell first. */
    static List<List<List<List<Double>>>> nested(Outline outline, Function<Point, List<Double>> position) {
        return outline.parts().stream()
                .map(part -> Stream.concat(Stream.of(part.shell()), part.holes().stream())
                        .map(ring -> ring.stream().map(position).toList())
                        .toList())
                .toList();
    }

    private interface RingChange {
        List<Point> change(int number, boolean isShell, List<Point> ring);
    }

    private static Outline map(Outline outline, RingChange change) {
        List<Outline.Part> parts = new ArrayList<>();
        int number = 0;
        for (Outline.Part part : outline.parts()) {
            List<Point> shell = change.change(number++, true, part.shell());
            List<List<Point>> holes = new ArrayList<>();
            for (List<Point> hole : part.holes()) {
                holes.add(change.change(number++, false, hole));
            }
            parts.add(new Outline.Part(shell, holes));
        }
        return new Outline(parts);
    }

    /** Twice the signed area, m², by the shoelace formula: positive if the ring runs counterclockwise. */
    private static double turn(List<Point> ring) {
        double sum = 0;
        for (int i = 1; i + 1 < ring.size(); i++) {
            Point origin = ring.get(0);
            Point a = ring.get(i);
            Point b = ring.get(i + 1);
            sum += (a.x() - origin.x()) * (b.y() - origin.y()) - (b.x() - origin.x()) * (a.y() - origin.y());
        }
        return sum;
    }

    /** The other way round from the same first point. */
    private static List<Point> reversed(List<Point> ring) {
        List<Point> back = new ArrayList<>(ring);
        if (ring.size() > 1) {
            Collections.reverse(back.subList(1, back.size()));
        }
        return back;
    }

    private static List<Point> closed(List<Point> open) {
        return Stream.concat(open.stream(), open.stream().limit(1)).toList();
    }

    private static List<Point> opened(List<Point> ring) {
        int last = ring.size() - 1;
        return last > 0 && ring.get(0).equals(ring.get(last)) ? ring.subList(0, last) : ring;
    }
}
