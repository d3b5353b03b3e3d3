package loamline.sampling.strata;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import loamline.cancel.Cancellation;

/**
 * Makes the cells of a power diagram equal, at the least cost.
 *
 * <p><b>What.</b> Cells pass along shortest paths between strata until all sizes differ by at most one. A power
 * diagram is the cheapest assignment for the sizes it has, and shortest paths keep it so: the outcome is the
 * cheapest assignment with equal sizes for these generators (successive shortest paths for the transport problem).
 *
 * <p><b>Units and shape.</b> Places in cells; n cells, k generators, n ≥ k.
 *
 * <p><b>NaN.</b> Not looked for; the ground has none.
 *
 * <p><b>Ties and borders.</b> If k does not divide n, the strata that are largest beforehand keep one cell more; the
 * lower index first.
 *
 * <p><b>Accuracy.</b> Sizes are exact; the cost is least to {@link #SLACK} of the squared extent a step.
 *
 * <p><b>Cost.</b> n · k to begin with; then for each cell out of balance one pass over the cells for each step of its
 * path, and a path search of at most k² a round. Nothing allocated in it.
 *
 * <p><b>Reference.</b> Ahuja, Magnanti and Orlin 1993, Network Flows, section 9.7 (from memory).
 */
final class ExactBalance {
    /** Rounding in a difference of squared distances, as a share of the squared extent: some thousand ulps. */
    static final double SLACK = 1e-12;

    private final WeightedPoints cells;
    private final PowerDiagram diagram;
    private final int[] owner;
    private final Transfers transfers;
    private final int[] wanting;

    private ExactBalance(WeightedPoints cells, PowerDiagram diagram, int[] owner) {
        this.cells = cells;
        this.diagram = diagram;
        this.owner = owner;
        this.wanting = new int[diagram.size()];
        double width = Arrays.stream(cells.x).max().orElse(0);
        double height = Arrays.stream(cells.y).max().orElse(0);
        this.transfers = new Transfers(diagram.size(), SLACK * (1 + width * width + height * height));
    }

    /** The owner of each cell in a balanced assignment to the diagram's generators. */
    static int[] of(WeightedPoints cells, PowerDiagram diagram) {
        int[] owner = new int[cells.size()];
        diagram.assign(cells, owner);
        new ExactBalance(cells, diagram, owner).balance();
        return owner;
    }

    private void balance() {
        int[] surplus = surplus(sizes(owner, diagram.size()), owner.length);
        for (int i = 0; i < owner.length; i++) {
            offerToAll(i);
        }
        int end = transfers.endOfCheapestPath(surplus);
        while (end != Transfers.NONE) { // each round takes one cell off the imbalance
            Cancellation.check();
            transfers.pass(end, owner, surplus);
            renewOffers(end);
            end = transfers.endOfCheapestPath(surplus);
        }
    }

    /** Brings offers up to date after cells passed along a path: those that stood for a cell now gone, and its own. */
    private void renewOffers(int end) {
        for (int at = end; transfers.before(at) != Transfers.NONE; at = transfers.before(at)) {
            int gone = transfers.cellInto(at);
            offerInPlaceOf(gone, transfers.before(at));
            offerToAll(gone);
        }
    }

    static int[] sizes(int[] owner, int k) {
        int[] size = new int[k];
        for (int j : owner) {
            size[j]++;
        }
        return size;
    }

    private static int[] surplus(int[] size, int n) {
        int[] surplus = new int[size.length];
        int[] largestFirst = IntStream.range(0, size.length)
                .boxed()
                .sorted(Comparator.comparing(j -> -size[j]))
                .mapToInt(j -> j)
                .toArray();
        for (int rank = 0; rank < size.length; rank++) {
            int j = largestFirst[rank];
            surplus[j] = size[j] - n / size.length - (rank < n % size.length ? 1 : 0);
        }
        return surplus;
    }

    private void offerToAll(int cell) {
        double here = squaredDistance(cell, owner[cell]);
        for (int to = 0; to < diagram.size(); to++) {
            if (to != owner[cell]) {
                transfers.offer(owner[cell], to, squaredDistance(cell, to) - here, cell);
            }
        }
    }

    /** Finds the next best cell of a stratum wherever it offered the one that is gone. */
    private void offerInPlaceOf(int gone, int from) {
        int count = 0;
        for (int to = 0; to < diagram.size(); to++) {
            if (transfers.withdraw(from, to, gone)) {
                wanting[count++] = to;
            }
        }
        for (int i = 0; i < owner.length; i++) {
            if (owner[i] == from) {
                double here = squaredDistance(i, from);
                for (int w = 0; w < count; w++) {
                    transfers.offer(from, wanting[w], squaredDistance(i, wanting[w]) - here, i);
                }
            }
        }
    }

    private double squaredDistance(int cell, int generator) {
        double dx = cells.x[cell] - diagram.x[generator];
        double dy = cells.y[cell] - diagram.y[generator];
        return dx * dx + dy * dy;
    }
}
