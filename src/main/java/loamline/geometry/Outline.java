package loamline.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * An outline as drawn: one or more parts, each a shell with holes. Nothing is promised about it: rings may
 * cross themselves, run either way round or have two points. Ask {@link Repair} for the ground it encloses.
 *
 * @param parts the pieces, copied; empty for an outline that encloses nothing
 */
public record Outline(List<Part> parts) implements Shape {
    public Outline {
        parts = List.copyOf(parts);
    }

    /**
     * One piece: rings without the closing repeat of the first point.
     *
     * @param shell outer ring
     * @param holes inner rings
     */
    public record Part(List<Point> shell, List<List<Point>> holes) {
        public Part {
            shell = List.copyOf(shell);
            holes = holes.stream().map(List::copyOf).toList();
        }

        Stream<List<Point>> rings() {
            return Stream.concat(Stream.of(shell), holes.stream());
        }
    }

    /** An outline of one ring without holes. */
    public static Outline of(List<Point> shell) {
        return new Outline(List.of(new Part(shell, List.of())));
    }

    /** An outline of one ring given as x0, y0, x1, y1, … in metres. */
    public static Outline of(double... xy) {
        return of(java.util.stream.IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Point(xy[2 * i], xy[2 * i + 1]))
                .toList());
    }

    /** All rings, shells and holes alike. */
    public Stream<List<Point>> rings() {
        return parts.stream().flatMap(Part::rings);
    }

    @Override
    public Stream<Point> vertices() {
        return rings().flatMap(List::stream);
    }

    @Override
    public Outline map(UnaryOperator<Point> change) {
        return new Outline(parts.stream()
                .map(part -> new Part(
                        part.shell().stream().map(change).toList(),
                        part.holes().stream()
                                .map(hole -> hole.stream().map(change).toList())
                                .toList()))
                .toList());
    }

    /** The outline for the eye: points nearer than a step to the one kept before are left out. */
    public Outline thinned(double stepM) {
        return new Outline(parts.stream()
                .map(part -> new Part(
                        thinned(part.shell(), stepM),
                        part.holes().stream().map(hole -> thinned(hole, stepM)).toList()))
                .toList());
    }

    private static List<Point> thinned(List<Point> ring, double stepM) {
        List<Point> kept = new ArrayList<>();
        for (Point p : ring) {
            if (kept.isEmpty() || kept.get(kept.size() - 1).distanceTo(p) >= stepM) {
                kept.add(p);
            }
        }
        return kept;
    }
}
