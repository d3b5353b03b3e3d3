package loamline.water;

import loamline.raster.GridSpec;

/**
 * An upright block of a grid's cells, perhaps without any.
 *
 * @param column of the grid, its first
 * @param row of the grid, its first
 * @param columns 0 or more
 * @param rows 0 or more
 */
record Window(int column, int row, int columns, int rows) {
    /** The cells of a grid whose middles a head may reach. */
    static Window of(GridSpec grid, HeadPattern head) {
        double x = head.at().x();
        double y = head.at().y();
        double reachM = Math.sqrt(head.reachM2());
        int column = first(grid.originX(), x - reachM, grid.cellM(), grid.columns());
        int row = first(grid.originY(), y - reachM, grid.cellM(), grid.rows());
        int endColumn = first(grid.originX(), x + reachM, grid.cellM(), grid.columns());
        int endRow = first(grid.originY(), y + reachM, grid.cellM(), grid.rows());
        return new Window(column, row, endColumn - column, endRow - row);
    }

    /** The first line of cells whose middle is at a coordinate or past it; at most their number. */
    private static int first(double origin, double from, double cellM, int most) {
        return (int) Math.max(0, Math.min(most, Math.ceil((from - origin) / cellM - 0.5)));
    }

    /** Its cells as a grid of their own; not for an empty window. */
    GridSpec cells(GridSpec grid) {
        return new GridSpec(
                grid.originX() + column * grid.cellM(),
                grid.originY() + row * grid.cellM(),
                grid.cellM(),
                columns,
                rows);
    }

    int size() {
        return columns * rows;
    }

    boolean isEmpty() {
        return columns <= 0 || rows <= 0;
    }

    int endColumn() {
        return column + columns;
    }

    int endRow() {
        return row + rows;
    }

    /** Where a cell of the grid stands in an array of this window's cells. */
    int index(int gridColumn, int gridRow) {
        return (gridRow - row) * columns + gridColumn - column;
    }

    /** The cells that both have. */
    Window intersection(Window other) {
        int west = Math.max(column, other.column);
        int south = Math.max(row, other.row);
        return new Window(
                west,
                south,
                Math.max(0, Math.min(endColumn(), other.endColumn()) - west),
                Math.max(0, Math.min(endRow(), other.endRow()) - south));
    }

    /** Whether all cells of another are here. */
    boolean holds(Window other) {
        return other.isEmpty()
                || (other.column >= column
                        && other.row >= row
                        && other.endColumn() <= endColumn()
                        && other.endRow() <= endRow());
    }

    /** The smallest window that holds both. */
    Window union(Window other) {
        if (isEmpty() || other.isEmpty()) {
            return isEmpty() ? other : this;
        }
        int west = Math.min(column, other.column);
        int south = Math.min(row, other.row);
        return new Window(
                west,
                south,
                Math.max(endColumn(), other.endColumn()) - west,
                Math.max(endRow(), other.endRow()) - south);
    }
}
