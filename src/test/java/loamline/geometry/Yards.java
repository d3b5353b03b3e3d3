package loamline.geometry;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
        ShortestPaths paths(List<Point> stops) {
            Region yard = boundary.orElse(solid(-100, -100, 140, -100, 140, 130, -100, 130));
            return ShortestPaths.over(yard.minus(Region.union(solids)), fences, stops);
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
                Objects.requireNonNull(Yards.class.getResourceAsStream("/loamline/sampling/walk/" + name), name),
                StandardCharsets.UTF_8))) {
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
