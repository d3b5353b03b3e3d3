package loamline.tracing;

import java.util.Arrays;

/**
 * A window cut into small patches whose borders run along the edges in it.
 *
 * <p>What: the watershed of the steepness of colour. Every open cell drains to the flattest of itself
 * and its four neighbours; cells that drain to the same place are a patch. Units and shape: labels by cell, from
 * 0 in the order of those places; -1 where a cell is not open. Ties: among equals the cell with the lower index
 * counts as flatter, so level ground is drained too. Borders: a neighbour that is not open, or outside, adds no
 * steepness. Cost: about 40 operations a cell.
 *
 * <p>Reference: Vincent and Soille 1991, Watersheds in digital spaces, IEEE PAMI 13:583-598; by steepest descent:
 * Cousty et al. 2009, Watershed cuts, IEEE PAMI 31:1362-1374.
 */
final class Patches {
    private final int[] labels;
    private final int count;

    private Patches(int[] labels, int count) {
        this.labels = labels;
        this.count = count;
    }

    static Patches of(Features features) {
        int[] downhill = downhill(features, steepness(features));
        int[] labels = new int[downhill.length];
        Arrays.fill(labels, -1);
        int count = 0;
        for (int cell = 0; cell < downhill.length; cell++) {
            if (downhill[cell] == cell) {
                labels[cell] = count++;
            }
        }
        for (int cell = 0; cell < downhill.length; cell++) {
            if (downhill[cell] >= 0) {
                label(cell, downhill, labels);
            }
        }
        return new Patches(labels, count);
    }

    /** How many there are. */
    int count() {
        return count;
    }

    /** The patch of each cell; not to be written. */
    int[] labels() {
        return labels;
    }

    /** Follows a cell down to the first one that has a label, and gives that to all on the way. */
    private static void label(int cell, int[] downhill, int[] labels) {
        int low = cell;
        while (labels[low] < 0) {
            low = downhill[low];
        }
        for (int c = cell; labels[c] < 0; c = downhill[c]) {
            labels[c] = labels[low];
        }
    }

    /** The squared gradient of colour, by central differences; texture is too wide to show where an edge is. */
    private static float[] steepness(Features f) {
        float[] steep = new float[f.state.length];
        for (int y = 0; y < f.height; y++) {
            for (int x = 0; x < f.width; x++) {
                int cell = y * f.width + x;
                if (f.open[cell]) {
                    int west = x > 0 && f.open[cell - 1] ? cell - 1 : cell;
                    int east = x + 1 < f.width && f.open[cell + 1] ? cell + 1 : cell;
                    int north = y > 0 && f.open[cell - f.width] ? cell - f.width : cell;
                    int south = y + 1 < f.height && f.open[cell + f.width] ? cell + f.width : cell;
                    for (int channel = 0; channel < Features.COLOURS; channel++) {
                        float[] plane = f.planes[channel];
                        float dx = plane[east] - plane[west];
                        float dy = plane[south] - plane[north];
                        steep[cell] += dx * dx + dy * dy;
                    }
                }
            }
        }
        return steep;
    }

    /** The flattest of each cell and its open neighbours; -1 for a cell that is not open. */
    private static int[] downhill(Features f, float[] steep) {
        int[] to = new int[steep.length];
        for (int y = 0; y < f.height; y++) {
            for (int x = 0; x < f.width; x++) {
                int cell = y * f.width + x;
                int flattest = cell;
                if (y > 0) {
                    flattest = flatter(f, steep, flattest, cell - f.width);
                }
                if (x > 0) {
                    flattest = flatter(f, steep, flattest, cell - 1);
                }
                if (x + 1 < f.width) {
                    flattest = flatter(f, steep, flattest, cell + 1);
                }
                if (y + 1 < f.height) {
                    flattest = flatter(f, steep, flattest, cell + f.width);
                }
                to[cell] = f.open[cell] ? flattest : -1;
            }
        }
        return to;
    }

    private static int flatter(Features f, float[] steep, int a, int b) {
        boolean lower = steep[b] < steep[a] || (steep[b] == steep[a] && b < a);
        return lower && f.open[b] ? b : a;
    }
}
