package loamline.bench;

import java.util.concurrent.TimeUnit;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.yard.Yard;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A whole plan of a hectare: 6 zones, 72 cores, 40 obstacles; aim: 1 s warm on two cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CorePlanBenchmark {
    private final Yard yard = LargeYard.make();

    /** The plan. */
    @Benchmark
    public CorePlan plan() {
        return CorePlanner.plan(yard, LargeYard.options());
    }
}
