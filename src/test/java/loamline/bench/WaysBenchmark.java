package loamline.bench;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.sampling.walk.FreeSpace;
import loamline.sampling.walk.Ways;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of all ways between 73 stops on a hectare with 40 jagged obstacles and 10 fences. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 5)
public class WaysBenchmark {
    private static final int OBSTACLES = 40;
    private static final int FENCES = 10;
    private static final int STOPS = 73;

    /** Corners of each obstacle; the last makes walls coarse. */
    @Param({"4", "10", "30", "100", "200"})
    public int corners;

    private List<Region> solids = List.of();
    private List<Polyline> fences = List.of();
    private List<Point> stops = List.of();
    private final Region yard = Region.of(Outline.of(0, 0, 100, 0, 100, 100, 0, 100));

    @Setup
    public void draw() {
        Random random = new Random(1);
        List<Point> middles = IntStream.range(0, OBSTACLES)
                .mapToObj(i -> new Point(11 + 13 * (i % 7), 11 + 13 * (i / 7)))
                .toList();
        solids = middles.stream().map(middle -> jagged(middle, random)).toList();
        fences = IntStream.range(0, FENCES)
                .mapToObj(i -> new Polyline(List.of(middles.get(3 * i), middles.get(3 * i + 1))))
                .toList();
        stops = IntStream.range(0, STOPS)
                .mapToObj(i -> new Point(100 * random.nextDouble(), 100 * random.nextDouble()))
                .toList();
    }

    private Region jagged(Point middle, Random random) {
        return Region.of(Outline.of(IntStream.range(0, corners)
                .mapToObj(i -> {
                    double angle = 2 * Math.PI * i / corners;
                    double radiusM = 2 + 4 * random.nextDouble();
                    return middle.plus(radiusM * Math.cos(angle), radiusM * Math.sin(angle));
                })
                .toList()));
    }

    @Benchmark
    public FreeSpace space() {
        return FreeSpace.of(solids, fences, Optional.of(yard));
    }

    @Benchmark
    public Ways spaceAndWays() {
        return space().ways(stops);
    }
}
