package loamline.sampling.strata;

import java.util.Arrays;

/**
 * The eligible ground of one zone: equal square cells of one lattice along the axes, in the order given.
 *
 * <p>The ground may have holes, notches and parts that do not touch. Inside this package places are measured in
 * cells from the south-west corner cell of the bounding box, so that nothing depends on where the yard lies.
 */
public final class Ground {
    /** How far a cell may be off the lattice, in cells: far above rounding, far below a wrong cell side. */
    private static final double OFF_LATTICE = 0.01;

    /** Lattice lines from one end of the ground to the other; keeps column and row in one sortable number. */
    private static final int MOST_LINES = 1 << 30;

    /** Stands for "no cell" in arrays of cell indexes. */
    static final int NONE = -1;

    /** Sides of a cell in the order in which {@link #neighbour} counts them: east, north, west, south. */
    static final int SIDES = 4;

    private static final int[] STEP_X = {1, 0, -1, 0};
    private static final int[] STEP_Y = {0, 1, 0, -1};

    private final double originXM;
    private final double originYM;
    private final double cellM;
    private final int[] column;
    private final int[] row;
    private final long[] sortedKeys;
    private final int[] cellOfKey;
    private final int[] neighbours;

    private Ground(double[] xM, double[] yM, double cellM) {
        this.cellM = cellM;
        this.originXM = Arrays.stream(xM).min().orElseThrow();
        this.originYM = Arrays.stream(yM).min().orElseThrow();
        this.column = lines(xM, originXM, cellM, "xM");
        this.row = lines(yM, originYM, cellM, "yM");
        this.sortedKeys = new long[xM.length];
        Arrays.setAll(sortedKeys, i -> key(column[i], row[i]));
        Arrays.sort(sortedKeys);
        this.cellOfKey = new int[xM.length];
        for (int i = 0; i < xM.length; i++) {
            cellOfKey[Arrays.binarySearch(sortedKeys, key(column[i], row[i]))] = i;
        }
        this.neighbours = new int[SIDES * xM.length];
        Arrays.setAll(
                neighbours, i -> cellAt(column[i / SIDES] + STEP_X[i % SIDES], row[i / SIDES] + STEP_Y[i % SIDES]));
    }

    /**
     * Ground from the middles of its cells.
     *
     * @param xM easting of each cell's middle, m
     * @param yM northing of each cell's middle, m
     * @param cellM side of a cell, m
     * @throws IllegalArgumentException if there is no cell, the arrays differ in length, a number is not finite, a
     *     cell is off the lattice by more than a hundredth of its side, or two cells lie in the same place
     */
    public static Ground of(double[] xM, double[] yM, double cellM) {
        if (xM.length == 0 || xM.length != yM.length) {
            throw new IllegalArgumentException(
                    "ground needs as many xM as yM, at least one: got " + xM.length + " xM and " + yM.length + " yM");
        }
        if (!(cellM > 0) || !Double.isFinite(cellM)) {
            throw new IllegalArgumentException("cellM must be above 0 and finite: got " + cellM);
        }
        Ground ground = new Ground(xM, yM, cellM);
        for (int i = 1; i < xM.length; i++) {
            long key = ground.sortedKeys[i];
            if (key == ground.sortedKeys[i - 1]) {
                throw new IllegalArgumentException("two cells lie at " + ground.xM((double) (int) key) + ", "
                        + ground.yM((double) (key >> Integer.SIZE)));
            }
        }
        return ground;
    }

    private static int[] lines(double[] middleM, double originM, double cellM, String name) {
        int[] line = new int[middleM.length];
        for (int i = 0; i < middleM.length; i++) {
            double cells = (middleM[i] - originM) / cellM;
            line[i] = (int) Math.rint(cells);
            if (!(Math.abs(cells - line[i]) <= OFF_LATTICE) || line[i] >= MOST_LINES) {
                throw new IllegalArgumentException(name + "[" + i + "] = " + middleM[i] + " is not a whole number of "
                        + cellM + " m cells from " + originM);
            }
        }
        return line;
    }

    private static long key(int column, int row) {
        return ((long) row << Integer.SIZE) + column;
    }

    /** How many cells. */
    public int size() {
        return column.length;
    }

    /** Side of a cell, m. */
    public double cellM() {
        return cellM;
    }

    /** Area of all cells, m². */
    public double areaM2() {
        return size() * cellM * cellM;
    }

    /** Easting of a cell's middle, m. */
    public double xM(int cell) {
        return xM((double) column[cell]);
    }

    /** Northing of a cell's middle, m. */
    public double yM(int cell) {
        return yM((double) row[cell]);
    }

    double xM(double columns) {
        return originXM + columns * cellM;
    }

    double yM(double rows) {
        return originYM + rows * cellM;
    }

    int column(int cell) {
        return column[cell];
    }

    int row(int cell) {
        return row[cell];
    }

    /** The cell in a lattice place, or {@link #NONE}. */
    int cellAt(int column, int row) {
        int found = Arrays.binarySearch(sortedKeys, key(column, row));
        return found < 0 ? NONE : cellOfKey[found];
    }

    /** The cell that covers a place given in cells, or {@link #NONE}; a cell owns its west and south sides. */
    int cellCovering(double columns, double rows) {
        return cellAt((int) Math.floor(columns + 0.5), (int) Math.floor(rows + 0.5));
    }

    /** The cell beyond a side of a cell, or {@link #NONE}. */
    int neighbour(int cell, int side) {
        return neighbours[SIDES * cell + side];
    }
}
