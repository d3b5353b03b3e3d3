package loamline.water.cups;

import java.util.Arrays;

/**
 * How likely readings are if every head throws what it is said to throw.
 *
 * <p><b>What:</b> the logarithm of the likelihood of readings y, but for a constant, under
 *
 * <pre>
 *   y = s · (Σ rate_h · (1 + a_h)) + e,   a_h ~ N(0, τ²),   e_i ~ N(0, c² (μ_i² + q_i²)),   μ = s · Σ rate_h
 * </pre>
 *
 * with the scale s (the pressure of the valve) fitted and the noise share c integrated out over a scaled inverse χ²
 * whose {@link Noise#USUAL_COUNTS} readings say {@link Noise#USUAL}; τ/c is held at {@link Noise#HEADS} / USUAL. So
 * neither a valve that gives less as a whole nor heads that differ a little look like a fault.
 *
 * <p><b>Units and shape:</b> rates in mm/h, {@code rates[head][cup]}.
 *
 * <p><b>NaN:</b> must not occur.
 *
 * <p><b>Ties and borders:</b> rates that are all 0 fit s = 0. q must be above 0.
 *
 * <p><b>Accuracy:</b> {@link #ABSOLUTE} against the dense multivariate t-density.
 *
 * <p><b>Cost:</b> cups · heads² + heads³ a call; nothing is allocated. One thread at a time.
 *
 * <p><b>Reference:</b> derived: normal likelihood, its covariance inverted by the Woodbury identity (Golub and Van Loan,
 * Matrix Computations, section 2.1.4), variance integrated over its conjugate prior (Gelman et al., Bayesian Data
 * Analysis, chapter 3).
 */
final class FaultLikelihood {
    /** Of the logarithm. */
    static final double ABSOLUTE = 1e-8;

    /** Rounds in which scale and weights settle on each other; the third changes less than a thousandth. */
    private static final int ROUNDS = 3;

    private final double[] y;
    private final double[] quiet;
    private final double[] total;
    private final double[] weight;
    private final double[][] scaled;
    private final double[][] lower;
    private final double[] u;
    private final double[] v;

    /**
     * @param y readings, mm/h
     * @param quiet of each cup, mm/h, as {@link Noise#quietMmH} gives it
     */
    FaultLikelihood(double[] y, double[] quiet, int heads) {
        this.y = y;
        this.quiet = quiet;
        this.total = new double[y.length];
        this.weight = new double[y.length];
        this.scaled = new double[heads][y.length];
        this.lower = new double[heads][heads];
        this.u = new double[heads];
        this.v = new double[heads];
    }

    /** The logarithm of the likelihood. */
    double log(double[][] rates) {
        sum(rates);
        double scale = settle();
        double logDet = factor(rates, scale * Noise.HEADS / Noise.USUAL);

        // y'Wy, y'Wq and q'Wq with W the inverse covariance: first the diagonal, then what the heads share
        double yy = 0;
        double yq = 0;
        double qq = 0;
        for (int i = 0; i < y.length; i++) {
            logDet -= Math.log(weight[i]);
            yy += weight[i] * y[i] * y[i];
            yq += weight[i] * y[i] * total[i];
            qq += weight[i] * total[i] * total[i];
        }
        for (int h = 0; h < rates.length; h++) {
            u[h] = weighted(scaled[h], y);
            v[h] = weighted(scaled[h], total);
            for (int k = 0; k < h; k++) {
                u[h] -= lower[h][k] * u[k];
                v[h] -= lower[h][k] * v[k];
            }
            u[h] /= lower[h][h];
            v[h] /= lower[h][h];
            yy -= u[h] * u[h];
            yq -= u[h] * v[h];
            qq -= v[h] * v[h];
        }

        double squares = Math.max(0, qq > 0 ? yy - yq * yq / qq : yy);
        double prior = Noise.USUAL_COUNTS * Noise.USUAL * Noise.USUAL;
        return -0.5 * logDet - 0.5 * (y.length + Noise.USUAL_COUNTS) * Math.log(prior + squares);
    }

    private void sum(double[][] rates) {
        Arrays.fill(total, 0);
        for (double[] head : rates) {
            for (int i = 0; i < y.length; i++) {
                total[i] += head[i];
            }
        }
    }

    /** The scale at which readings and rates agree best, and the weights that go with it. */
    private double settle() {
        Arrays.fill(weight, 1);
        double scale = 0;
        for (int round = 0; round <= ROUNDS; round++) {
            double qq = weighted(total, total);
            scale = qq > 0 ? weighted(total, y) / qq : 0;
            for (int i = 0; i < y.length; i++) {
                weight[i] = 1 / (scale * total[i] * scale * total[i] + quiet[i] * quiet[i]);
            }
        }
        return scale;
    }

    private double weighted(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            sum += weight[i] * a[i] * b[i];
        }
        return sum;
    }

    /** Cholesky factor of 1 + spread² · R W R' over the heads; gives the logarithm of its determinant. */
    private double factor(double[][] rates, double spread) {
        double logDet = 0;
        for (int h = 0; h < rates.length; h++) {
            double[] row = scaled[h];
            for (int i = 0; i < row.length; i++) {
                row[i] = spread * rates[h][i];
            }
            for (int g = 0; g <= h; g++) {
                double sum = weighted(row, scaled[g]) + (g == h ? 1 : 0);
                for (int k = 0; k < g; k++) {
                    sum -= lower[h][k] * lower[g][k];
                }
                lower[h][g] = g == h ? Math.sqrt(sum) : sum / lower[g][g];
            }
            logDet += 2 * Math.log(lower[h][h]);
        }
        return logDet;
    }
}
