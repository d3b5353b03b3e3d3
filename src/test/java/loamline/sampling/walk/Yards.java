package loamline.sampling.walk;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.geometry.Edge;
import loamline.geometry.Edges;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;

/** The yard of the published distances, and short ways to write obstacles. */
final class Yards {
    private Yards() {}

    static final Scene PUBLISHED = new Scene(
            List.of(
                    solid(12, 10, 26, 10, 26, 14, 20, 14, 20, 20, 12, 20),
                    solid(4, 5, 7, 4, 8, 7, 5, 8),
                    solid(30, 20, 35, 19, 36, 23, 33, 25, 30, 24),
                    solid(30, 6, 36, 6, 36, 11, 30, 11)),
            List.of(fence(16, 20, 16, 30), fence(20, 10, 20, 1.5)),
            Optional.of(solid(0, 0, 40, 0, 40, 30, 0, 30)));

    /** What may not be crossed, as given. */
    record Scene(List<Region> solids, List<Polyline> fences, Optional<Region> boundary) {
        FreeSpace space() {
            return FreeSpace.of(solids, fences, boundary);
        }

        /** Whether two things, or two pieces of a fence, nearly touch. */
        boolean hasNarrowGap() {
            List<List<Edge>> things = new ArrayList<>();
            Stream.concat(solids.stream(), boundary.stream()).forEach(r -> things.add(Edges.around(r, false)));
            fences.forEach(fence -> Edges.along(fence).forEach(piece -> things.add(List.of(piece))));
            return things.stream()
                    .anyMatch(a -> things.stream()
                            .filter(b -> b != a)
                            .anyMatch(b -> a.stream().anyMatch(e -> isNarrow(e.from(), b) || isNarrow(e.to(), b))));
        }

        private static boolean isNarrow(Point corner, List<Edge> edges) {
            return edges.stream()
                    .mapToDouble(e -> e.distanceTo(corner))
                    .anyMatch(gapM -> gapM > 1e-9 && gapM <= FreeSpace.MEETS_M);
        }

        Scene with(Region solid) {
            return new Scene(Stream.concat(solids.stream(), Stream.of(solid)).toList(), fences, boundary);
        }

        Scene with(Polyline fence) {
            return new Scene(
                    solids, Stream.concat(fences.stream(), Stream.of(fence)).toList(), boundary);
        }

        Scene map(UnaryOperator<Point> change) {
            UnaryOperator<Region> region = r -> Region.of(r.outline().map(change));
            return new Scene(
                    solids.stream().map(region).toList(),
                    fences.stream().map(fence -> fence.map(change)).toList(),
                    boundary.map(region));
        }
    }

    static Region solid(double... xy) {
        return Region.of(Outline.of(xy));
    }

    static Polyline fence(double... xy) {
        return new Polyline(points(xy));
    }

    static List<Point> points(double... xy) {
        return IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Point(xy[2 * i], xy[2 * i + 1]))
                .toList();
    }

    /** Rows of numbers of a resource beside this class. */
    static double[][] table(String name) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Yards.class.getResourceAsStream(name), name), StandardCharsets.UTF_8))) {
            return in.lines()
                    .map(line -> Stream.of(line.trim().split("\\s+"))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Point> places(String name) {
        return Arrays.stream(table(name)).map(xy -> new Point(xy[0], xy[1])).toList();
    }
}
