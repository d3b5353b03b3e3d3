package loamline.tracing;

/**
 * The way up the tree from one patch, and where on it the ground round the patch stands out most.
 *
 * <p>What: ground stands out when it takes much more contrast to leave it than it took to form it. The score of a
 * node is the logarithm of that ratio, where growth by a twentieth does not yet count as leaving, so a lawn may
 * swallow specks at its edge. This is the stability of maximally stable regions, over contrast in place of grey.
 * Half as much is taken off for the clearest border on the way up across which the ground so far was swallowed by
 * larger ground: a path in a lawn stays a path. A border is as clear as it exceeds what either side has inside.
 *
 * <p>Units: contrast in units of {@link Features}. Ties: the lower node.
 *
 * <p>Reference: Matas et al. 2004, Robust wide-baseline stereo from maximally stable extremal regions, Image and
 * Vision Computing 22:761-767; borders compared with what both sides have inside: Felzenszwalb and Huttenlocher
 * 2004, Efficient graph-based image segmentation, International Journal of Computer Vision 59:167-181.
 */
final class Branch {
    /** Growth that does not yet count as leaving. */
    private static final double SLACK = 1.05;

    /** Contrast just seen; added to both sides of a ratio so that smaller ones do not decide. */
    private static final double JUST_SEEN = 0.01;

    /** Contrast beyond which an edge is no clearer; what the end of the open ground counts as. */
    private static final double CLEAR = 0.1;

    /** Cells of ground that is half as likely to be meant as a large piece. */
    private static final double MEANT_CELLS = 200;

    /** Weight of a border crossed, beside the stability of what lies beyond. */
    private static final double CROSSING = 0.5;

    /** Contrast that comes of rounding alone; far below {@link #JUST_SEEN}. */
    private static final double ROUNDING = 1e-5;

    private final MergeTree tree;
    private final int patch;

    /** Levels, see {@link #level}, at the slider's middle and right end. */
    private final double middle;

    private final double top;

    Branch(MergeTree tree, int patch) {
        this.tree = tree;
        this.patch = patch;
        double best = Double.NEGATIVE_INFINITY;
        double bestLevel = 0;
        double crossed = 0;
        int root = patch;
        for (int node = patch; node >= 0; node = tree.parent(node)) {
            double form = tree.height(node);
            double leave = contrastToLeave(node);
            double score = clearness(node, form, leave) - CROSSING * crossed;
            if (score > best) {
                best = score;
                bestLevel = (level(form) + level(leave)) / 2;
            }
            crossed = Math.max(crossed, borderWithLarger(node));
            root = node;
        }
        middle = bestLevel;
        top = Math.max(bestLevel, level(tree.height(root)));
    }

    /** How much clearer the border of a node is than what it has inside; less for a small one. */
    private double clearness(int node, double inside, double border) {
        double ratio = level(Math.min(CLEAR, border)) - level(Math.min(CLEAR, inside));
        return ratio * tree.size(node) / (tree.size(node) + MEANT_CELLS);
    }

    /** How clear the border is across which a node is joined with a larger one; 0 where it is the larger. */
    private double borderWithLarger(int node) {
        int other = tree.sibling(node);
        if (other < 0 || tree.size(other) <= tree.size(node)) {
            return 0;
        }
        double inside = Math.max(tree.height(node), tree.height(other));
        return clearness(node, inside, tree.height(tree.parent(node)));
    }

    private double contrastToLeave(int node) {
        int last = node;
        int up = tree.parent(node);
        while (up >= 0 && tree.size(up) <= SLACK * tree.size(node)) {
            last = up;
            up = tree.parent(up);
        }
        return up >= 0 ? tree.height(up) : Math.max(CLEAR, tree.height(last));
    }

    private static double level(double contrast) {
        return Math.log(contrast + JUST_SEEN);
    }

    /** The node at a place of the slider: 0 the patch alone, 0.5 where it stands out most, 1 all it connects to. */
    int node(double tolerance) {
        double bottom = level(0);
        double at = tolerance <= 0.5
                ? bottom + 2 * tolerance * (middle - bottom)
                : middle + (2 * tolerance - 1) * (top - middle);
        return tree.ancestor(patch, Math.exp(at) - JUST_SEEN + ROUNDING);
    }
}
