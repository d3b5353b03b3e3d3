package loamline.tracing;

import java.util.Arrays;

/**
 * The common borders of neighbouring regions: how long each is, and how the picture changes across it.
 *
 * <p>What: a border's step is the change of all channels from the region with the lower number to the other,
 * taken a little off the border on both sides and summed over its length. Steps are summed before their size is
 * taken, so noise and texture cancel and a faint but steady edge remains.
 *
 * <p>Units and shape: one entry a pair of neighbours, by lower then higher number. Borders: a place beyond the
 * window or not open is replaced by the cell at the border itself. Cost: linear; sorting is by counting.
 */
final class Borders {
    /** Cells from a border's own to those compared: past the blur and past thin lines such as joints. */
    private static final int TAP = 2;

    private int count;
    private int[] low;
    private int[] high;
    private float[] length;
    private final float[][] step = new float[Features.CHANNELS][];

    private Borders(int capacity) {
        low = new int[capacity];
        high = new int[capacity];
        length = new float[capacity];
        Arrays.setAll(step, channel -> new float[capacity]);
    }

    /** The borders of all patches. */
    static Borders of(Features f, Patches patches) {
        int[] labels = patches.labels();
        Borders b = new Borders(countSides(f, labels));
        for (int y = 0; y < f.height; y++) {
            for (int x = 0; x < f.width; x++) {
                int cell = y * f.width + x;
                if (x + 1 < f.width && differ(labels, cell, cell + 1)) {
                    int west = x >= TAP ? cell - TAP : cell;
                    int east = x + 1 + TAP < f.width ? cell + 1 + TAP : cell + 1;
                    b.addSide(f, labels, cell, cell + 1, west, east);
                }
                if (y + 1 < f.height && differ(labels, cell, cell + f.width)) {
                    int north = y >= TAP ? cell - f.width * TAP : cell;
                    int south = y + 1 + TAP < f.height ? cell + f.width * (1 + TAP) : cell + f.width;
                    b.addSide(f, labels, cell, cell + f.width, north, south);
                }
            }
        }
        b.join(patches.count());
        return b;
    }

    private static int countSides(Features f, int[] labels) {
        int sides = 0;
        for (int y = 0; y < f.height; y++) {
            for (int x = 0; x < f.width; x++) {
                int cell = y * f.width + x;
                sides += x + 1 < f.width && differ(labels, cell, cell + 1) ? 1 : 0;
                sides += y + 1 < f.height && differ(labels, cell, cell + f.width) ? 1 : 0;
            }
        }
        return sides;
    }

    private static boolean differ(int[] labels, int a, int b) {
        return labels[a] != labels[b] && labels[a] >= 0 && labels[b] >= 0;
    }

    /** Adds the side between two cells as a border of its own. */
    private void addSide(Features f, int[] labels, int a, int b, int farA, int farB) {
        int from = labels[farA] >= 0 ? farA : a;
        int to = labels[farB] >= 0 ? farB : b;
        boolean rising = labels[a] < labels[b];
        low[count] = Math.min(labels[a], labels[b]);
        high[count] = Math.max(labels[a], labels[b]);
        length[count] = 1;
        for (int channel = 0; channel < step.length; channel++) {
            float change = f.planes[channel][to] - f.planes[channel][from];
            step[channel][count] = rising ? change : -change;
        }
        count++;
    }

    int count() {
        return count;
    }

    /** The region with the lower number. */
    int low(int border) {
        return low[border];
    }

    /** The region with the higher number. */
    int high(int border) {
        return high[border];
    }

    /** The size of the mean step across a border. */
    double contrast(int border) {
        double sum = 0;
        for (float[] channel : step) {
            sum += channel[border] * channel[border];
        }
        return Math.sqrt(sum) / length[border];
    }

    /**
     * Gives regions new numbers: borders inside one region vanish, those between the same two become one.
     *
     * @param numbers new by old
     * @param regions how many there are now
     */
    void renumber(int[] numbers, int regions) {
        int kept = 0;
        for (int i = 0; i < count; i++) {
            int a = numbers[low[i]];
            int b = numbers[high[i]];
            if (a != b) {
                low[kept] = Math.min(a, b);
                high[kept] = Math.max(a, b);
                length[kept] = length[i];
                for (float[] channel : step) {
                    channel[kept] = a < b ? channel[i] : -channel[i];
                }
                kept++;
            }
        }
        count = kept;
        join(regions);
    }

    /** Sorts by the two regions, and sums up borders between the same two. */
    private void join(int regions) {
        int[] order = new int[count];
        Arrays.setAll(order, i -> i);
        order = sorted(sorted(order, high, regions), low, regions);
        Borders joined = new Borders(count);
        for (int i : order) {
            int last = joined.count - 1;
            boolean more = last >= 0 && joined.low[last] == low[i] && joined.high[last] == high[i];
            int to = more ? last : joined.count++;
            joined.low[to] = low[i];
            joined.high[to] = high[i];
            joined.length[to] += length[i];
            for (int channel = 0; channel < step.length; channel++) {
                joined.step[channel][to] += step[channel][i];
            }
        }
        count = joined.count;
        low = joined.low;
        high = joined.high;
        length = joined.length;
        System.arraycopy(joined.step, 0, step, 0, step.length);
    }

    /** A stable counting sort. */
    private static int[] sorted(int[] order, int[] key, int keys) {
        int[] next = new int[keys + 1];
        for (int i : order) {
            next[key[i] + 1]++;
        }
        for (int k = 0; k < keys; k++) {
            next[k + 1] += next[k];
        }
        int[] sorted = new int[order.length];
        for (int i : order) {
            sorted[next[key[i]]++] = i;
        }
        return sorted;
    }
}
