package loamline.raster;

import java.util.OptionalInt;
import loamline.geometry.Box;
import loamline.geometry.Point;

/**
 * Square cells in rows from south to north, columns from west to east. Cell (column 0, row 0) has its
 * south-west corner at the origin; index = row · columns + column.
 *
 * @param originX metres, west side of column 0
 * @param originY metres, south side of row 0
 * @param cellM side of a cell, m, above 0
 * @param columns at least 1
 * @param rows at least 1; columns · rows at most {@link #MAX_CELLS}
 */
public record GridSpec(double originX, double originY, double cellM, int columns, int rows) {
    /** The largest grid: what one array of doubles can hold in half a gigabyte. */
    public static final long MAX_CELLS = 64_000_000;

    /** @throws IllegalArgumentException if a value is out of range */
    public GridSpec {
        if (!(cellM > 0) || columns < 1 || rows < 1 || (long) columns * rows > MAX_CELLS) {
            throw new IllegalArgumentException(
                    "no grid of " + columns + " x " + rows + " cells of " + cellM + " m (at most " + MAX_CELLS + ")");
        }
    }

    /** The grid whose cells cover a box, its origin on a whole multiple of the cell. */
    public static GridSpec covering(Box box, double cellM) {
        double west = Math.floor(box.minX() / cellM) * cellM;
        double south = Math.floor(box.minY() / cellM) * cellM;
        return new GridSpec(
                west, south, cellM, Math.max(1, (int) Math.ceil((box.maxX() - west) / cellM)), Math.max(1, (int)
                        Math.ceil((box.maxY() - south) / cellM)));
    }

    public int size() {
        return columns * rows;
    }

    public double cellAreaM2() {
        return cellM * cellM;
    }

    /** x of the middle of a column. */
    public double xOf(int column) {
        return originX + (column + 0.5) * cellM;
    }

    /** y of the middle of a row. */
    public double yOf(int row) {
        return originY + (row + 0.5) * cellM;
    }

    /** The index of the cell that holds a point; empty off the grid. A point between two cells belongs to the next. */
    public OptionalInt indexOf(Point p) {
        double column = Math.floor((p.x() - originX) / cellM);
        double row = Math.floor((p.y() - originY) / cellM);
        return column >= 0 && column < columns && row >= 0 && row < rows
                ? OptionalInt.of(((int) row) * columns + (int) column)
                : OptionalInt.empty();
    }

    /** The middle of a cell. */
    public Point centre(int index) {
        return new Point(xOf(index % columns), yOf(index / columns));
    }
}
