package loamline.season.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest columns of 0 or more that keep some limits, where no column has a price below 0.
 *
 * <p>Solved through its dual, which has a start without searching for one: see {@link Simplex}. The columns keep the limits
 * to {@link Simplex#ROUNDING}.
 */
final class LinearProgram {
    private final double[] prices;
    private final List<double[]> rows = new ArrayList<>();
    private final List<Double> leasts = new ArrayList<>();

    /** @param prices of a unit of each column, 0 or more */
    LinearProgram(double[] prices) {
        this.prices = prices.clone();
    }

    /** At least so much of some columns, each by its factor. */
    void atLeast(int[] columns, double[] factors, double least) {
        add(columns, factors, 1, least);
    }

    /** At most so much. */
    void atMost(int[] columns, double[] factors, double most) {
        add(columns, factors, -1, most);
    }

    /** The limits of a plot whose columns begin at a position. */
    void add(PlotRows plot, int first) {
        for (PlotRows.Row row : plot.rows()) {
            int[] columns = row.columns().stream().mapToInt(c -> c + first).toArray();
            double[] shares = row.shares().stream().mapToDouble(s -> s).toArray();
            if (row.hasLeast()) {
                atLeast(columns, shares, row.leastKg());
            }
            if (row.hasMost()) {
                atMost(columns, shares, row.mostKg());
            }
        }
    }

    private void add(int[] columns, double[] factors, int sign, double limit) {
        double[] row = new double[prices.length];
        for (int i = 0; i < columns.length; i++) {
            row[columns[i]] += sign * factors[i];
        }
        rows.add(row);
        leasts.add(sign * limit);
    }

    /** The columns; empty if nothing keeps all limits. */
    Optional<double[]> least() {
        int count = rows.size();
        double[][] turned = new double[prices.length][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < prices.length; j++) {
                turned[j][i] = rows.get(i)[j];
            }
        }
        double[] goal = leasts.stream().mapToDouble(least -> least).toArray();
        return Simplex.most(goal, turned, prices).map(both -> Arrays.copyOfRange(both, count, both.length));
    }
}
