package loamline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import loamline.tracing.Mosaic;
import loamline.tracing.Picture;
import loamline.tracing.Pixel;
import loamline.tracing.Proposal;
import loamline.tracing.Trace;
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
 * Tracing a lawn with beds in it that fills the window. Bars, warm on one core: 150 ms to prepare 2 megapixels and take
 * a click, 20 ms to follow the slider.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class TracingBenchmark {
    private static final List<Pixel> CLICK = List.of(new Pixel(600, 500));
    private static final double HOLE_PX2 = 400;
    private static final double NUDGE = 0.01;

    /** Width and height; 900 x 1000 is the largest window at full resolution. */
    @Param({"900x1000", "1600x1250"})
    public String size = "";

    private Picture picture = Picture.of(1, 1, new int[1]);
    private Trace trace = Mosaic.of(picture).trace(List.of(new Pixel(0, 0)));
    private double tolerance = 0.5;

    @Setup
    public void draw() {
        String[] sides = size.split("x", 2);
        int width = Integer.parseInt(sides[0]);
        int height = Integer.parseInt(sides[1]);
        int[] argb = new int[width * height];
        for (int i = 0; i < argb.length; i++) {
            int row = i / width;
            boolean lawn = i % width % 300 > 80 || row % 300 > 60;
            int grain = (int) ((i * 0x9E3779B97F4A7C15L) >>> 59);
            argb[i] = (lawn ? 0xFF5E7F42 : 0xFF9A9184) + grain * 0x010101;
        }
        picture = Picture.of(width, height, argb);
        trace = Mosaic.of(picture).trace(CLICK);
    }

    /** All that follows a click into a new window. */
    @Benchmark
    public Proposal click() {
        return Mosaic.of(picture).trace(CLICK).at(0.5, HOLE_PX2);
    }

    /** One step of the slider. */
    @Benchmark
    public Proposal slide() {
        tolerance = tolerance > 0.6 ? 0.4 : tolerance + NUDGE;
        return trace.at(tolerance, HOLE_PX2);
    }
}
