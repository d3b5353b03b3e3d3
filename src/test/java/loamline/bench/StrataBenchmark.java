package loamline.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import loamline.sampling.strata.CoreDistance;
import loamline.sampling.strata.CorePlacement;
import loamline.sampling.strata.Cores;
import loamline.sampling.strata.EqualAreaStrata;
import loamline.sampling.strata.Ground;
import loamline.sampling.strata.Spares;
import loamline.sampling.strata.Strata;
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
import org.openjdk.jmh.infra.Blackhole;

/**
 * A yard of one hectare in six zones of twelve cores. Bar: strata, cores and spares of all zones within 300 ms. Run
 * {@code org.openjdk.jmh.Main StrataBenchmark} on the test class path.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StrataBenchmark {
    private static final int CORES = 12;
    private static final double HECTARE_SIDE_M = 100;
    private static final double FINE_CELL_M = 0.1;

    private final List<Ground> zones = new ArrayList<>();
    private Ground parted = zone((x, y) -> true);
    private double[] xM = {};
    private double[] yM = {};
    private double[] coreXM = {};
    private double[] coreYM = {};

    private interface Shape {
        boolean has(double x, double y);
    }

    /** Cells of a shape in the unit square, laid out over 1,667 m² at the side the kernel suggests. */
    private static Ground zone(Shape shape) {
        double areaM2 = HECTARE_SIDE_M * HECTARE_SIDE_M / 6;
        double cellM = EqualAreaStrata.cellSideM(areaM2, CORES);
        double side = 2 * Math.sqrt(areaM2);
        List<double[]> cells = new ArrayList<>();
        for (int row = 0; row * cellM < side; row++) {
            for (int column = 0; column * cellM < side; column++) {
                if (shape.has(column * cellM / side, row * cellM / side)) {
                    cells.add(new double[] {column * cellM, row * cellM});
                }
            }
        }
        return Ground.of(
                cells.stream().mapToDouble(cell -> cell[0]).toArray(),
                cells.stream().mapToDouble(cell -> cell[1]).toArray(),
                cellM);
    }

    @Setup
    public void layOut() {
        zones.add(zone((x, y) -> x < 0.5 && y < 0.5)); // a square
        zones.add(zone((x, y) -> x < 0.6 && y < 0.6 && (x < 0.25 || y < 0.28))); // an L
        zones.add(zone((x, y) -> x < 0.6 && y < 0.6 && (x < 0.2 || x > 0.4 || y < 0.2))); // a U
        zones.add(zone((x, y) -> x < 0.95 && y < 0.26)); // a long strip
        zones.add(zone((x, y) -> x < 0.7 && y < 0.7 && !(x > 0.1 && x < 0.6 && y > 0.1 && y < 0.6))); // a ring
        zones.add(zone((x, y) -> Math.hypot(x - 0.3, y - 0.3) < 0.28)); // a disc
        parted = zone((x, y) -> y < 0.5 && x < 0.6 && (x < 0.22 || x > 0.32));
        int lines = (int) (HECTARE_SIDE_M / FINE_CELL_M);
        xM = new double[lines * lines];
        yM = new double[lines * lines];
        for (int i = 0; i < xM.length; i++) {
            int row = i / lines;
            xM[i] = (i % lines + 0.5) * FINE_CELL_M;
            yM[i] = (row + 0.5) * FINE_CELL_M;
        }
        coreXM = new double[6 * CORES];
        coreYM = new double[6 * CORES];
        for (int j = 0; j < coreXM.length; j++) {
            int row = j / 9;
            coreXM[j] = (j % 9 + 0.5 + 0.2 * (row % 2)) * HECTARE_SIDE_M / 9;
            coreYM[j] = (row + 0.5) * HECTARE_SIDE_M / 8;
        }
    }

    @Benchmark
    public void sixZonesOfAHectare(Blackhole sink) {
        for (Ground zone : zones) {
            Strata strata = EqualAreaStrata.divide(zone, CORES, 1);
            Cores cores = CorePlacement.atCentres(strata);
            sink.consume(Spares.choose(cores, 1));
            sink.consume(cores.nearestMssdM2());
        }
    }

    @Benchmark
    public Strata aZoneInTwoParts() {
        return EqualAreaStrata.divide(parted, CORES, 1);
    }

    @Benchmark
    public double mssdOfAHectareAtTenCentimetres() {
        return CoreDistance.nearestMssdM2(xM, yM, coreXM, coreYM);
    }
}
