package loamline.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.raster.Variogram.Shape;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whole sets of points against numbers computed with gstat 2.1.0, to every digit given; see each set's SOURCE.md. */
class KrigingSetsTest {
    private static final Path SETS = Path.of("src/test/resources/loamline/raster");
    private static final int NEAREST = 20;

    /** What the checks are made on. */
    enum Set {
        MADE_UP("made-up", DoubleUnaryOperator.identity(), 4e-4),
        /** Only where its points are at hand: they are not ours to give away. */
        MEUSE("meuse", Math::log, 2e-5);

        private final String folder;
        private final DoubleUnaryOperator scale;
        private final double stoppedShort;

        /** @param stoppedShort how far from the best curve gstat's first stop may lie, shares of the sill */
        Set(String folder, DoubleUnaryOperator scale, double stoppedShort) {
            this.folder = folder;
            this.scale = scale;
            this.stoppedShort = stoppedShort;
        }

        Path table(String name) {
            Path ours = SETS.resolve(folder).resolve(name);
            return Files.exists(ours) ? ours : Path.of(System.getProperty("loamline." + folder, ""), name);
        }

        Points points() throws IOException {
            assumeTrue(Files.exists(table("points.csv")), "the points of " + folder + " are not at hand");
            double[][] rows = rows(table("points.csv"));
            return new Points(
                    column(rows, 0),
                    column(rows, 1),
                    Arrays.stream(column(rows, 2)).map(scale).toArray());
        }

        /** The lines of expected numbers of one sort, as written. */
        List<String[]> expected(String sort) throws IOException {
            return Files.readAllLines(SETS.resolve(folder).resolve("expected.txt")).stream()
                    .map(line -> line.split(" "))
                    .filter(words -> words[0].equals(sort))
                    .map(words -> Arrays.copyOfRange(words, 1, words.length))
                    .toList();
        }

        Variogram model() throws IOException {
            double[] m = numbers(expected("model").get(0));
            return new Variogram(Shape.SPHERICAL, m[0], m[1], m[2]);
        }
    }

    private record Points(double[] x, double[] y, double[] z) {
        Points only(IntStream kept) {
            int[] at = kept.toArray();
            return new Points(some(x, at), some(y, at), some(z, at));
        }

        Points without(int left) {
            return only(IntStream.range(0, z.length).filter(i -> i != left));
        }

        Points nearest(double atX, double atY) {
            return only(IntStream.range(0, z.length)
                    .boxed()
                    .sorted(Comparator.comparingDouble(i -> Math.hypot(x[i] - atX, y[i] - atY)))
                    .limit(NEAREST)
                    .mapToInt(i -> i));
        }

        Kriging kriging(Variogram variogram) {
            return Kriging.of(x, y, z, variogram).orElseThrow();
        }
    }

