package loamline.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import loamline.raster.GridSpec;
import loamline.sun.Shade;
import loamline.sun.SunPath;
import loamline.sun.SunPosition;
import loamline.sun.SunRequest;
import loamline.sun.SunStudy;
import loamline.yard.Yard;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Hours of sun, from the yard to the zones' numbers. Bars: 20 ha at 0.5 m with 600 shadow casters within 5 s; shade at a
 * moment within 16 ms. Run with {@code -Dloamline.sunScene=FILE} to have the yard's scene written as JSON, for a side by
 * side with another program.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class SunBenchmark {
    private static final double YARD_WIDTH_M = 50;
    private static final double YARD_HEIGHT_M = 40;

    private final Yard yard = SunScene.make(YARD_WIDTH_M, YARD_HEIGHT_M, 40);
    private final SunRequest yardRequest = SunScene.request(0.25);
    private final Yard park = SunScene.make(500, 400, 600);
    private final SunRequest parkRequest = SunScene.request(0.5);
    private final SunPosition afternoon =
            SunPath.at(yard.frame().origin().orElseThrow(), Instant.parse("2027-06-21T21:00:00Z"));
    private final Shade yardShade = Shade.of(yard, LocalDate.of(2027, 6, 21), 40, new GridSpec(0, 0, 0.25, 200, 160));
    private final Shade parkShade = Shade.of(park, LocalDate.of(2027, 6, 21), 40, new GridSpec(0, 0, 0.5, 1000, 800));

    @Setup
    public void writeScene() throws java.io.IOException {
        String file = System.getProperty("loamline.sunScene", "");
        if (!file.isEmpty()) {
            Files.writeString(Path.of(file), SunScene.json(yard, yardHours(), YARD_WIDTH_M, YARD_HEIGHT_M));
        }
    }

    @Benchmark
    public SunStudy yardHours() {
        return SunStudy.of(yard, yardRequest).study().orElseThrow();
    }

    @Benchmark
    public SunStudy twentyHectares() {
        return SunStudy.of(park, parkRequest).study().orElseThrow();
    }

    @Benchmark
    public float[] shadeOfAYard() {
        return yardShade.light(afternoon);
    }

    @Benchmark
    public float[] shadeOfTwentyHectares() {
        return parkShade.light(afternoon);
    }
}
