package loamline.season.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.cancel.Cancellation;

/**
 * The cheapest whole numbers of bags that keep some rules: branch and bound, depth first, over linear programs (Land & Doig
 * 1960, Econometrica 28:497-520).
 *
 * <p>Rules ask for more bags, never for fewer, so rounding a linear answer up gives bags that keep them.
 */
final class Covering {
    /** Branches after which the search is given up. */
    private static final int MOST_BRANCHES = 200_000;
    /** A number this near to a whole one is whole. */
    private static final double ROUNDING = 1e-8;
    /** An answer must be cheaper by this share to count. */
    private static final double CHEAPER = 1e-9;

    private final double[] prices;
    private final List<Cover> covers;
    private final List<Integer> free;
    private Optional<List<Integer>> best = Optional.empty();
    private double bestCost = Double.POSITIVE_INFINITY;
    private int branches;

    private Covering(List<Double> prices, List<Cover> covers, List<Integer> free) {
        this.prices = prices.stream().mapToDouble(Double::doubleValue).toArray();
        this.covers = covers;
        this.free = free;
    }

    /**
     * @param prices of a bag of each material, above 0
     * @param free materials that may be bought
     * @return bags of each material; empty if no number keeps the rules
     */
    static Optional<List<Integer>> cheapest(List<Double> prices, List<Cover> covers, List<Integer> free) {
        Covering covering = new Covering(prices, covers, free);
        int[] least = new int[free.size()];
        int[] most = new int[free.size()];
        Arrays.fill(most, Integer.MAX_VALUE);
        covering.branch(least, most);
        return covering.best;
    }

    /** @param least and most bags of the free materials in this branch */
    private void branch(int[] least, int[] most) {
        Cancellation.check();
        if (++branches > MOST_BRANCHES) {
            throw new IllegalStateException("no end after " + MOST_BRANCHES + " branches");
        }
        Optional<double[]> relaxed = relaxed(least, most);
        if (relaxed.isEmpty() || cost(relaxed.get()) >= bestCost * (1 - CHEAPER)) {
            return;
        }
        double[] bags = relaxed.get();
        keep(bags, most);
        int split = mostSplit(bags);
        if (split >= 0) {
            int[] above = least.clone();
            above[split] = (int) Math.ceil(bags[split]);
            branch(above, most);
            int[] below = most.clone();
            below[split] = (int) Math.floor(bags[split]);
            branch(least, below);
        }
    }

    private double cost(double[] bags) {
        return IntStream.range(0, bags.length)
                .mapToDouble(i -> prices[free.get(i)] * bags[i])
                .sum();
    }

    private void keep(double[] relaxed, int[] most) {
        double[] up = Arrays.stream(relaxed).map(x -> Math.ceil(x - ROUNDING)).toArray();
        boolean fits = IntStream.range(0, up.length).allMatch(i -> up[i] <= most[i]);
        if (fits && cost(up) < bestCost * (1 - CHEAPER)) {
            List<Integer> all = new ArrayList<>(java.util.Collections.nCopies(prices.length, 0));
            IntStream.range(0, up.length).forEach(i -> all.set(free.get(i), (int) up[i]));
            best = Optional.of(List.copyOf(all));
            bestCost = cost(up);
        }
    }

    /** The number furthest from whole ones; -1 if all are whole. */
    private static int mostSplit(double[] bags) {
        int split = -1;
        double furthest = ROUNDING;
        for (int i = 0; i < bags.length; i++) {
            double off = Math.abs(bags[i] - Math.rint(bags[i]));
            if (off > furthest) {
                furthest = off;
                split = i;
            }
        }
        return split;
    }

    /** The cheapest numbers, whole or not, of a branch. What is more than the least of the branch is what is sought. */
    private Optional<double[]> relaxed(int[] least, int[] most) {
        LinearProgram program =
                new LinearProgram(free.stream().mapToDouble(m -> prices[m]).toArray());
        int[] all = IntStream.range(0, free.size()).toArray();
        for (Cover cover : covers) {
            double[] weights =
                    free.stream().mapToDouble(m -> cover.weights().get(m)).toArray();
            double open = cover.least();
            double scale = Arrays.stream(weights).max().orElse(0);
            for (int i = 0; i < weights.length; i++) {
                open -= weights[i] * least[i];
                weights[i] /= Math.max(scale, Double.MIN_NORMAL);
            }
            if (open > 0) {
                program.atLeast(all, weights, open / Math.max(scale, Double.MIN_NORMAL));
            }
        }
        for (int i = 0; i < least.length; i++) {
            if (most[i] < Integer.MAX_VALUE) {
                program.atMost(new int[] {i}, new double[] {1}, most[i] - least[i]);
            }
        }
        return program.least()
                .map(more -> IntStream.range(0, more.length)
                        .mapToDouble(i -> least[i] + more[i])
                        .toArray());
    }
}
