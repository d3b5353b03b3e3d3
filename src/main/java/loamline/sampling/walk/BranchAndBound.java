package loamline.sampling.walk;

import java.util.Comparator;
import java.util.PriorityQueue;
import loamline.cancel.Cancellation;

/**
 * Proves a round shortest, or finds a shorter one, or at least says how much shorter any could be.
 *
 * <p><b>What.</b> The bound of all rounds is raised by {@link Ascent}. While it is below the best round known, the
 * set of rounds with the least bound is split in two, by a leg that its 1-tree has at a stop with too many: the
 * rounds without that leg, and those with it. A part whose bound reaches the best round is dropped; the least bound
 * of the others holds for all rounds. Legs that would lift a part's bound to the best round are left out of it, which
 * leaves few and makes its trees quick to grow.
 *
 * <p><b>Units and shape.</b> Distances in m; 3 stops or more.
 *
 * <p><b>NaN.</b> {@link DistanceMatrix} has none.
 *
 * <p><b>Ties and borders.</b> The given round is kept unless a shorter one turns up. Split at the stop with the
 * fewest legs above two, lowest number first, by its longest leg that is still open, prices included.
 *
 * <p><b>Accuracy.</b> Ends when the bound is within {@link Tour#PROOF} of the best round; the bound is good to
 * {@link OneTree#ROUNDING}.
 *
 * <p><b>Cost.</b> At most {@value #MOST_WORK} / n² trees, or {@value #ROOT_STEPS} if that is more: 200 ms, 20 MB
 * for 73 stops. Scattered, they take 45 ms on average (measured).
 *
 * <p><b>Reference.</b> Held and Karp 1971, The traveling-salesman problem and minimum spanning trees: part II,
 * Mathematical Programming 1:6-25; Volgenant and Jonker 1982, as in {@link Ascent} (both from memory).
 */
final class BranchAndBound {
    /** Steps and patience for all rounds, from no prices: more gain nothing for 73 stops (measured). */
    private static final int ROOT_STEPS = 1000;

    private static final int ROOT_PATIENCE = 20;

    /** Steps and patience for a part, which starts from the prices of the whole: least time of those tried. */
    private static final int PART_STEPS = 25;

    private static final int PART_PATIENCE = 5;

    /** Cap of trees grown times n²: 30,000 trees for 73 stops. */
    private static final long MOST_WORK = 160_000_000;

    private final double[] distances;
    private final OneTree tree;
    private final Ascent ascent;
    private final DistanceMatrix matrix;
    private final PriorityQueue<Subproblem> parts = new PriorityQueue<>(Comparator.comparingDouble(Subproblem::bound));
    private final double discount;
    private final double[] replaced;
    private int[] best;
    private double bestLength;

    private BranchAndBound(DistanceMatrix matrix, int[] cycle) {
        this.matrix = matrix;
        this.distances = matrix.toRowMajor();
        this.tree = new OneTree(matrix.size());
        this.ascent = new Ascent(tree);
        this.replaced = new double[distances.length];
        this.best = cycle;
        this.bestLength = Tour.lengthM(matrix, cycle);
        this.discount = bestLength;
    }

    /** The given cycle as a tour with a lower bound; or a shorter tour, if the proof comes upon one. */
    static Tour prove(DistanceMatrix matrix, int[] cycle) {
        BranchAndBound search = new BranchAndBound(matrix, cycle);
        double lowerBound = search.run();
        return Tour.along(matrix, search.best, lowerBound);
    }

    private double run() {
        long mostTrees = MOST_WORK / ((long) tree.n * tree.n);
        bound(Subproblem.all(tree.n), ROOT_STEPS, ROOT_PATIENCE);
        while (!parts.isEmpty()) {
            Cancellation.check();
            Subproblem weakest = parts.remove();
            if (weakest.bound() * (1 + Tour.PROOF) >= bestLength || tree.grown() >= mostTrees) {
                return weakest.bound();
            }
            split(weakest);
        }
        return bestLength;
    }

    private void split(Subproblem whole) {
        whole.writeTo(tree, distances, discount);
        double bound = tree.grow();
        whole.leaveOutHopeless(tree, distances, replaced, bestLength - bound);
        int stop = crowdedStop();
        int other = longestOpenLeg(whole, stop);
        bound(whole.without(stop, other), PART_STEPS, PART_PATIENCE);
        bound(whole.with(stop, other), PART_STEPS, PART_PATIENCE);
    }

    /** Raises the bound of a part, and drops it if no round in it can be shorter than the best. */
    private void bound(Subproblem part, int mostSteps, int patience) {
        part.writeTo(tree, distances, discount);
        part.raise(ascent.climb(bestLength, mostSteps, patience), tree);
        keepIfShorter();
        if (part.bound() < bestLength) {
            parts.add(part);
        }
    }

    private void keepIfShorter() {
        if (tree.isCycle()) {
            int[] cycle = tree.cycle();
            double length = Tour.lengthM(matrix, cycle);
            if (length < bestLength) {
                best = cycle;
                bestLength = length;
            }
        }
    }

    /** The stop with the fewest legs in the tree, but more than two. */
    private int crowdedStop() {
        int crowded = 0; // has two
        for (int stop = 1; stop < tree.n; stop++) {
            int degree = tree.degree(stop);
            if (degree > 2 && (crowded == 0 || degree < tree.degree(crowded))) {
                crowded = stop;
            }
        }
        return crowded;
    }

    /** Where the longest leg of the tree at a stop leads that is neither required nor left out. */
    private int longestOpenLeg(Subproblem whole, int stop) {
        int longest = stop;
        double length = Double.NEGATIVE_INFINITY;
        for (int other = 0; other < tree.n; other++) {
            double priced = distances[stop * tree.n + other] + tree.price[other];
            if (other != stop && tree.joins(stop, other) && whole.isOpen(stop, other) && priced > length) {
                longest = other;
                length = priced;
            }
        }
        return longest;
    }
}
