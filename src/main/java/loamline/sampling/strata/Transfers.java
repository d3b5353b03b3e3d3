package loamline.sampling.strata;

import java.util.Arrays;

/**
 * The cheapest way to pass one cell on from a stratum that has too many to one that has too few, through others if
 * need be: a shortest path over the strata, each step the cheapest cell that may change hands there.
 */
final class Transfers {
    /** Stands for "no stratum" in a path. */
    static final int NONE = -1;

    private final int k;
    private final double slack;
    private final double[] cost;
    private final int[] cell;
    private final double[] pathCost;
    private final int[] before;
    private final boolean[] shortened;

    /**
     * @param k number of strata
     * @param slack gains up to this are rounding, in the unit of the costs; keeps paths free of loops
     */
    Transfers(int k, double slack) {
        this.k = k;
        this.slack = slack;
        this.cost = new double[k * k];
        this.cell = new int[k * k];
        this.pathCost = new double[k];
        this.before = new int[k];
        this.shortened = new boolean[k];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
    }

    /** Forgets all offers. */
    void forget() {
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
    }

    /** Takes back the offer of a cell from one stratum to another; whether there was one. */
    boolean withdraw(int from, int to, int offered) {
        boolean stood = cost[from * k + to] < Double.POSITIVE_INFINITY && cell[from * k + to] == offered;
        if (stood) {
            cost[from * k + to] = Double.POSITIVE_INFINITY;
        }
        return stood;
    }

    /** Offers a cell to another stratum; the cheapest offer stands, the first of equals. */
    void offer(int from, int to, double costOfMove, int offered) {
        if (costOfMove < cost[from * k + to]) {
            cost[from * k + to] = costOfMove;
            cell[from * k + to] = offered;
        }
    }

    /**
     * Finds the cheapest path that ends where cells are missing, to be read backwards by {@link #before}.
     *
     * @param surplus cells too many (above 0) or missing (below 0) in each stratum
     * @return the stratum it ends in, or {@link #NONE} if cells are missing nowhere or cannot be brought there
     */
    int endOfCheapestPath(int[] surplus) {
        for (int j = 0; j < k; j++) {
            pathCost[j] = surplus[j] > 0 ? 0 : Double.POSITIVE_INFINITY;
            before[j] = NONE;
            shortened[j] = surplus[j] > 0;
        }
        boolean shorter = true;
        for (int steps = 1; steps < k && shorter; steps++) { // a path has fewer steps than there are strata
            shorter = shorten();
        }
        int end = NONE;
        for (int j = 0; j < k; j++) {
            if (surplus[j] < 0 && pathCost[j] < (end == NONE ? Double.POSITIVE_INFINITY : pathCost[end])) {
                end = j;
            }
        }
        return end;
    }

    /** Goes one step on from every stratum whose path became shorter; whether that shortened any. */
    private boolean shorten() {
        boolean any = false;
        for (int from = 0; from < k; from++) {
            if (shortened[from]) {
                shortened[from] = false;
                for (int to = 0; to < k; to++) {
                    double through = pathCost[from] + cost[from * k + to];
                    if (through < pathCost[to] - slack) {
                        pathCost[to] = through;
                        before[to] = from;
                        shortened[to] = true;
                        any = true;
                    }
                }
            }
        }
        return any;
    }

    /** The stratum before this one on the path found last, or {@link #NONE} at its start. */
    int before(int stratum) {
        return before[stratum];
    }

    /** The cell that passes from the stratum before. */
    int cellInto(int stratum) {
        return cell[before[stratum] * k + stratum];
    }

    /** Passes one cell along each step of the path found last. */
    void pass(int end, int[] owner, int[] surplus) {
        int at = end;
        for (; before[at] != NONE; at = before[at]) {
            owner[cellInto(at)] = at;
        }
        surplus[at]--;
        surplus[end]++;
    }
}
