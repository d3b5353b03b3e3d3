package loamline.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.cancel.Cancellation;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.Spacing;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.raster.InverseDistance;
import loamline.raster.Kriging;
import loamline.raster.Mask;
import loamline.raster.Variogram;
import loamline.raster.VariogramFit;

/**
 * A reading between the cores, no farther than it carries.
 *
 * <p>Every core is predicted from all others: by kriging, by inverse distance, and by their plain mean. What does not
 * beat the mean by {@link #GAIN} is not drawn, since then a neighbour says no more than any core.
 *
 * @param values NaN off turf and farther than {@code reachM} from a core; empty if nothing is drawn
 * @param n cores that have the reading
 * @param reachM how far from a core colour goes: the usual gap between cores, m
 * @param rmse root mean square error of leaving one core out, by the method, in the reading's unit
 * @param meanRmse the same by the mean of the other cores
 * @param variogram the curve that kriging used
 */
public record Surface(
        Quantity quantity,
        Method method,
        Optional<Grid> values,
        int n,
        double reachM,
        double rmse,
        double meanRmse,
        Optional<Variogram> variogram) {
    /** How values between cores come about. */
    public enum Method {
        KRIGING("ordinary kriging, spherical variogram"),
        INVERSE_DISTANCE("inverse distance squared"),
        NONE("not drawn: neighbours are as unlike as any two cores");

        private final String words;

        Method(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Its name in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** Error less than the mean's by this share, or nothing is drawn. */
    static final double GAIN = 0.05;

    /** Fewer cores carry no map. */
    static final int LEAST_CORES = 6;

    /** Fewer carry no variogram. Common practice, no source; a sure one takes a hundred. */
    static final int LEAST_FOR_VARIOGRAM = 12;

    /** A variogram with less structure says nothing about neighbours. */
    private static final double LEAST_STRUCTURE = 0.25;

    private static final double POWER = 2;
    private static final double CELL_M = 0.25;
    private static final double MOST_CELLS_A_SIDE = 400;

    /** The surface of a reading; empty with fewer than {@link #LEAST_CORES} cores, or all with one value. */
    static Optional<Surface> of(Quantity quantity, List<LoggedCore> cores, Region turf) {
        List<LoggedCore> read =
                cores.stream().filter(core -> core.value(quantity).isPresent()).toList();
        double[] z = Comparison.values(read, quantity);
        double gapM = Spacing.usualGapM(PoorArea.places(read));
        if (z.length < LEAST_CORES || gapM == 0 || Arrays.stream(z).distinct().count() < 2) {
            return Optional.empty();
        }
        double[] x = read.stream().mapToDouble(core -> core.core().at().x()).toArray();
        double[] y = read.stream().mapToDouble(core -> core.core().at().y()).toArray();
        return Optional.of(new Choice(quantity, x, y, z, gapM).surface(turf));
    }

    private static double rms(double[] residuals) {
        return Math.sqrt(Arrays.stream(residuals).map(r -> r * r).average().orElse(0));
    }

    private static double[] meanResiduals(double[] z) {
        double mean = Arrays.stream(z).average().orElse(0);
        return Arrays.stream(z).map(v -> (v - mean) * z.length / (z.length - 1)).toArray();
    }

    private interface Predictor {
        double at(double x, double y);
    }

    private static final class Choice {
        private final Quantity quantity;
        private final double[] x;
        private final double[] y;
        private final double[] z;
        private final double gapM;

        Choice(Quantity quantity, double[] x, double[] y, double[] z, double gapM) {
            this.quantity = quantity;
            this.x = x;
            this.y = y;
            this.z = z;
            this.gapM = gapM;
        }

        Surface surface(Region turf) {
            double mean = rms(meanResiduals(z));
            double limit = (1 - GAIN) * mean;
            Optional<Variogram> variogram = z.length < LEAST_FOR_VARIOGRAM
                    ? Optional.empty()
                    : VariogramFit.spherical(x, y, z).filter(v -> v.structuredShare() >= LEAST_STRUCTURE);
            Optional<Kriging> kriging = variogram.flatMap(v -> Kriging.of(x, y, z, v));
            double krigingRmse = kriging.map(k -> rms(k.leaveOneOut())).orElse(Double.POSITIVE_INFINITY);
            if (krigingRmse <= limit) {
                Kriging best = kriging.orElseThrow();
                return made(Method.KRIGING, Optional.of(best::predict), turf, krigingRmse, mean, variogram);
            }
            double weightedRmse = rms(InverseDistance.leaveOneOut(x, y, z, POWER));
            if (weightedRmse <= limit) {
                Predictor weighted = (atX, atY) -> InverseDistance.at(x, y, z, POWER, atX, atY);
                return made(Method.INVERSE_DISTANCE, Optional.of(weighted), turf, weightedRmse, mean, Optional.empty());
            }
            return made(
                    Method.NONE, Optional.empty(), turf, Math.min(krigingRmse, weightedRmse), mean, Optional.empty());
        }

        private Surface made(
                Method method,
                Optional<Predictor> predictor,
                Region turf,
                double rmse,
                double mean,
                Optional<Variogram> variogram) {
            return new Surface(
                    quantity, method, predictor.map(p -> grid(p, turf)), z.length, gapM, rmse, mean, variogram);
        }

        private Grid grid(Predictor predictor, Region turf) {
            Box box = Box.around(java.util.stream.IntStream.range(0, x.length).mapToObj(i -> new Point(x[i], y[i])))
                    .orElseThrow()
                    .grown(gapM);
            double side = Math.max(box.widthM(), box.heightM());
            GridSpec spec = GridSpec.covering(box, Math.max(CELL_M, side / MOST_CELLS_A_SIDE));
            Mask mask = Mask.of(spec, turf);
            double least = Arrays.stream(z).min().orElse(0);
            double most = Arrays.stream(z).max().orElse(0);
            return Grid.of(spec, values -> {
                for (int cell = 0; cell < values.length; cell++) {
                    Cancellation.check();
                    double atX = spec.xOf(cell % spec.columns());
                    double atY = spec.yOf(cell / spec.columns());
                    values[cell] = mask.has(cell) && nearest(atX, atY) <= gapM
                            ? Math.max(least, Math.min(most, predictor.at(atX, atY)))
                            : Double.NaN;
                }
            });
        }

        private double nearest(double atX, double atY) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < x.length; i++) {
                nearest = Math.min(nearest, Math.hypot(x[i] - atX, y[i] - atY));
            }
            return nearest;
        }
    }
}
