package loamline.raster;

import java.util.Arrays;
import java.util.Optional;

/**
 * The spherical variogram that suits values best.
 *
 * <p><b>What:</b> pairs of points nearer than a third of the diagonal of their box are put into {@link #BINS} classes of
 * distance; nugget, sill and range minimise the squared misfit to the classes' means, weighted by pairs over squared
 * distance.
 *
 * <p><b>Units and shape:</b> metres; arrays of one length.
 *
 * <p><b>NaN:</b> must not occur.
 *
 * <p><b>Ties and borders:</b> the range is sought from the least mean distance of a class to the largest distance looked
 * at; a nugget or a sill that would be negative is 0.
 *
 * <p><b>Accuracy:</b> the range to {@link #RANGE_ACCURACY} of itself.
 *
 * <p><b>Cost:</b> points squared.
 *
 * <p><b>Reference:</b> Cressie 1985, Mathematical Geology 17:563-586, for weighted least squares; the classes and weights
 * are those gstat uses unless told otherwise (Pebesma 2004, Computers &amp; Geosciences 30:683-691).
 */
public final class VariogramFit {
    /** Classes of distance. */
    static final int BINS = 15;

    /** Relative; no finer, for doubles do not tell the misfits of nearer ranges apart. */
    static final double RANGE_ACCURACY = 1e-8;

    private static final int SCAN = 200;
    private static final int MOST_HALVINGS = 60;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final double[] distance = new double[BINS];
    private final double[] gamma = new double[BINS];
    private final double[] pairs = new double[BINS];
    private final double cutoffM;

    /** The classes only; {@link #spherical} fits a curve to them. */
    VariogramFit(double[] x, double[] y, double[] values) {
        double width = Arrays.stream(x).max().orElse(0) - Arrays.stream(x).min().orElse(0);
        double height =
                Arrays.stream(y).max().orElse(0) - Arrays.stream(y).min().orElse(0);
        cutoffM = Math.hypot(width, height) / 3;
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                double d = Math.hypot(x[i] - x[j], y[i] - y[j]);
                if (d > 0 && d <= cutoffM) {
                    int bin = Math.min(BINS - 1, (int) Math.ceil(d / cutoffM * BINS) - 1);
                    double difference = values[i] - values[j];
                    pairs[bin]++;
                    distance[bin] += d;
                    gamma[bin] += difference * difference / 2;
                }
            }
        }
        for (int bin = 0; bin < BINS; bin++) {
            distance[bin] /= Math.max(1, pairs[bin]);
            gamma[bin] /= Math.max(1, pairs[bin]);
        }
    }

    /** Pairs of points in a class, counted from 0. */
    double pairs(int bin) {
        return pairs[bin];
    }

    /** Mean distance of a class's pairs, m; 0 without any. */
    double distanceM(int bin) {
        return distance[bin];
    }

    /** Half the mean squared difference of a class's pairs; 0 without any. */
    double gamma(int bin) {
        return gamma[bin];
    }

    /** The best curve; empty if fewer than three classes hold a pair, or all values are one. */
    public static Optional<Variogram> spherical(double[] x, double[] y, double[] values) {
        VariogramFit fit = new VariogramFit(x, y, values);
        long filled = Arrays.stream(fit.pairs).filter(n -> n > 0).count();
        boolean varies = Arrays.stream(fit.gamma).anyMatch(g -> g > 0);
        return filled < 3 || !varies ? Optional.empty() : fit.best();
    }

    private Optional<Variogram> best() {
        double least = Arrays.stream(distance).filter(d -> d > 0).min().orElse(cutoffM);
        double ratio = Math.pow(cutoffM / least, 1.0 / SCAN);
        double best = least;
        for (int i = 1; i <= SCAN; i++) {
            double range = least * Math.pow(ratio, i);
            best = misfit(range) < misfit(best) ? range : best;
        }
        double low = Math.max(least, best / ratio);
        double high = Math.min(cutoffM, best * ratio);
        for (int i = 0; i < MOST_HALVINGS && high - low > RANGE_ACCURACY * low; i++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (misfit(left) <= misfit(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        double range = (low + high) / 2;
        double[] line = line(range);
        return line[0] + line[1] > 0
                ? Optional.of(new Variogram(Variogram.Shape.SPHERICAL, line[0], line[1], range))
                : Optional.empty();
    }

    /** Weighted sum of squares left by the best curve of a range, m. */
    double misfit(double range) {
        double[] line = line(range);
        double sum = 0;
        for (int bin = 0; bin < BINS; bin++) {
            double miss = gamma[bin] - line[0] - line[1] * Variogram.Shape.SPHERICAL.at(distance[bin] / range);
            sum += weight(bin) * miss * miss;
        }
        return sum;
    }

    private double weight(int bin) {
        return pairs[bin] == 0 ? 0 : pairs[bin] / (distance[bin] * distance[bin]);
    }

    /** Nugget and sill for a range: a weighted straight line through 0 or above. */
    private double[] line(double range) {
        double w = 0;
        double s = 0;
        double ss = 0;
        double g = 0;
        double sg = 0;
        for (int bin = 0; bin < BINS; bin++) {
            double weight = weight(bin);
            double rise = Variogram.Shape.SPHERICAL.at(distance[bin] / range);
            w += weight;
            s += weight * rise;
            ss += weight * rise * rise;
            g += weight * gamma[bin];
            sg += weight * rise * gamma[bin];
        }
        double determinant = w * ss - s * s;
        double sill = determinant > 0 ? (w * sg - s * g) / determinant : 0;
        double nugget = (g - sill * s) / w;
        if (sill < 0) {
            return new double[] {g / w, 0};
        }
        return nugget < 0 ? new double[] {0, sg / ss} : new double[] {nugget, sill};
    }
}
