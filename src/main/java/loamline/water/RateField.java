package loamline.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import loamline.cancel.Cancellation;
import loamline.raster.GridSpec;
import loamline.raster.Mask;

/**
 * The rate of some heads together on a window of a grid, mm/h. Immutable.
 *
 * <p>Every cell adds the heads in their order, whoever computes it and whichever part is computed anew; so the same
 * heads give the same bits, after any number of changes.
 */
final class RateField {
    /** Rows computed in one go: enough of them to keep all processors busy, and each worth the start. */
    private static final int BAND_ROWS = 64;

    private final GridSpec grid;
    private final Window window;
    private final List<SprinklerHead> heads;
    private final double[] rates;

    private RateField(GridSpec grid, Window window, List<SprinklerHead> heads, double[] rates) {
        this.grid = grid;
        this.window = window;
        this.heads = heads;
        this.rates = rates;
    }

    /** The field on the cells that the heads reach. */
    static RateField of(GridSpec grid, List<SprinklerHead> heads) {
        Window window = heads.stream()
                .map(head -> Window.of(grid, head.pattern()))
                .reduce(Window::union)
                .orElse(new Window(0, 0, 0, 0));
        RateField field = new RateField(grid, window, List.copyOf(heads), new double[window.size()]);
        field.fill(window);
        return field;
    }

    /**
     * The field after one head has changed: only the cells that it reached or reaches are computed anew.
     *
     * @param index the head's place in the list
     */
    RateField with(int index, SprinklerHead changed) {
        List<SprinklerHead> others = new ArrayList<>(heads);
        Window touched = Window.of(grid, heads.get(index).pattern()).union(Window.of(grid, changed.pattern()));
        others.set(index, changed);
        Window wider = window.union(touched);
        RateField field = new RateField(grid, wider, List.copyOf(others), copied(wider));
        field.clear(touched);
        field.fill(touched);
        return field;
    }

    private double[] copied(Window wider) {
        if (wider.equals(window)) {
            return rates.clone();
        }
        double[] copy = new double[wider.size()];
        for (int row = window.row(); row < window.endRow(); row++) {
            System.arraycopy(
                    rates,
                    window.index(window.column(), row),
                    copy,
                    wider.index(window.column(), row),
                    window.columns());
        }
        return copy;
    }

    private void clear(Window part) {
        for (int row = part.row(); row < part.endRow(); row++) {
            int from = window.index(part.column(), row);
            Arrays.fill(rates, from, from + part.columns(), 0);
        }
    }

    private void fill(Window part) {
        int bands = (part.rows() + BAND_ROWS - 1) / BAND_ROWS;
        IntStream.range(0, bands).parallel().forEach(band -> {
            Cancellation.check();
            int row = part.row() + band * BAND_ROWS;
            int rows = Math.min(BAND_ROWS, part.endRow() - row);
            fillBand(new Window(part.column(), row, part.columns(), rows));
        });
    }

    private void fillBand(Window band) {
        RateKernel kernel = new RateKernel(grid, window, band, rates);
        for (SprinklerHead head : heads) {
            if (head.dark().isEmpty()) {
                kernel.add(head.pattern());
            } else {
                addLit(head, Window.of(grid, head.pattern()).intersection(band));
            }
        }
    }

    /** Adds a head that something stands in the way of. */
    private void addLit(SprinklerHead head, Window part) {
        if (part.isEmpty()) {
            return;
        }
        double[] own = new double[part.size()];
        new RateKernel(grid, part, part, own).add(head.pattern());
        Mask dark = Mask.of(part.cells(grid), head.dark());
        for (int i = 0; i < own.length; i++) {
            if (!dark.has(i)) {
                rates[window.index(part.column() + i % part.columns(), part.row() + i / part.columns())] += own[i];
            }
        }
    }

    GridSpec grid() {
        return grid;
    }

    Window window() {
        return window;
    }

    List<SprinklerHead> heads() {
        return heads;
    }

    /** The rate on a cell of the grid, mm/h; 0 outside the window. */
    double at(int column, int row) {
        boolean inside = column >= window.column()
                && column < window.endColumn()
                && row >= window.row()
                && row < window.endRow();
        return inside ? rates[window.index(column, row)] : 0;
    }

    /** Adds the rates of a part of the grid to an array of the whole grid. */
    void addTo(double[] whole, Window part) {
        Window shared = window.intersection(part);
        for (int row = shared.row(); row < shared.endRow(); row++) {
            int from = window.index(shared.column(), row);
            int to = row * grid.columns() + shared.column();
            for (int i = 0; i < shared.columns(); i++) {
                whole[to + i] += rates[from + i];
            }
        }
    }
}
