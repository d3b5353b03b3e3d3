package loamline.raster;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.Region;

/** Which cells of a grid lie on some ground: those whose middle does. */
public final class Mask {
    private final GridSpec grid;
    private final BitSet cells;

    private Mask(GridSpec grid, BitSet cells) {
        this.grid = grid;
        this.cells = cells;
    }

    /**
     * The cells whose middle lies in a region.
     *
     * <p>Scan by rows: crossings of each row's middle line with all rings, sorted, filled between pairs.
     * Borders: a middle exactly on an edge belongs to the ground to the east or north of that edge, so regions
     * that share an edge never share a cell. Cost: vertices · rows crossed + cells.
     */
    public static Mask of(GridSpec grid, Region region) {
        Crossings crossings = new Crossings(grid.rows());
        region.outline().rings().forEach(ring -> addRing(grid, ring, crossings));
        BitSet cells = new BitSet(grid.size());
        for (int row = 0; row < grid.rows(); row++) {
            double[] xs = crossings.sorted(row);
            for (int i = 0; i + 1 < xs.length; i += 2) {
                int from = columnAtOrAfter(grid, xs[i]);
                int to = columnAtOrAfter(grid, xs[i + 1]);
                cells.set(row * grid.columns() + from, row * grid.columns() + Math.max(from, to));
            }
        }
        return new Mask(grid, cells);
    }

    private static void addRing(GridSpec grid, List<Point> ring, Crossings crossings) {
        Point from = ring.get(ring.size() - 1);
        for (Point to : ring) {
            double low = Math.min(from.y(), to.y());
            double high = Math.max(from.y(), to.y());
            int first = Math.max(0, (int) Math.ceil((low - grid.originY()) / grid.cellM() - 0.5));
            for (int row = first; row < grid.rows() && grid.yOf(row) < high; row++) {
                double y = grid.yOf(row);
                if (y >= low) {
                    crossings.add(row, from.x() + (y - from.y()) / (to.y() - from.y()) * (to.x() - from.x()));
                }
            }
            from = to;
        }
    }

    private static int columnAtOrAfter(GridSpec grid, double x) {
        double column = Math.ceil((x - grid.originX()) / grid.cellM() - 0.5);
        return (int) Math.max(0, Math.min(grid.columns(), column));
    }

    public GridSpec grid() {
        return grid;
    }

    /** Whether the cell with this index is in. */
    public boolean has(int index) {
        return cells.get(index);
    }

    /** How many cells are in. */
    public int count() {
        return cells.cardinality();
    }

    /** The indexes of the cells that are in, rising. */
    public int[] indexes() {
        return cells.stream().toArray();
    }

    /** Growing lists of crossings, one a row. */
    private static final class Crossings {
        private final double[][] rows;
        private final int[] sizes;

        Crossings(int count) {
            rows = new double[count][4];
            sizes = new int[count];
        }

        void add(int row, double x) {
            if (sizes[row] == rows[row].length) {
                rows[row] = Arrays.copyOf(rows[row], 2 * sizes[row]);
            }
            rows[row][sizes[row]++] = x;
        }

        double[] sorted(int row) {
            double[] xs = Arrays.copyOf(rows[row], sizes[row]);
            Arrays.sort(xs);
            return xs;
        }
    }
}
