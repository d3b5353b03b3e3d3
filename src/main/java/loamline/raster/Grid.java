package loamline.raster;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** A value for every cell of a grid; NaN where there is none. Immutable. */
public final class Grid {
    private final GridSpec spec;
    private final double[] values;

    private Grid(GridSpec spec, double[] values) {
        this.spec = spec;
        this.values = values;
    }

    /**
     * A grid whose values somebody writes.
     *
     * @param writing is given all values, 0 each, row-major from the south-west, and does not keep them
     */
    public static Grid of(GridSpec spec, Consumer<double[]> writing) {
        double[] values = new double[spec.size()];
        writing.accept(values);
        return new Grid(spec, values);
    }

    public GridSpec spec() {
        return spec;
    }

    /** The value of a cell, NaN if it has none. */
    public double at(int index) {
        return values[index];
    }

    /** All values, row-major from the south-west; a copy. */
    public double[] values() {
        return values.clone();
    }

    /** The largest value; empty if no cell has one. */
    public OptionalDouble max() {
        return Arrays.stream(values).filter(v -> !Double.isNaN(v)).max();
    }
}
