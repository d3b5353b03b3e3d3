package loamline.season.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whether bags hold enough, and if not, a rule that they break and that every sufficient number of bags keeps.
 *
 * <p>The question is a linear program: by how many bags of each material at once is too little there? Solved is its dual,
 * whose columns are a price for a kilogram of each material and for each limit, because its solution is the rule: at those
 * prices no way of treating the plots costs less than {@link Cover#least} (Benders 1962, Numerische Mathematik 4:238-252).
 */
final class Shortage {
    /** Too little by less than this many bags is rounding. */
    static final double ROUNDING_BAGS = 1e-7;

    /**
     * A weight on a plot: what its limits and its material must cost it.
     *
     * @param limits positions of the limits' prices
     */
    private record Weight(int material, List<Integer> limits, List<Double> shares) {}

    private final Blend blend;
    /** What each limit's price counts in the sum; the prices of materials come first and count by the bags. */
    private final List<Double> worths = new ArrayList<>();

    private final List<Weight> weights = new ArrayList<>();

    Shortage(Blend blend) {
        this.blend = blend;
        blend.materials().forEach(m -> worths.add(0.0));
        blend.plots().forEach(plot -> add(PlotRows.together(plot, blend.materials())));
    }

    private void add(PlotRows plot) {
        List<Weight> added = plot.columns().stream()
                .map(c -> new Weight(c.material(), new ArrayList<>(), new ArrayList<>()))
                .toList();
        for (PlotRows.Row row : plot.rows()) {
            if (row.hasLeast()) {
                addLimit(row, 1, row.leastKg(), added);
            }
            if (row.hasMost()) {
                addLimit(row, -1, row.mostKg(), added);
            }
        }
        weights.addAll(added);
    }

    private void addLimit(PlotRows.Row row, int sign, double kg, List<Weight> plot) {
        for (int i = 0; i < row.columns().size(); i++) {
            Weight weight = plot.get(row.columns().get(i));
            weight.limits().add(worths.size());
            weight.shares().add(sign * row.shares().get(i));
        }
        worths.add(sign * kg);
    }

    /** The rule that some bags break most; empty if they are enough. */
    Optional<Cover> of(List<Integer> bags) {
        double[] prices = solve(bags);
        weights.forEach(weight -> mend(prices, weight));
        double least = IntStream.range(0, worths.size())
                .mapToDouble(i -> worths.get(i) * prices[i])
                .sum();
        Cover cover = new Cover(
                IntStream.range(0, bags.size())
                        .mapToObj(m -> prices[m] * blend.materials().get(m).bagKg())
                        .toList(),
                least);
        return cover.of(bags) < least - ROUNDING_BAGS ? Optional.of(cover) : Optional.empty();
    }

    private double[] solve(List<Integer> bags) {
        double[] goal = worths.stream().mapToDouble(worth -> worth).toArray();
        double[][] limits = new double[weights.size() + 1][worths.size()];
        double[] most = new double[weights.size() + 1];
        most[weights.size()] = 1;
        for (int m = 0; m < bags.size(); m++) {
            double bagKg = blend.materials().get(m).bagKg();
            goal[m] = -bags.get(m) * bagKg;
            limits[weights.size()][m] = bagKg;
        }
        for (int w = 0; w < weights.size(); w++) {
            Weight weight = weights.get(w);
            limits[w][weight.material()] = -1;
            for (int i = 0; i < weight.limits().size(); i++) {
                limits[w][weight.limits().get(i)] += weight.shares().get(i);
            }
        }
        return Simplex.most(goal, limits, most)
                .orElseThrow(() -> new IllegalStateException("no number of bags is enough"));
    }

    /** Raises the price of a material that solving left too low by a little, so that the rule is sound to the last digit. */
    private static void mend(double[] prices, Weight weight) {
        double owed = 0;
        for (int i = 0; i < weight.limits().size(); i++) {
            owed += weight.shares().get(i) * prices[weight.limits().get(i)];
        }
        prices[weight.material()] = Math.max(prices[weight.material()], owed);
    }
}
