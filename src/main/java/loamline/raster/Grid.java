package loamline.raster;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;

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

    /** The grid with another value for every cell that has one; NaN takes it away. */
    public Grid map(DoubleUnaryOperator change) {
        return of(
                spec,
                all -> Arrays.setAll(all, i -> Double.isNaN(values[i]) ? Double.NaN : change.applyAsDouble(values[i])));
    }

    /** The value that a share of the cells does not pass, 0 to 1; 1 gives the largest. Empty if no cell has a value. */
    public OptionalDouble quantile(double share) {
        double[] sorted =
                Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
        return sorted.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(sorted[(int) Math.max(0, Math.ceil(share * sorted.length) - 1)]);
    }
}
