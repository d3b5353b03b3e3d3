package loamline.scene;

/** Coloured cells in rows from north to south. Immutable. */
public final class Pixels {
    private final int columns;
    private final int rows;
    private final int[] argb;

    /**
     * @param argb opacity, red, green and blue of each cell as 0xAARRGGBB, row by row; copied
     * @throws IllegalArgumentException if there is not one value a cell
     */
    public Pixels(int columns, int rows, int[] argb) {
        if (columns < 1 || rows < 1 || argb.length != (long) columns * rows) {
            throw new IllegalArgumentException(argb.length + " colours for " + columns + " x " + rows + " cells");
        }
        this.columns = columns;
        this.rows = rows;
        this.argb = argb.clone();
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    /** All colours; a copy. */
    public int[] argb() {
        return argb.clone();
    }
}
