package loamline.water.cups;

import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How much each head gives, from the readings: least squares without negative outputs, each output drawn to the common
 * scale of the valve.
 *
 * <p>Minimises Σ ((y − Σ b_h rate_h) / σ)² + Σ ((b_h − s) / (τ_h s))² over b ≥ 0 and s ≥ 0, σ² = c² (μ² + quiet²). A
 * sound head is held to the scale with the natural spread τ = {@link Noise#HEADS}, one in doubt is freed to τ = {@link
 * #FREED}. The scale itself is free: low pressure makes no head weak.
 */
final class OutputFit {
    /** Standard deviation of the output of a head that may have any, as a share of the scale. */
    static final double FREED = 1;

    /** Share of the cases in which the interval is to hold the truth. */
    private static final double CONFIDENCE = 0.95;

    private static final int ROUNDS = 6;

    /** A scale of 0 has no natural spread; this keeps the equations solvable, mm/h a mm/h. */
    private static final double LEAST_SCALE = 1e-9;

    private final double[][] rates;
    private final double[] y;
    private final double[] quiet;
    private final double[] spread;
    private double[] solution;
    private double[][] equations = {};
    private double share = Noise.USUAL;

    /**
     * The factor of a head: its output over the scale of the valve.
     *
     * @param factor 1 is its share, 0 or more
     * @param low lower end of the 95 % interval, 0 or more
     * @param high upper end
     */
    record Factor(double factor, double low, double high) {}

    /**
     * Fits.
     *
     * @param rates as the heads stand, by head and cup, mm/h
     * @param y readings, mm/h
     * @param freed the heads whose output is in doubt
     */
    OutputFit(double[][] rates, double[] y, double[] quiet, boolean[] freed) {
        this.rates = rates;
        this.y = y;
        this.quiet = quiet;
        this.spread = new double[rates.length];
        for (int h = 0; h < rates.length; h++) {
            spread[h] = freed[h] ? FREED : Noise.HEADS;
        }
        this.solution = new double[rates.length + 1];
        Arrays.fill(solution, startScale());
        for (int round = 0; round < ROUNDS; round++) {
            refine();
        }
    }

    private double startScale() {
        double thrown = Arrays.stream(rates).flatMapToDouble(Arrays::stream).sum();
        return thrown > 0 ? Arrays.stream(y).sum() / thrown : 0;
    }

    /** The common scale: readings over what the map promises; 1 where the valve gives just its flow. */
    double scale() {
        return solution[rates.length];
    }

    /** Noise of a reading as a share of the rate. */
    double noiseShare() {
        return share;
    }

    /** The output of a head as a multiple of the mapped flow, scale included. */
    double output(int head) {
        return solution[head];
    }

    /** The fitted rate at a cup, mm/h. */
    double fitted(int cup) {
        double sum = 0;
        for (int h = 0; h < rates.length; h++) {
            sum += solution[h] * rates[h][cup];
        }
        return sum;
    }

    /** Standard deviation of noise over the noise share at a cup, mm/h. */
    double size(int cup) {
        return Math.hypot(fitted(cup), quiet[cup]);
    }

    private void refine() {
        int heads = rates.length;
        double scale = Math.max(LEAST_SCALE, scale());
        double squares = 0;
        double[][] a = new double[y.length + heads][heads + 1];
        double[] b = new double[y.length + heads];
        for (int i = 0; i < y.length; i++) {
            double sigma = share * size(i);
            squares += Math.pow((y[i] - fitted(i)) / size(i), 2);
            b[i] = y[i] / sigma;
            for (int h = 0; h < heads; h++) {
                a[i][h] = rates[h][i] / sigma;
            }
        }
        for (int h = 0; h < heads; h++) {
            a[y.length + h][h] = 1 / (spread[h] * scale);
            a[y.length + h][heads] = -1 / (spread[h] * scale);
        }
        equations = a;
        solution = Nnls.solve(a, b);
        share = Noise.share(squares, y.length);
    }

    /**
     * The factor of a head with its interval: the covariance of the equations, carried to the ratio by its first
     * derivatives, with Student's t for the noise that was learnt from the readings.
     */
    Factor factor(int head) {
        int s = rates.length;
        double scale = Math.max(LEAST_SCALE, solution[s]);
        RealMatrix a = new Array2DRowRealMatrix(equations, false);
        RealMatrix covariance =
                new LUDecomposition(a.transpose().multiply(a)).getSolver().getInverse();
        double factor = solution[head] / scale;
        double variance = covariance.getEntry(head, head)
                - 2 * factor * covariance.getEntry(head, s)
                + factor * factor * covariance.getEntry(s, s);
        double freedom = y.length + Noise.USUAL_COUNTS - 1;
        double t = new TDistribution(freedom).inverseCumulativeProbability(0.5 + CONFIDENCE / 2);
        double half = t * Math.sqrt(Math.max(0, variance)) / scale;
        return new Factor(factor, Math.max(0, factor - half), factor + half);
    }
}
