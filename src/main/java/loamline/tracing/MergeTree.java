package loamline.tracing;

import java.util.Arrays;

/**
 * How the patches of a window join into larger ground: a binary tree, or several where the open ground falls
 * apart.
 *
 * <p>Nodes 0 to n - 1 are the patches; every further one joins two that are neighbours, and comes after both. No
 * node is lower than its children, so the ground reached from a patch up to a height lies within that reached up
 * to a greater one.
 */
final class MergeTree {
    private final int[] parent;
    private final float[] height;
    private final int[] size;
    private final int[] sibling;

    /** Patches are ranked so that those below a node have ranks from its first up to, not with, its end. */
    private final int[] firstRank;

    private final int[] endRank;

    /**
     * @param parent by node, -1 for a root
     * @param height contrast that it took to form a node, in units of {@link Features}; 0 for a patch
     * @param size cells
     */
    MergeTree(int[] parent, float[] height, int[] size) {
        this.parent = parent;
        this.height = height;
        this.size = size;
        this.firstRank = new int[parent.length];
        this.endRank = new int[parent.length];
        this.sibling = siblings();
        rank();
    }

    private int[] siblings() {
        int[] first = new int[parent.length];
        int[] siblings = new int[parent.length];
        Arrays.fill(first, -1);
        Arrays.fill(siblings, -1);
        for (int node = 0; node < parent.length; node++) {
            int up = parent[node];
            if (up >= 0 && first[up] < 0) {
                first[up] = node;
            } else if (up >= 0) {
                siblings[node] = first[up];
                siblings[first[up]] = node;
            }
        }
        return siblings;
    }

    /** Hands out ranks from the roots down: each child takes the next part of its parent's. */
    private void rank() {
        int[] leaves = new int[parent.length];
        for (int node = 0; node < parent.length; node++) {
            leaves[node] = Math.max(1, leaves[node]);
            if (parent[node] >= 0) {
                leaves[parent[node]] += leaves[node];
            }
        }
        int next = 0;
        int[] free = new int[parent.length];
        for (int node = parent.length - 1; node >= 0; node--) {
            int up = parent[node];
            firstRank[node] = up < 0 ? next : free[up];
            endRank[node] = firstRank[node] + leaves[node];
            free[node] = firstRank[node];
            if (up < 0) {
                next += leaves[node];
            } else {
                free[up] += leaves[node];
            }
        }
    }

    /** The node above one, or -1 above a root. */
    int parent(int node) {
        return parent[node];
    }

    /** The node that one was joined with, or -1 for a root. */
    int sibling(int node) {
        return sibling[node];
    }

    /** Contrast that it took to form a node. */
    double height(int node) {
        return height[node];
    }

    /** Cells below a node. */
    int size(int node) {
        return size[node];
    }

    /** Whether a node is another or lies below it. */
    boolean holds(int upper, int lower) {
        return firstRank[upper] <= firstRank[lower] && endRank[lower] <= endRank[upper];
    }

    /** The highest node above a patch that is no higher than a contrast, 0 or more. */
    int ancestor(int patch, double contrast) {
        int node = patch;
        while (parent[node] >= 0 && height[parent[node]] <= contrast) {
            node = parent[node];
        }
        return node;
    }
}
