package loamline.season.blend;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.cancel.Cancellation;

/**
 * The simplex method in a condensed tableau.
 *
 * <p><b>What.</b> The largest g·y with M y ≤ h, y ≥ 0, where h ≥ 0, so that y = 0 is a start; and the price of every row,
 * which is the answer x of the dual program: the least h·x with Mᵀ x ≥ g, x ≥ 0.
 *
 * <p><b>Units and shape.</b> {@code rows} is M, a row a limit, all of the length of g. Any units; entries should be within a
 * few powers of ten of 1. The arrays are not kept.
 *
 * <p><b>NaN.</b> Not allowed; the search then ends at its cap.
 *
 * <p><b>Ties and borders.</b> Where many limits meet in one corner the method could go round in circles, so h is raised by
 * {@value #APART} at the most, by another amount in every row, the same at every run (Charnes 1952, Econometrica
 * 20:160-170). The prices of rows are exact for g all the same; only that they are the least is off by as much.
 *
 * <p><b>Accuracy.</b> {@link #ROUNDING}: limits are kept to this share of the largest entry they add up.
 *
 * <p><b>Cost.</b> Rows × columns a step; about as many steps as there are rows or columns, whichever is less.
 *
 * <p><b>Reference.</b> Dantzig 1963, Linear Programming and Extensions, chapter 5; Tucker's tableau after Chvátal 1983,
 * Linear Programming, chapter 2.
 */
final class Simplex {
    static final double ROUNDING = 1e-9;
    /** Largest amount by which a limit is moved out. */
    static final double APART = 1e-8;
    /** Entries below this are rounding, not a way on. */
    private static final double ZERO = 1e-11;

    private static final int MOST_STEPS = 50_000;
    /** Multiples of the golden section fill the unit interval evenly. */
    private static final double GOLDEN = 0.6180339887498949;

    private final int rows;
    private final int columns;
    /** Limits, then the goal; last column what is left of each limit, and the goal so far. */
    private final double[][] tableau;
    /** Who stands at the head of each row and column: columns of y, then what is left of rows. */
    private final int[] atRow;

    private final int[] atColumn;

    private Simplex(double[] goal, double[][] limits, double[] most) {
        rows = limits.length;
        columns = goal.length;
        tableau = new double[rows + 1][];
        for (int i = 0; i < rows; i++) {
            tableau[i] = Arrays.copyOf(limits[i], columns + 1);
            double part = (i + 1) * GOLDEN;
            tableau[i][columns] = most[i] + APART * (1 + part - Math.floor(part)) / 2;
        }
        tableau[rows] = new double[columns + 1];
        Arrays.setAll(tableau[rows], j -> j < columns ? -goal[j] : 0);
        atColumn = IntStream.range(0, columns).toArray();
        atRow = IntStream.range(columns, columns + rows).toArray();
    }

    /**
     * Solves.
     *
     * @param goal g
     * @param limits M
     * @param most h, 0 or more
     * @return y, then the prices of rows; empty if g·y has no end, which means that the dual program has no answer
     * @throws IllegalArgumentException if a limit is below 0
     * @throws IllegalStateException if it takes too many steps
     */
    static Optional<double[]> most(double[] goal, double[][] limits, double[] most) {
        if (Arrays.stream(most).anyMatch(h -> !(h >= 0))) {
            throw new IllegalArgumentException("limits must be 0 or more: " + Arrays.toString(most));
        }
        return new Simplex(goal, limits, most).solve();
    }

    private Optional<double[]> solve() {
        for (int step = 0; step < MOST_STEPS; step++) {
            Cancellation.check();
            int in = steepest();
            if (in < 0) {
                return Optional.of(answer());
            }
            int out = tightest(in);
            if (out < 0) {
                return Optional.empty();
            }
            exchange(out, in);
        }
        throw new IllegalStateException("no end after " + MOST_STEPS + " steps");
    }

    private int steepest() {
        int best = -1;
        double least = -ROUNDING;
        for (int j = 0; j < columns; j++) {
            if (tableau[rows][j] < least) {
                least = tableau[rows][j];
                best = j;
            }
        }
        return best;
    }

    /** The row that ends a column's growth; of rows that do so at once the one with the largest entry. */
    private int tightest(int in) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            double entry = tableau[i][in];
            if (entry > ZERO) {
                double ratio = Math.max(0, tableau[i][columns]) / entry;
                if (ratio < least || (ratio == least && entry > tableau[best][in])) {
                    least = ratio;
                    best = i;
                }
            }
        }
        return best;
    }

    private void exchange(int out, int in) {
        double[] pivotRow = tableau[out];
        double pivot = pivotRow[in];
        pivotRow[in] = 1;
        for (int j = 0; j <= columns; j++) {
            pivotRow[j] /= pivot;
        }
        for (int i = 0; i <= rows; i++) {
            double factor = tableau[i][in];
            if (i != out && factor != 0) {
                double[] row = tableau[i];
                row[in] = 0;
                for (int j = 0; j <= columns; j++) {
                    row[j] -= factor * pivotRow[j];
                }
            }
        }
        int left = atRow[out];
        atRow[out] = atColumn[in];
        atColumn[in] = left;
    }

    private double[] answer() {
        double[] answer = new double[columns + rows];
        for (int i = 0; i < rows; i++) {
            if (atRow[i] < columns) {
                answer[atRow[i]] = Math.max(0, tableau[i][columns]);
            }
        }
        for (int j = 0; j < columns; j++) {
            if (atColumn[j] >= columns) {
                answer[atColumn[j]] = Math.max(0, tableau[rows][j]);
            }
        }
        return answer;
    }
}
