package loamline.raster;

import java.util.Optional;

/**
 * Ordinary kriging from all points.
 *
 * <p><b>What:</b> the unbiased weighted mean of least variance for an unknown constant mean: weights w and multiplier μ
 * solve [γ(hᵢⱼ) 1; 1ᵀ 0] [w; μ] = [γ(hᵢ₀); 1]; the prediction is wᵀz, its variance wᵀγ₀ + μ.
 *
 * <p><b>Units and shape:</b> metres; arrays of one length.
 *
 * <p><b>NaN:</b> must not occur.
 *
 * <p><b>Ties and borders:</b> at a point its value comes back with variance 0, with a nugget too. Two points in one
 * place have no answer.
 *
 * <p><b>Accuracy:</b> {@link #ACCURACY}, relative to the spread of the values.
 *
 * <p><b>Cost:</b> points cubed once, then points a prediction, points squared a variance.
 *
 * <p><b>Reference:</b> Cressie 1993, Statistics for Spatial Data, 3.2; leaving one out without solving again: Dubrule
 * 1983, Mathematical Geology 15:687-699.
 */
public final class Kriging {
    /** Relative; tests compare with eight published decimals. */
    static final double ACCURACY = 5e-9;

    private static final double SINGULAR = 1e-12;

    private final double[] x;
    private final double[] y;
    private final double[] values;
    private final Variogram variogram;
    private final double[][] inverse;
    private final double[] dual;

    private Kriging(double[] x, double[] y, double[] values, Variogram variogram, double[][] inverse) {
        this.x = x.clone();
        this.y = y.clone();
        this.values = values.clone();
        this.variogram = variogram;
        this.inverse = inverse;
        this.dual = new double[x.length + 1];
        for (int i = 0; i <= x.length; i++) {
            for (int j = 0; j < x.length; j++) {
                dual[i] += inverse[i][j] * values[j];
            }
        }
    }

    /** Prepares predictions; empty without points, or if two of them lie in one place. */
    public static Optional<Kriging> of(double[] x, double[] y, double[] values, Variogram variogram) {
        int n = x.length;
        double[][] system = new double[n + 1][n + 1];
        for (int i = 0; i < n; i++) {
            system[i][n] = 1;
            system[n][i] = 1;
            for (int j = 0; j < i; j++) {
                system[i][j] = variogram.at(Math.hypot(x[i] - x[j], y[i] - y[j]));
                system[j][i] = system[i][j];
                if (system[i][j] == 0) {
                    return Optional.empty();
                }
            }
        }
        return n == 0
                ? Optional.empty()
                : inverse(system).map(inverse -> new Kriging(x, y, values, variogram, inverse));
    }

    /** The prediction at a place, in the unit of the values. */
    public double predict(double atX, double atY) {
        double sum = dual[values.length];
        for (int i = 0; i < values.length; i++) {
            sum += dual[i] * variogram.at(Math.hypot(x[i] - atX, y[i] - atY));
        }
        return sum;
    }

    /** The variance of the prediction, in squared units of the values; 0 or more. */
    public double variance(double atX, double atY) {
        int n = values.length;
        double[] side = new double[n + 1];
        side[n] = 1;
        for (int i = 0; i < n; i++) {
            side[i] = variogram.at(Math.hypot(x[i] - atX, y[i] - atY));
        }
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            for (int j = 0; j <= n; j++) {
                sum += side[i] * inverse[i][j] * side[j];
            }
        }
        return Math.max(0, sum);
    }

    /** Value less prediction for every point, each predicted from all others; needs two points or more. */
    public double[] leaveOneOut() {
        double[] residuals = new double[values.length];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = dual[i] / inverse[i][i];
        }
        return residuals;
    }

    /** Gauss and Jordan with the largest pivot of a column. */
    private static Optional<double[][]> inverse(double[][] a) {
        int n = a.length;
        double[][] inverse = new double[n][n];
        for (int i = 0; i < n; i++) {
            inverse[i][i] = 1;
        }
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                pivot = Math.abs(a[row][column]) > Math.abs(a[pivot][column]) ? row : pivot;
            }
            if (Math.abs(a[pivot][column]) < SINGULAR) {
                return Optional.empty();
            }
            swap(a, pivot, column);
            swap(inverse, pivot, column);
            double divisor = a[column][column];
            for (int j = 0; j < n; j++) {
                a[column][j] /= divisor;
                inverse[column][j] /= divisor;
            }
            for (int row = 0; row < n; row++) {
                double factor = row == column ? 0 : a[row][column];
                for (int j = 0; j < n && factor != 0; j++) {
                    a[row][j] -= factor * a[column][j];
                    inverse[row][j] -= factor * inverse[column][j];
                }
            }
        }
        return Optional.of(inverse);
    }

    private static void swap(double[][] rows, int i, int j) {
        double[] row = rows[i];
        rows[i] = rows[j];
        rows[j] = row;
    }
}
