package loamline.tracing;

import java.util.Arrays;

/**
 * Joins the patches of a window, the least contrast first, until nothing is left to join.
 *
 * <p>What: rounds with a rising limit. In each, every region names the neighbour that it differs from least;
 * named borders whose cost is below the limit fall, the cheapest first. The cost is the contrast along the
 * whole common border, less where one side is small: specks join early, whatever they look like. A node's height
 * is its cost, or that of its children if greater.
 *
 * <p>Units and shape: contrast in units of {@link Features}, sizes in cells. Ties: the border with the lower
 * number. Cost: about n · log n, most of it in the first rounds.
 *
 * <p>Reference: Arbelaez et al. 2011, Contour detection and hierarchical image segmentation, IEEE PAMI
 * 33:898-916, for merging by mean strength of the border; Robinson, Redding and Crisp 2002, Implementation of a
 * fast algorithm for segmenting SAR imagery, DSTO-TR-1242, for the weight by size.
 */
final class Merging {
    /** Cells of a region that differs by chance as much as by its nature: 4 ft² at 6 cm a cell. */
    private static final double SPECK_CELLS = 100;

    /** Limit of the first round, below what the eye sees. */
    private static final double FIRST_LIMIT = 0.002;

    /** The limit rises by this factor from round to round. */
    private static final double LIMIT_FACTOR = 1.08;

    /** More rounds than it takes to pass every contrast, 90, and then to halve the regions down to one. */
    private static final int MAX_ROUNDS = 200;

    private final Borders borders;

    /** The tree so far. */
    private final int[] parent;

    private final float[] height;
    private final int[] size;
    private int nodes;

    /** The node of each region that is not joined yet. */
    private int[] nodeOf;

    private Merging(Patches patches, Borders borders) {
        this.borders = borders;
        nodes = patches.count();
        parent = new int[2 * nodes];
        height = new float[2 * nodes];
        size = new int[2 * nodes];
        Arrays.fill(parent, -1);
        for (int label : patches.labels()) {
            if (label >= 0) {
                size[label]++;
            }
        }
        nodeOf = new int[nodes];
        Arrays.setAll(nodeOf, i -> i);
    }

    /**
     * The tree over all patches.
     *
     * @param borders those of the patches; used up
     */
    static MergeTree of(Patches patches, Borders borders) {
        Merging merging = new Merging(patches, borders);
        double limit = FIRST_LIMIT;
        for (int round = 0; borders.count() > 0 && round < MAX_ROUNDS; round++) {
            merging.merge(merging.due(limit));
            limit *= LIMIT_FACTOR;
        }
        return new MergeTree(
                Arrays.copyOf(merging.parent, merging.nodes),
                Arrays.copyOf(merging.height, merging.nodes),
                Arrays.copyOf(merging.size, merging.nodes));
    }

    /** The borders named by a region and cheaper than a limit, as keys of cost and number, rising. */
    private long[] due(double limit) {
        long[] named = new long[nodeOf.length];
        Arrays.fill(named, Long.MAX_VALUE);
        for (int border = 0; border < borders.count(); border++) {
            long key = key(cost(border), border);
            named[borders.low(border)] = Math.min(named[borders.low(border)], key);
            named[borders.high(border)] = Math.min(named[borders.high(border)], key);
        }
        long end = key((float) limit, 0);
        return Arrays.stream(named).filter(key -> key < end).sorted().distinct().toArray();
    }

    private float cost(int border) {
        double a = size[nodeOf[borders.low(border)]];
        double b = size[nodeOf[borders.high(border)]];
        double both = a * b / (a + b);
        return (float) (borders.contrast(border) * Math.sqrt(both / (both + SPECK_CELLS)));
    }

    /** Keys order by cost, 0 or more, then by border. */
    private static long key(float cost, int border) {
        return (long) Float.floatToRawIntBits(cost) << 32 | border;
    }

    /** Joins regions across borders given by their keys, and renumbers what is left. */
    private void merge(long[] keys) {
        int[] into = new int[nodeOf.length];
        Arrays.setAll(into, i -> i);
        for (long key : keys) {
            int a = last(into, borders.low((int) key));
            int b = last(into, borders.high((int) key));
            if (a != b) {
                into[b] = a;
                nodeOf[a] = join(nodeOf[a], nodeOf[b], Float.intBitsToFloat((int) (key >> 32)));
            }
        }
        int[] numbers = new int[into.length];
        int[] left = new int[into.length];
        int count = 0;
        for (int region = 0; region < into.length; region++) {
            if (into[region] == region) {
                left[count] = nodeOf[region];
                numbers[region] = count++;
            }
        }
        for (int region = 0; region < into.length; region++) {
            numbers[region] = numbers[last(into, region)];
        }
        nodeOf = Arrays.copyOf(left, count);
        borders.renumber(numbers, count);
    }

    /** The region that one has become part of; shortens the way there. */
    private static int last(int[] into, int region) {
        int at = region;
        while (into[at] != at) {
            into[at] = into[into[at]];
            at = into[at];
        }
        return at;
    }

    private int join(int a, int b, float cost) {
        int node = nodes++;
        parent[a] = node;
        parent[b] = node;
        size[node] = size[a] + size[b];
        height[node] = Math.max(cost, Math.max(height[a], height[b]));
        return node;
    }
}