    @ParameterizedTest
    @EnumSource
    void theClassesOfDistanceAreGstats(Set set) throws IOException {
        Points p = set.points();
        VariogramFit classes = new VariogramFit(p.x, p.y, p.z);
        for (String[] bin : set.expected("bin")) {
            int i = Integer.parseInt(bin[0]) - 1;
            assertThat(classes.pairs(i)).isEqualTo(Double.parseDouble(bin[1]));
            assertGiven(classes.distanceM(i), bin[2]);
            assertGiven(classes.gamma(i), bin[3]);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theFittedCurveIsGstats(Set set) throws IOException {
        Points p = set.points();
        Variogram fitted = VariogramFit.spherical(p.x, p.y, p.z).orElseThrow();
        String[] expected = set.expected("fit").get(0);
        assertGiven(fitted.nugget(), expected[0]);
        assertGiven(fitted.sill(), expected[1]);
        assertGiven(fitted.rangeM(), expected[2]);
    }

    @ParameterizedTest
    @EnumSource
    void noCurveWhereGstatStoppedFitsBetter(Set set) throws IOException {
        Points p = set.points();
        Variogram fitted = VariogramFit.spherical(p.x, p.y, p.z).orElseThrow();
        double[] once = numbers(set.expected("once").get(0));
        assertThat(new VariogramFit(p.x, p.y, p.z).misfit(fitted.rangeM()))
                .isLessThan(once[3])
                .isCloseTo(once[3], withinPercentage(1e-3));
        Variogram stopped = new Variogram(Shape.SPHERICAL, once[0], once[1], once[2]);
        for (double share = 0.05; share < 1.2; share += 0.05) {
            double distanceM = share * once[2];
            assertThat(fitted.at(distanceM)).isCloseTo(stopped.at(distanceM), within(set.stoppedShort * fitted.sill()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void predictionsAndTheirVariancesAreGstats(Set set) throws IOException {
        Points p = set.points();
        Kriging all = p.kriging(set.model());
        for (String[] at : set.expected("at")) {
            double x = Double.parseDouble(at[0]);
            double y = Double.parseDouble(at[1]);
            assertGiven(all.predict(x, y), at[2]);
            assertGiven(all.variance(x, y), at[3]);
            Kriging near = p.nearest(x, y).kriging(set.model());
            assertGiven(near.predict(x, y), at[4]);
            assertGiven(near.variance(x, y), at[5]);
            assertGiven(InverseDistance.at(p.x, p.y, p.z, 2, x, y), at[6]);
        }
    }

    @ParameterizedTest
    @EnumSource
    void leavingOneOutErrsAsGstatDoes(Set set) throws IOException {
        Points p = set.points();
        double[] residuals = p.kriging(set.model()).leaveOneOut();
        double[] predictions = new double[residuals.length];
        double[] squaredZ = new double[residuals.length];
        for (int i = 0; i < residuals.length; i++) {
            predictions[i] = p.z[i] - residuals[i];
            double variance = p.without(i).kriging(set.model()).variance(p.x[i], p.y[i]);
            squaredZ[i] = residuals[i] * residuals[i] / variance;
        }
        String[] expected = set.expected("loo").get(0);
        assertGiven(mean(residuals), expected[0]);
        assertGiven(Math.sqrt(mean(Arrays.stream(residuals).map(r -> r * r).toArray())), expected[1]);
        assertGiven(mean(Arrays.stream(residuals).map(Math::abs).toArray()), expected[2]);
        assertGiven(mean(squaredZ), expected[3]);
        assertGiven(correlation(p.z, predictions), expected[4]);
    }

    @ParameterizedTest
    @EnumSource(names = "MEUSE")
    void aWholeGridIsPredictedAsGstatDoes(Set set) throws IOException {
        Kriging kriging = set.points().kriging(set.model());
        double[] predicted = Stream.of(rows(set.table("grid.csv")))
                .mapToDouble(cell -> kriging.predict(cell[0], cell[1]))
                .toArray();
        String[] expected = set.expected("grid").get(0);
        assertThat(predicted).hasSize(Integer.parseInt(expected[0]));
        assertGiven(Arrays.stream(predicted).min().orElseThrow(), expected[1]);
        assertGiven(Arrays.stream(predicted).max().orElseThrow(), expected[2]);
        assertGiven(mean(predicted), expected[3]);
    }

    /** Equal to every digit that is written; a whole number stands for ten decimals. */
    private static void assertGiven(double actual, String written) {
        BigDecimal expected = new BigDecimal(written);
        int decimals = expected.scale() == 0 ? 10 : expected.scale();
        assertThat(actual).isCloseTo(expected.doubleValue(), within(0.5001 * Math.pow(10, -decimals)));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double correlation(double[] a, double[] b) {
        double meanA = mean(a);
        double meanB = mean(b);
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int i = 0; i < a.length; i++) {
            ab += (a[i] - meanA) * (b[i] - meanB);
            aa += (a[i] - meanA) * (a[i] - meanA);
            bb += (b[i] - meanB) * (b[i] - meanB);
        }
        return ab / Math.sqrt(aa * bb);
    }

    private static double[][] rows(Path table) throws IOException {
        return Files.readAllLines(table).stream()
                .skip(1)
                .map(line -> numbers(line.split(",")))
                .toArray(double[][]::new);
    }

    private static double[] numbers(String[] words) {
        return Stream.of(words).mapToDouble(Double::parseDouble).toArray();
    }

    private static double[] column(double[][] rows, int i) {
        return Stream.of(rows).mapToDouble(row -> row[i]).toArray();
    }

    private static double[] some(double[] values, int[] kept) {
        return IntStream.of(kept).mapToDouble(i -> values[i]).toArray();
    }
}
