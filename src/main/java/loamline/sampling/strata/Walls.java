package loamline.sampling.strata;

import java.util.Arrays;

/**
 * How areas of a power diagram answer to weights: a weighted graph Laplacian over the strata, and its solution.
 *
 * <p>Raising one weight by a little moves its walls out; the area that changes hands between two strata is what lies
 * in a band along their common wall. The band is taken wide enough to hold a few points.
 */
final class Walls {
    /** Width of the band in weight, as a share of a stratum's area: some three points to either side (measured). */
    private static final double BAND = 0.5;

    /**
     * Area said to answer to a weight where there is no wall, so that strata that touch nothing still get a step; in
     * a honeycomb the true answer is √3. Own choice (measured), no source.
     */
    private static final double STIFFNESS = 0.2;

    private final int k;
    private final double[] answer;
    private double band;

    Walls(int k) {
        this.k = k;
        this.answer = new double[k * k];
    }

    /** Starts anew for strata of a given area. */
    void clear(double area) {
        band = BAND * area;
        Arrays.fill(answer, 0);
    }

    /** Tells of an area that would pass from one stratum to another if weights changed by a gap. */
    void add(int from, int to, double gap, double area) {
        if (gap < band) {
            answer[from * k + to] += area;
        }
    }

    /**
     * Turns missing areas into the steps of weight that would bring them, in place. Elimination without pivoting: the
     * matrix is symmetric and its diagonal outweighs its rows. Ends the use of the areas told.
     */
    void solve(double[] missing) {
        // the Laplacian: both sides of a wall averaged, area per weight
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < i; j++) {
                double through = (answer[i * k + j] + answer[j * k + i]) / (2 * band);
                answer[i * k + j] = -through;
                answer[j * k + i] = -through;
            }
        }
        for (int i = 0; i < k; i++) {
            answer[i * k + i] = 0;
            double row = 0;
            for (int j = 0; j < k; j++) {
                row += answer[i * k + j];
            }
            answer[i * k + i] = STIFFNESS - row;
        }
        // down
        for (int i = 0; i < k; i++) {
            for (int r = i + 1; r < k; r++) {
                double factor = answer[r * k + i] / answer[i * k + i];
                for (int j = i; j < k && factor != 0; j++) {
                    answer[r * k + j] -= factor * answer[i * k + j];
                }
                missing[r] -= factor * missing[i];
            }
        }
        // up
        for (int i = k - 1; i >= 0; i--) {
            for (int j = i + 1; j < k; j++) {
                missing[i] -= answer[i * k + j] * missing[j];
            }
            missing[i] /= answer[i * k + i];
        }
    }
}
