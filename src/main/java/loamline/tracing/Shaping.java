package loamline.tracing;

import java.util.List;

/**
 * From nodes of the tree to the cells of smooth ground.
 *
 * <p>What: gaps are closed and spurs are cut, by a closing and an opening with a small square; pieces without a
 * click are left out and small holes are filled. Every step keeps order.
 *
 * <p>Reference: Serra 1982, Image Analysis and Mathematical Morphology.
 */
final class Shaping {
    /** Cells by which gaps are closed and spurs are cut. */
    private static final int RADIUS = 2;

    /** Room that the steps need round the patches. */
    private static final int MARGIN = 2 * RADIUS + 1;

    private final Features features;
    private final Patches patches;
    private final MergeTree tree;

    Shaping(Features features, Patches patches, MergeTree tree) {
        this.features = features;
        this.patches = patches;
        this.tree = tree;
    }

    /**
     * The ground below some nodes, never on cells that are not open, always with the cells clicked.
     *
     * @param seeds cells clicked, each below a node
     * @param smallestHole holes of fewer cells are filled
     */
    Cells of(List<Integer> nodes, int[] seeds, double smallestHole) {
        Cells raw = below(nodes);
        return raw.grown(RADIUS)
                .shrunk(2 * RADIUS) // back, and as much again
                .grown(RADIUS)
                .andNear(seeds, RADIUS, raw)
                .and(features.open)
                .connectedTo(seeds)
                .withoutHolesBelow(smallestHole)
                .and(features.open);
    }

    private Cells below(List<Integer> nodes) {
        boolean[] taken = new boolean[patches.count()];
        for (int node : nodes) {
            for (int patch = 0; patch < taken.length; patch++) {
                taken[patch] |= tree.holds(node, patch);
            }
        }
        int[] labels = patches.labels();
        return Cells.of(features.width, features.height, MARGIN, cell -> labels[cell] >= 0 && taken[labels[cell]]);
    }
}
