package loamline.sampling.walk;

/**
 * Walking distances between all pairs of stops, m; stop 0 is where the walk starts and ends.
 *
 * <p>Symmetric, finite, not negative, zero from a stop to itself. The triangle inequality is not asked for, and stops
 * may share a place.
 */
public final class DistanceMatrix {
    /**
     * How much the two directions of a leg may differ, m. Legs summed from either end differ by rounding, nanometres
     * in a yard; a micrometre is far above that and far below anything that can be walked.
     */
    public static final double SYMMETRY_M = 1e-6;

    private final int size;
    private final double[] distanceM;

    private DistanceMatrix(int size, double[] distanceM) {
        this.size = size;
        this.distanceM = distanceM;
    }

    /**
     * The matrix with the given rows, which are copied. Where the two directions of a leg differ within
     * {@link #SYMMETRY_M}, the row of the lower stop counts.
     *
     * @param rowsM one row a stop, one distance a column, m
     * @throws IllegalArgumentException naming the offending entry, if there is no row, a row's length is not the
     *     number of rows, or an entry is NaN, infinite (an unreachable stop), negative, not zero on the diagonal, or
     *     differs from its mirror image by more than {@link #SYMMETRY_M}
     */
    public static DistanceMatrix of(double[][] rowsM) {
        int n = rowsM.length;
        if (n == 0) {
            throw new IllegalArgumentException("distances have no row, must have one for the start at least");
        }
        double[] flat = new double[n * n];
        for (int i = 0; i < n; i++) {
            requireSquare(rowsM, i);
            for (int j = 0; j < n; j++) {
                requireDistance(rowsM[i][j], i, j);
                flat[i * n + j] = i < j ? rowsM[i][j] : flat[j * n + i];
                requireSymmetric(rowsM[i][j], flat[i * n + j], i, j);
            }
        }
        return new DistanceMatrix(n, flat);
    }

    private static void requireSquare(double[][] rows, int i) {
        if (rows[i].length != rows.length) {
            throw new IllegalArgumentException(
                    "row " + i + " has " + rows[i].length + " distances, must have " + rows.length);
        }
    }

    private static void requireDistance(double d, int i, int j) {
        if (!Double.isFinite(d)) {
            throw new IllegalArgumentException(
                    entry(d, i, j) + ", must be finite: leave unreachable stops out before planning a walk");
        }
        if (d < 0 || (i == j && d != 0)) {
            throw new IllegalArgumentException(entry(d, i, j) + ", must be " + (i == j ? "0" : "0 or more"));
        }
    }

    private static void requireSymmetric(double d, double mirrored, int i, int j) {
        if (Math.abs(d - mirrored) > SYMMETRY_M) {
            throw new IllegalArgumentException(
                    entry(d, i, j) + " but " + mirrored + " back, must agree within " + SYMMETRY_M);
        }
    }

    private static String entry(double d, int i, int j) {
        return "distance from stop " + i + " to stop " + j + " is " + d;
    }

    /** Number of stops, the start among them, at least 1. */
    public int size() {
        return size;
    }

    /** Distance between two stops, m; 0 from a stop to itself. */
    public double betweenM(int i, int j) {
        return distanceM[i * size + j];
    }

    /** All distances, row by row, for kernels; a copy. */
    double[] toRowMajor() {
        return distanceM.clone();
    }
}
