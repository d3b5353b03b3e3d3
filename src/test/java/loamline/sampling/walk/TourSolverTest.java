package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TourSolverTest {
    /** Digits of the known lengths, m. */
    private static final double DIGITS = 1e-9;

    @Test
    void theStartAloneIsNoWay() {
        assertThat(solve(new double[][] {{0}})).isEqualTo(new Tour(List.of(0), 0, 0));
    }

    @Test
    void oneStopIsThereAndBack() {
        assertThat(solve(new double[][] {{0, 7}, {7, 0}})).isEqualTo(new Tour(List.of(0, 1), 14, 14));
    }

    @Test
    void twoStopsAreATriangle() {
        double[][] rows = {{0, 3, 4}, {3, 0, 5}, {4, 5, 0}};
        assertThat(solve(rows)).isEqualTo(new Tour(List.of(0, 1, 2), 12, 12));
    }

    @Test
    void threeStopsAreWalkedRoundTheLongDiagonals() {
        double[][] rows = {{0, 9, 1, 1}, {9, 0, 1, 1}, {1, 1, 0, 9}, {1, 1, 9, 0}};
        assertThat(solve(rows)).isEqualTo(new Tour(List.of(0, 2, 1, 3), 4, 4));
    }

    @Property(seed = Laws.SEED, tries = 60)
    void everyTourIsProvenOrBoundedAndHoldsItsOwnLength(
            @ForAll @IntRange(min = 1, max = 30) int stops, @ForAll long seed, @ForAll Layout layout) {
        DistanceMatrix distances = layout.of(stops, seed);
        Tour tour = TourSolver.shortest(distances, seed);
        assertThat(tour.order())
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, stops).boxed().toList());
        assertThat(tour.lengthM())
                .isEqualTo(Tour.lengthM(
                        distances, tour.order().stream().mapToInt(i -> i).toArray()));
        assertThat(tour.lowerBoundM()).isBetween(0.0, tour.lengthM());
        assertThat(tour.proven() || stops > TourSolver.EXACT_STOPS).isTrue();
    }

    /**
     * The first points of {@code java.util.Random(1)}, x and y by turns. Up to 15 stops computed with JGraphT 1.5.3
     * Held-Karp and OR-tools 9.15 CP-SAT alike; beyond with CP-SAT, proven for legs rounded to 1e-7 of the longest,
     * which leaves room for a round shorter by 5e-6.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 3.447599469, 1e-9",
        "15, 3.795270468, 1e-9",
        "20, 4.247503708, 5e-6",
        "30, 4.766922648, 5e-6",
        "40, 5.228412795, 5e-6",
    })
    void findsAndProvesTheKnownRoundsInTheUnitSquare(int stops, double lengthM, double room) {
        Tour tour = TourSolver.shortest(Layout.SCATTERED.of(stops, 1), 0);
        assertThat(tour.lengthM()).isBetween(lengthM - room, lengthM + DIGITS);
        assertThat(tour.proven()).isTrue();
    }

    /** Sources and tolerances: SOURCE.md beside the distances. */
    @Test
    void findsAndProvesTheKnownRoundOfTwelveCores() {
        Tour tour = TourSolver.shortest(read("yard-12"), 0);
        assertThat(tour.lengthM()).isCloseTo(163.363213866, within(DIGITS));
        assertThat(tour.proven()).isTrue();
    }

    /** Sources and tolerances: SOURCE.md beside the distances. */
    @Test
    void findsAndProvesTheKnownRoundOfFortyCores() {
        Tour tour = TourSolver.shortest(read("yard-40"), 0);
        assertThat(tour.lengthM()).isBetween(197.093585384 - 2.5e-4, 197.093585384 + DIGITS);
        assertThat(tour.proven()).isTrue();
    }

    @ParameterizedTest
    @EnumSource(
            value = Layout.class,
            names = {"SCATTERED", "DETOURS", "GATES", "ARBITRARY"})
    void fortyCoresAndTheGateAreProven(Layout layout) {
        for (int seed = 1; seed <= 10; seed++) {
            Tour tour = TourSolver.shortest(layout.of(41, seed), seed);
            assertThat(tour.proven()).as("seed %d", seed).isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource({"61, 20", "73, 10"})
    void scatteredStopsAreWithinOnePercentOfTheBoundAndMostlyProven(int stops, int yards) {
        int proven = 0;
        for (int seed = 1; seed <= yards; seed++) {
            Tour tour = TourSolver.shortest(Layout.SCATTERED.of(stops, seed), seed);
            assertThat(tour.lengthM()).as("seed %d", seed).isLessThanOrEqualTo(1.01 * tour.lowerBoundM());
            proven += tour.proven() ? 1 : 0;
        }
        assertThat(proven).isGreaterThanOrEqualTo(yards * 8 / 10);
    }

    @ParameterizedTest
    @EnumSource(
            value = Layout.class,
            names = {"DETOURS", "GATES", "ARBITRARY"})
    void seventyTwoCoresAndTheGateAreWithinOnePercentOfTheBoundRoundObstaclesToo(Layout layout) {
        for (int seed = 1; seed <= 3; seed++) {
            Tour tour = TourSolver.shortest(layout.of(73, seed), seed);
            assertThat(tour.lengthM()).as("seed %d", seed).isLessThanOrEqualTo(1.01 * tour.lowerBoundM());
        }
    }

    /** Derived: no leg is shorter than 1; a round over squares of two colours needs an even number of unit legs. */
    @ParameterizedTest
    @CsvSource({"6, 36", "7, 49.41421356237309", "8, 64"})
    void aLatticeTakesAUnitAStopAndADiagonalIfOdd(int side, double lengthM) {
        Tour tour = solve(rows(side * side, stop -> stop % side, stop -> Math.floorDiv(stop, side)));
        assertThat(tour.lengthM()).isCloseTo(lengthM, within(1e-12 * lengthM));
        assertThat(tour.lowerBoundM()).isLessThanOrEqualTo(lengthM * (1 + OneTree.ROUNDING));
    }

    /** Derived: the shortest round of stops in convex position is their outline. */
    @Test
    void stopsOnACircleAreWalkedInTheirOrder() {
        int stops = 60;
        Tour tour = solve(rows(stops, i -> Math.cos(2 * Math.PI * i / stops), i -> Math.sin(2 * Math.PI * i / stops)));
        assertThat(tour.order())
                .containsExactlyElementsOf(IntStream.range(0, stops).boxed().toList());
        assertThat(tour.lengthM()).isCloseTo(2 * stops * Math.sin(Math.PI / stops), within(1e-12));
        assertThat(tour.proven()).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void equalInputGivesEqualTours(Layout layout) {
        DistanceMatrix distances = layout.of(30, 2);
        assertThat(TourSolver.shortest(distances, 3)).isEqualTo(TourSolver.shortest(distances, 3));
    }

    @Test
    void allStopsInOnePlaceAreNoWay() {
        Tour tour = solve(new double[40][40]);
        assertThat(tour.lengthM()).isZero();
        assertThat(tour.proven()).isTrue();
    }

    private static Tour solve(double[][] rows) {
        return TourSolver.shortest(DistanceMatrix.of(rows), 0);
    }

    private static double[][] rows(int stops, IntToDoubleFunction x, IntToDoubleFunction y) {
        double[][] rows = new double[stops][stops];
        for (int i = 0; i < stops; i++) {
            for (int j = 0; j < stops; j++) {
                rows[i][j] =
                        Math.hypot(x.applyAsDouble(i) - x.applyAsDouble(j), y.applyAsDouble(i) - y.applyAsDouble(j));
            }
        }
        return rows;
    }

    private static DistanceMatrix read(String yard) {
        var stream = TourSolverTest.class.getResourceAsStream(yard + "/distances.txt");
        try (var lines = new BufferedReader(
                new InputStreamReader(Objects.requireNonNull(stream, yard), StandardCharsets.UTF_8))) {
            return DistanceMatrix.of(lines.lines()
                    .map(line -> Arrays.stream(line.split(" "))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
