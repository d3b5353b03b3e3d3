package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.ortools.Loader;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against a solver that knows nothing of ours: a circuit constraint, solved by OR-tools 9.15 CP-SAT to proof. */
@EnabledOnOs(value = OS.LINUX, architectures = "amd64")
class TourAgainstCpSatTest {
    /** CP-SAT counts in whole units; this many a metre keep sums of legs of up to 100 m far below overflow. */
    private static final double UNITS_PER_M = 1e7;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @ParameterizedTest
    @CsvSource({
        "SCATTERED, 11", "DETOURS, 12", "GATES, 13", "TIED, 14", "SHARED_PLACES, 15", "ARBITRARY, 16",
        "SCATTERED, 17", "DETOURS, 20", "SCATTERED, 25", "TIED, 20", "SHARED_PLACES, 17", "ARBITRARY, 30",
    })
    void findsARoundOfTheSameLength(Layout layout, int stops) {
        DistanceMatrix distances = layout.of(stops, stops);
        Tour tour = TourSolver.shortest(distances, 0);
        assertThat(tour.proven()).isTrue();
        // Each leg is rounded by half a unit at most, in our round and in the other
        assertThat(tour.lengthM() * UNITS_PER_M).isCloseTo(shortest(distances), within(0.5 * stops));
    }

    private static double shortest(DistanceMatrix distances) {
        CpModel model = new CpModel();
        CircuitConstraint circuit = model.addCircuit();
        LinearExprBuilder length = LinearExpr.newBuilder();
        for (int i = 0; i < distances.size(); i++) {
            for (int j = 0; j < distances.size(); j++) {
                if (i != j) {
                    Literal walked = model.newBoolVar(i + "-" + j);
                    circuit.addArc(i, j, walked);
                    length.addTerm(walked, Math.round(distances.betweenM(i, j) * UNITS_PER_M));
                }
            }
        }
        model.minimize(length);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(20);
        assertThat(solver.solve(model)).isEqualTo(CpSolverStatus.OPTIMAL);
        return solver.objectiveValue();
    }
}
