package loamline.water;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loamline.cancel.Cancellation;
import loamline.raster.GridSpec;
import loamline.raster.Mask;

/**
 * The rate of some heads together on a window of a grid, mm/h. Immutable.
 *
 * <p>Every cell adds the heads in their order, whoever computes it and whichever part is computed anew; so the same
 * heads give the same bits, after any number of changes. A field made by changing one head shares the rates of the field
 * it was made from and lays the few cells that are new over them.
 */
final class RateField {
    /** Rows computed in one go: enough bands to keep all processors busy, each worth the start. */
    private static final int BAND_ROWS = 48;

    /** When cells laid over make up more than this share, all cells are computed instead. */
    private static final double MOST_LAID_OVER = 0.25;

    private final GridSpec grid;
    private final Window window;
    private final List<SprinklerHead> heads;
    private final double[] rates;

    /** Parts computed anew; the last one that has a cell holds. */
    private final List<RateField> over;

    private RateField(GridSpec grid, Window window, List<SprinklerHead> heads, double[] rates, List<RateField> over) {
        this.grid = grid;
        this.window = window;
        this.heads = heads;
        this.rates = rates;
        this.over = over;
    }

    /** The field on the cells that the heads reach. */
    static RateField of(GridSpec grid, List<SprinklerHead> heads) {
        return on(windowOf(grid, heads), grid, List.copyOf(heads));
    }

    private static Window windowOf(GridSpec grid, List<SprinklerHead> heads) {
        return heads.stream()
                .map(head -> Window.of(grid, head.pattern()))
                .reduce(Window::union)
                .orElse(new Window(0, 0, 0, 0));
    }

    private static RateField on(Window window, GridSpec grid, List<SprinklerHead> heads) {
        RateField field = new RateField(grid, window, heads, new double[window.size()], List.of());
        int bands = (window.rows() + BAND_ROWS - 1) / BAND_ROWS;
        IntStream.range(0, bands).parallel().forEach(band -> {
            Cancellation.check();
            int row = window.row() + band * BAND_ROWS;
            int rows = Math.min(BAND_ROWS, window.endRow() - row);
            field.fill(new Window(window.column(), row, window.columns(), rows));
        });
        return field;
    }

    private void fill(Window band) {
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

    /**
     * The field after one head has changed: only the cells that it reached or reaches are computed anew.
     *
     * @param index the head's place in the list
     */
    RateField with(int index, SprinklerHead changed) {
        Window old = Window.of(grid, heads.get(index).pattern());
        Window now = Window.of(grid, changed.pattern());
        List<SprinklerHead> others = new ArrayList<>(heads);
        others.set(index, changed);
        List<SprinklerHead> after = List.copyOf(others);
        Window both = old.union(now);
        List<Window> touched = both.size() <= old.size() + now.size() ? List.of(both) : List.of(old, now);
        List<RateField> kept = over.stream()
                .filter(part -> touched.stream().noneMatch(wide -> wide.holds(part.window)))
                .toList();
        long laid = touched.stream().mapToLong(Window::size).sum()
                + kept.stream().mapToLong(part -> part.window.size()).sum();
        if (!window.holds(now) || laid > MOST_LAID_OVER * window.size()) {
            return of(grid, after);
        }
        List<RateField> laidOver = new ArrayList<>(kept);
        touched.forEach(part -> laidOver.add(on(part, grid, after)));
        return new RateField(grid, window, after, rates, List.copyOf(laidOver));
    }

    GridSpec grid() {
        return grid;
    }

    Window window() {
        return window;
    }

    /** Adds the rates to an array of all cells of the grid. */
    void addTo(double[] whole) {
        double[] line = new double[window.columns()];
        for (int row = window.row(); row < window.endRow(); row++) {
            read(row, line);
            int to = row * grid.columns() + window.column();
            for (int i = 0; i < line.length; i++) {
                whole[to + i] += line[i];
            }
        }
    }

    /** Writes the rates of a row of the grid that lies in the window, from the window's first column on. */
    void read(int row, double[] line) {
        System.arraycopy(rates, window.index(window.column(), row), line, 0, window.columns());
        for (RateField part : over) {
            Window own = part.window;
            if (row >= own.row() && row < own.endRow()) {
                System.arraycopy(
                        part.rates, own.index(own.column(), row), line, own.column() - window.column(), own.columns());
            }
        }
    }
}
