package loamline.sampling.walk;

import java.util.Arrays;
import loamline.cancel.Cancellation;

/**
 * Raises the bound of a {@link OneTree} by changing its prices.
 *
 * <p><b>What.</b> Subgradient steps: stops with more than two legs get dearer, ends get cheaper. A step aims at the
 * target and is shortened when the bound has not gained for a while; the last step keeps a share in the next.
 *
 * <p><b>Units and shape.</b> Those of the tree.
 *
 * <p><b>NaN.</b> Not looked for.
 *
 * <p><b>Ties and borders.</b> Ends at once when the bound reaches the target or the tree is a closed round, for then
 * the bound is its length and cannot be raised.
 *
 * <p><b>Accuracy.</b> At the most the Held-Karp bound, some 0.7 % below the shortest round for scattered stops; a few
 * hundred steps come near to it.
 *
 * <p><b>Cost.</b> One tree a step; no allocation.
 *
 * <p><b>Reference.</b> Held, Wolfe and Crowder 1974, Validation of subgradient optimization, Mathematical Programming
 * 6:62-88; the share kept: Volgenant and Jonker 1982, A branch and bound algorithm for the symmetric traveling
 * salesman problem based on the 1-tree relaxation, European Journal of Operational Research 9:83-89 (both from
 * memory).
 */
final class Ascent {
    /** First stride, as a share of the step that would reach the target if the bound were linear: the usual 2. */
    private static final double FIRST_STRIDE = 2;

    private static final double LAST_STRIDE = 1e-3;

    /** A bound has gained if it closes this share of the gap to the target. */
    private static final double GAIN = 1e-4;

    /** Share of a step that points where the step before did; 0.3 by Volgenant and Jonker. */
    private static final double MOMENTUM = 0.3;

    private final OneTree tree;
    private final double[] bestPrice;
    private final int[] lastExcess;

    Ascent(OneTree tree) {
        this.tree = tree;
        this.bestPrice = new double[tree.n];
        this.lastExcess = new int[tree.n];
    }

    /**
     * Climbs from the tree's prices, leaves those of the best bound in it, and returns that bound.
     *
     * @param target length that need not be exceeded, that of a known round
     * @param mostSteps cap of the number of trees grown
     * @param patience steps without gain after which the stride is halved
     */
    double climb(double target, int mostSteps, int patience) {
        Arrays.fill(lastExcess, 0);
        double best = Double.NEGATIVE_INFINITY;
        double stride = FIRST_STRIDE;
        int stale = 0;
        for (int i = 0; i < mostSteps && stride > LAST_STRIDE; i++) {
            Cancellation.check();
            double bound = tree.grow();
            stale = bound - best > GAIN * (target - bound) ? 0 : stale + 1;
            if (bound > best) {
                best = bound;
                System.arraycopy(tree.price, 0, bestPrice, 0, tree.n);
            }
            if (bound >= target || tree.isCycle()) {
                break;
            }
            if (stale >= patience) {
                stride /= 2;
                stale = 0;
            }
            step(stride * (target - bound));
        }
        System.arraycopy(bestPrice, 0, tree.price, 0, tree.n);
        return best;
    }

    private void step(double rise) {
        double steepness = 0;
        for (int stop = 0; stop < tree.n; stop++) {
            int excess = tree.degree(stop) - 2;
            steepness += excess * excess;
        }
        for (int stop = 0; stop < tree.n; stop++) {
            int excess = tree.degree(stop) - 2;
            tree.price[stop] += rise / steepness * ((1 - MOMENTUM) * excess + MOMENTUM * lastExcess[stop]);
            lastExcess[stop] = excess;
        }
    }
}
