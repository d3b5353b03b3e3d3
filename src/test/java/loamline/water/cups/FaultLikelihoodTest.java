package loamline.water.cups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

class FaultLikelihoodTest {
    @Test
    void agreesWithTheDenseCovariance() {
        SplittableRandom random = new SplittableRandom(11);
        for (int run = 0; run < 50; run++) {
            int n = 8 + random.nextInt(30);
            double[][] rates = new double[2 + random.nextInt(6)][n];
            double[] y = new double[n];
            double[] quiet = new double[n];
            for (int i = 0; i < n; i++) {
                y[i] = random.nextDouble(0, 20);
                quiet[i] = random.nextDouble(0.5, 3);
                for (double[] head : rates) {
                    head[i] = Math.max(0, random.nextDouble(-5, 10));
                }
            }
            double fast = new FaultLikelihood(y, quiet, rates.length).log(rates);
            assertThat(fast).isCloseTo(dense(y, quiet, rates), within(FaultLikelihood.ABSOLUTE));
        }
    }

    /** The slow, obvious twin: the whole covariance, inverted. */
    private static double dense(double[] y, double[] quiet, double[][] rates) {
        int n = y.length;
        RealMatrix heads = new Array2DRowRealMatrix(rates);
        RealVector total = heads.preMultiply(ones(rates.length));
        double scale = 0;
        double[] variance = new double[n];
        java.util.Arrays.fill(variance, 1);
        for (int round = 0; round < 4; round++) {
            double up = 0;
            double down = 0;
            for (int i = 0; i < n; i++) {
                up += y[i] * total.getEntry(i) / variance[i];
                down += total.getEntry(i) * total.getEntry(i) / variance[i];
            }
            scale = up / down;
            for (int i = 0; i < n; i++) {
                variance[i] = Math.pow(scale * total.getEntry(i), 2) + quiet[i] * quiet[i];
            }
        }
        RealMatrix covariance =
                heads.transpose().multiply(heads).scalarMultiply(Math.pow(scale * Noise.HEADS / Noise.USUAL, 2));
        for (int i = 0; i < n; i++) {
            covariance.addToEntry(i, i, variance[i]);
        }
        LUDecomposition lu = new LUDecomposition(covariance);
        RealMatrix inverse = lu.getSolver().getInverse();
        RealVector readings = new ArrayRealVector(y);
        double fitted = readings.dotProduct(inverse.operate(total)) / total.dotProduct(inverse.operate(total));
        RealVector rest = readings.subtract(total.mapMultiply(fitted));
        double squares = rest.dotProduct(inverse.operate(rest));
        double prior = Noise.USUAL_COUNTS * Noise.USUAL * Noise.USUAL;
        return -0.5 * Math.log(lu.getDeterminant()) - 0.5 * (n + Noise.USUAL_COUNTS) * Math.log(prior + squares);
    }

    private static RealVector ones(int n) {
        return new ArrayRealVector(n, 1);
    }

    @Test
    void readingsOfADryValveAreLikelyWhereNoHeadThrows() {
        double[] quiet = {1, 1, 1};
        FaultLikelihood likelihood = new FaultLikelihood(new double[3], quiet, 1);
        assertThat(likelihood.log(new double[1][3])).isFinite();
    }
}
