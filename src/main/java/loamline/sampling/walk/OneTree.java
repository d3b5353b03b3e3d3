package loamline.sampling.walk;

import java.util.Arrays;

/**
 * The least 1-tree: a spanning tree of the stops 1 … n − 1, and the two shortest legs at stop 0.
 *
 * <p><b>What.</b> Every closed round is a 1-tree, one with two legs at each stop, so the least 1-tree is no longer
 * than the shortest round. A price at each stop is added to all of its legs: that adds the same, twice the sum of
 * the prices, to every round, but changes which 1-tree is least. The tree grows from stop n − 1 by Prim's rule.
 *
 * <p><b>Units and shape.</b> Costs and prices in any one unit, negative ones included; n ≥ 3.
 *
 * <p><b>NaN.</b> Not looked for. With too few legs for a 1-tree the bound is infinite.
 *
 * <p><b>Ties and borders.</b> Any of several least 1-trees, always the same one.
 *
 * <p><b>Accuracy.</b> {@link #ROUNDING} of the shortest round.
 *
 * <p><b>Cost.</b> n²/2 steps and one for each leg, 3 to 6 µs for n = 73; no allocation.
 *
 * <p><b>Reference.</b> Held and Karp 1970, The traveling-salesman problem and minimum spanning trees, Operations
 * Research 18:1138-1162 (from memory).
 */
final class OneTree {
    /** Share of the shortest round by which rounding of some hundred sums may lift the bound above it. */
    static final double ROUNDING = 1e-12;

    private static final int NONE = -1;

    final int n;

    /** Added to all legs at a stop; to be set from outside, 0 at first. */
    final double[] price;

    /** Added to every bound; to be set from outside, 0 at first. */
    double offset;

    /** Legs from a stop s, places s · n on in the two arrays after: all legs from 0, none to 0. */
    private final int[] legs;

    private final int[] legTo;
    private final double[] legCost;

    private final int[] degree;
    private final int[] parent;

    /** Shortest priced leg from the tree to an open stop; minus infinity once the stop has joined. */
    private final double[] reach;

    /** The priced leg by which a stop has joined. */
    private final double[] joinedBy;

    /** The open stops, then those that have joined, the last first. */
    private final int[] queue;

    private int first = NONE;
    private int second = NONE;
    private double secondReach;
    private int grown;

    /** A tree over n stops, without legs to grow from yet. */
    OneTree(int n) {
        this.n = n;
        this.price = new double[n];
        this.legs = new int[n];
        this.legTo = new int[n * n];
        this.legCost = new double[n * n];
        this.degree = new int[n];
        this.parent = new int[n];
        this.reach = new double[n];
        this.joinedBy = new double[n];
        this.queue = new int[n - 2];
    }

    /** Takes all legs away. */
    void clearLegs() {
        Arrays.fill(legs, 0);
    }

    /** Allows a leg between two stops, i below j, which has not been allowed yet. */
    void addLeg(int i, int j, double cost) {
        addDirected(i, j, cost);
        if (i > 0) {
            addDirected(j, i, cost);
        }
    }

    private void addDirected(int from, int to, double cost) {
        int at = from * n + legs[from]++;
        legTo[at] = to;
        legCost[at] = cost;
    }

    /** Grows the least 1-tree for the legs and prices as they are, and returns the bound: no round costs less. */
    double grow() {
        grown++;
        Arrays.fill(degree, 0);
        double sum = growSpanningTree() + joinStart();
        double prices = 0;
        for (double p : price) {
            prices += p;
        }
        return sum - 2 * prices + offset;
    }

