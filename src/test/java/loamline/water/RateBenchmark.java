package loamline.water;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import loamline.geometry.Point;
import loamline.raster.GridSpec;
import loamline.yard.Profile.Named;
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

/**
 * Rates on a lawn of 2,000 m² with 40 heads, and on a site of 20 ha with 800. Bars: one head dragged in at most a fifth
 * of the time of the whole; the site within 1 s.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx512m")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RateBenchmark {
    @Param({"yard", "site"})
    String size;

    private GridSpec grid;
    private List<SprinklerHead> heads;
    private RateField field;
    private SprinklerHead dragged;

    @Setup
    public void draw() {
        boolean site = size.equals("site");
        grid = site ? new GridSpec(0, 0, 0.25, 2000, 1600) : new GridSpec(0, 0, 0.1, 500, 400);
        double radiusM = site ? 16 : 7;
        int columns = site ? 32 : 8;
        int rows = site ? 25 : 5;
        double widthM = grid.columns() * grid.cellM();
        double heightM = grid.rows() * grid.cellM();
        SplittableRandom random = new SplittableRandom(2);
        heads = new ArrayList<>();
        for (int i = 0; i < columns * rows; i++) {
            Point at = new Point(
                    widthM * (i % columns + random.nextDouble()) / columns,
                    heightM * (i / columns + random.nextDouble()) / rows);
            Arc arc = Arc.of(random.nextDouble(360), i % 2 == 0 ? 360 : random.nextDouble(90, 270));
            heads.add(Heads.alone(new HeadPattern(at, radiusM, arc, RadialProfile.of(Named.CONE), 8)));
        }
        Point middle = new Point(grid.xOf(grid.columns() / 2), grid.yOf(grid.rows() / 2));
        heads.set(5, Heads.alone(heads.get(5).pattern().movedTo(middle)));
        field = RateField.of(grid, heads);
        dragged = Heads.alone(heads.get(5).pattern().movedTo(middle.plus(0.3, 0.2)));
    }

    @Benchmark
    public Object whole() {
        return RateField.of(grid, heads);
    }

    @Benchmark
    public Object oneHeadDragged() {
        return field.with(5, dragged);
    }
}
