package loamline.water.cups;

/**
 * Least squares with no unknown below 0.
 *
 * <p><b>What:</b> the x ≥ 0 that makes |A x − b| smallest, by the active-set method of Lawson and Hanson on the normal
 * equations.
 *
 * <p><b>Units and shape:</b> A row-major with one row an equation; all rows as long as the first; no units of its own.
 *
 * <p><b>NaN:</b> must not occur.
 *
 * <p><b>Ties and borders:</b> of unknowns that would help alike the first is freed first. A column that depends on
 * those already free, or is all 0, stays at 0.
 *
 * <p><b>Accuracy:</b> {@link #RELATIVE} for columns as different as the throws of sprinkler heads; normal equations
 * square the condition number, so nearly equal columns lose digits twice as fast.
 *
 * <p><b>Cost:</b> rows · columns² once, then columns³ for each unknown freed or bound; at most {@link
 * #MOST_STEPS_A_COLUMN} steps a column.
 *
 * <p><b>Reference:</b> Lawson and Hanson 1974, Solving Least Squares Problems, chapter 23; Bro and de Jong 1997, J.
 * Chemometrics 11:393-401, for the normal equations.
 */
final class Nnls {
    /** Relative to the largest unknown. */
    static final double RELATIVE = 1e-9;

    private static final int MOST_STEPS_A_COLUMN = 10;

    /** A pivot this much smaller than its column is rounding. */
    private static final double DEPENDENT = 1e-12;

    private final double[][] normal;
    private final double[] right;
    private final int n;
    private final boolean[] free;
    private final double[] x;
    private final double[] trial;
    private final double[][] lower;

    private Nnls(double[][] a, double[] b) {
        n = a[0].length;
        normal = new double[n][n];
        right = new double[n];
        for (int row = 0; row < a.length; row++) {
            for (int i = 0; i < n; i++) {
                right[i] += a[row][i] * b[row];
                for (int j = 0; j <= i; j++) {
                    normal[i][j] += a[row][i] * a[row][j];
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                normal[j][i] = normal[i][j];
            }
        }
        free = new boolean[n];
        x = new double[n];
        trial = new double[n];
        lower = new double[n][n];
    }

    /**
     * Solves A x ≈ b.
     *
     * @param a at least one row and one column; not changed
     * @param b as long as {@code a} has rows; not changed
     */
    static double[] solve(double[][] a, double[] b) {
        Nnls problem = new Nnls(a, b);
        problem.run();
        return problem.x;
    }

    private void run() {
        boolean[] useless = new boolean[n];
        for (int step = 0; step < MOST_STEPS_A_COLUMN * n; step++) {
            int best = steepest(useless);
            if (best < 0) {
                return;
            }
            free[best] = true;
            if (!solveFree() || trial[best] <= 0) {
                free[best] = false;
                useless[best] = true;
                continue;
            }
            walkToTrial();
            java.util.Arrays.fill(useless, false);
        }
    }

    /** The bound unknown whose growth lowers the misfit fastest; -1 if none does. */
    private int steepest(boolean[] useless) {
        int best = -1;
        double most = 0;
        for (int i = 0; i < n; i++) {
            double slope = right[i];
            double size = Math.abs(right[i]);
            for (int j = 0; j < n; j++) {
                slope -= normal[i][j] * x[j];
                size += Math.abs(normal[i][j] * x[j]);
            }
            if (!free[i] && !useless[i] && slope > most && slope > DEPENDENT * size) {
                most = slope;
                best = i;
            }
        }
        return best;
    }

    /** Goes to the solution of the free unknowns, binding on the way those that would fall below 0. */
    private void walkToTrial() {
        for (int bound = 0; bound <= n; bound++) {
            double share = 1;
            for (int i = 0; i < n; i++) {
                if (free[i] && trial[i] <= 0) {
                    share = Math.min(share, x[i] / (x[i] - trial[i]));
                }
            }
            for (int i = 0; i < n; i++) {
                x[i] = free[i] ? x[i] + share * (trial[i] - x[i]) : 0;
            }
            if (share >= 1) {
                return;
            }
            for (int i = 0; i < n; i++) {
                if (free[i] && trial[i] <= 0 && x[i] <= RELATIVE * (x[i] - trial[i])) {
                    free[i] = false;
                    x[i] = 0;
                }
            }
            solveFree();
        }
    }

    /** Unbounded least squares of the free unknowns into {@link #trial}; false if their columns depend. */
    private boolean solveFree() {
        for (int i = 0; i < n; i++) {
            if (!free[i]) {
                continue;
            }
            double value = right[i];
            for (int j = 0; j <= i; j++) {
                if (!free[j]) {
                    continue;
                }
                double sum = normal[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= free[k] ? lower[i][k] * lower[j][k] : 0;
                }
                if (i == j && !(sum > DEPENDENT * normal[i][i])) {
                    return false;
                }
                lower[i][j] = i == j ? Math.sqrt(sum) : sum / lower[j][j];
                value -= j < i ? lower[i][j] * trial[j] : 0;
            }
            trial[i] = value / lower[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            if (free[i]) {
                for (int k = i + 1; k < n; k++) {
                    trial[i] -= free[k] ? lower[k][i] * trial[k] : 0;
                }
                trial[i] /= lower[i][i];
            }
        }
        return true;
    }
}