    /** Prim's rule; infinite if the stops 1 … n − 1 do not hang together. */
    private double growSpanningTree() {
        int last = n - 1;
        parent[last] = NONE;
        reach[last] = Double.NEGATIVE_INFINITY;
        for (int stop = 1; stop < last; stop++) {
            queue[stop - 1] = stop;
            reach[stop] = Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (int open = n - 2; open > 0; open--) {
            // See which stops the last one reaches by a shorter leg
            double lastPrice = price[last];
            int end = last * n + legs[last];
            for (int leg = last * n; leg < end; leg++) {
                int stop = legTo[leg];
                double priced = legCost[leg] + lastPrice + price[stop];
                if (priced < reach[stop]) {
                    reach[stop] = priced;
                    parent[stop] = last;
                }
            }
            // Find the nearest open stop
            int nearest = NONE;
            double shortest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < open; i++) {
                double priced = reach[queue[i]];
                if (priced < shortest) {
                    shortest = priced;
                    nearest = i;
                }
            }
            if (nearest == NONE) {
                return Double.POSITIVE_INFINITY;
            }
            // Join it
            last = queue[nearest];
            queue[nearest] = queue[open - 1];
            queue[open - 1] = last;
            reach[last] = Double.NEGATIVE_INFINITY;
            joinedBy[last] = shortest;
            sum += shortest;
            degree[last]++;
            degree[parent[last]]++;
        }
        return sum;
    }

    /** The two shortest legs at stop 0; infinite if it has less than two. */
    private double joinStart() {
        double shortest = Double.POSITIVE_INFINITY;
        secondReach = Double.POSITIVE_INFINITY;
        first = NONE;
        second = NONE;
        for (int leg = 0; leg < legs[0]; leg++) {
            int stop = legTo[leg];
            double priced = legCost[leg] + price[0] + price[stop];
            if (priced < shortest) {
                secondReach = shortest;
                second = first;
                shortest = priced;
                first = stop;
            } else if (priced < secondReach) {
                secondReach = priced;
                second = stop;
            }
        }
        if (second != NONE) {
            degree[0] = 2;
            degree[first]++;
            degree[second]++;
        }
        return shortest + secondReach;
    }

    /**
     * For each leg, the priced leg of the tree last grown that it would take the place of: a 1-tree with the leg is
     * longer by the difference at least.
     *
     * @param replaced n × n, row by row, symmetric; the diagonal is of no meaning
     */
    void replacedLegs(double[] replaced) {
        int root = n - 1;
        replaced[root * n + root] = Double.NEGATIVE_INFINITY;
        for (int i = n - 3; i >= 0; i--) { // in the order of joining
            int stop = queue[i];
            int parentRow = parent[stop] * n;
            replaced[stop * n + stop] = Double.NEGATIVE_INFINITY;
            for (int k = i + 1; k <= n - 2; k++) { // the longest leg on the tree's way to each that joined before
                int other = k < n - 2 ? queue[k] : root;
                double longest = Math.max(joinedBy[stop], replaced[parentRow + other]);
                replaced[stop * n + other] = longest;
                replaced[other * n + stop] = longest;
            }
        }
        for (int stop = 1; stop < n; stop++) {
            replaced[stop] = secondReach;
            replaced[stop * n] = secondReach;
        }
    }

    /** How many trees have been grown. */
    int grown() {
        return grown;
    }

    /** Number of the tree's legs at a stop. */
    int degree(int stop) {
        return degree[stop];
    }

    /** Whether the tree has a leg between two different stops. */
    boolean joins(int i, int j) {
        if (i == 0 || j == 0) {
            return i + j == first || i + j == second;
        }
        return parent[i] == j || parent[j] == i;
    }

    /** Whether the tree last grown is a closed round. */
    boolean isCycle() {
        for (int d : degree) {
            if (d != 2) {
                return false;
            }
        }
        return true;
    }

    /** The stops of the closed round that the tree is, from stop 0. */
    int[] cycle() {
        int[] cycle = new int[n];
        int before = first;
        for (int i = 1; i < n; i++) {
            int at = cycle[i - 1];
            int next = 0;
            while (next == at || next == before || !joins(at, next)) {
                next++;
            }
            before = at;
            cycle[i] = next;
        }
        return cycle;
    }
}
