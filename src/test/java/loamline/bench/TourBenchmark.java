package loamline.bench;

import java.util.concurrent.TimeUnit;
import loamline.sampling.walk.DistanceMatrix;
import loamline.sampling.walk.Layout;
import loamline.sampling.walk.Tour;
import loamline.sampling.walk.TourSolver;
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
 * Time and quality of a walk: exact up to 16 stops, search and proof beyond. Each call takes the next of 20 seeded
 * yards; a table of gaps is printed before each run.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 5)
public class TourBenchmark {
    private static final int YARDS = 20;

    @Param({"16", "41", "61", "73"})
    public int stops;

    @Param({"SCATTERED", "DETOURS", "GATES"})
    public Layout layout;

    private final DistanceMatrix[] yards = new DistanceMatrix[YARDS];
    private int next;

    @Setup
    public void draw() {
        int proven = 0;
        double worst = 0;
        for (int seed = 0; seed < YARDS; seed++) {
            yards[seed] = layout.of(stops, seed + 1);
            Tour tour = TourSolver.shortest(yards[seed], seed);
            proven += tour.proven() ? 1 : 0;
            worst = Math.max(worst, tour.lengthM() / tour.lowerBoundM() - 1);
        }
        System.out.printf(
                "%s, %d stops: %d of %d proven, largest gap %.3f %%%n", layout, stops, proven, YARDS, 100 * worst);
    }

    @Benchmark
    public Tour shortest() {
        next = (next + 1) % YARDS;
        return TourSolver.shortest(yards[next], next);
    }
}
