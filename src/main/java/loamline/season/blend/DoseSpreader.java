package loamline.season.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import loamline.cancel.Cancellation;

/**
 * Lays bags that were decided on out: first over the plots, by weight alone, then on each plot over its dates, as near as can
 * be to the nitrogen that the calendar wants and with few rounds of the spreader.
 *
 * <p>Rounds are made few by solving again a few times with a price on each material at each date that is the higher the less
 * of it is used (reweighted l1, Candès, Wakin & Boyd 2008, Journal of Fourier Analysis and Applications 14:877-905).
 */
public final class DoseSpreader {
    private static final int ROUNDS = 3;
    /** Price of a kilogram beside that of a kilogram of nitrogen off the calendar; small, so that the calendar leads. */
    private static final double PRICE = 0.02;
    /** Weight on all plots at which a round is worth its trouble, kg. */
    private static final double A_ROUND_KG = 1;
    /** Less than this is rounding of the solver, kg. */
    private static final double NOTHING_KG = 1e-6;

    private final Blend blend;
    private final List<Integer> bags;
    private final List<PlotRows> plots;

    private DoseSpreader(Blend blend, List<Integer> bags) {
        this.blend = blend;
        this.bags = bags;
        this.plots = blend.plots().stream()
                .map(plot -> PlotRows.apart(plot, blend.materials()))
                .toList();
    }

    /** @param bags that are enough, as {@link BagSolver} gives them */
    public static BagPlan spread(Blend blend, List<Integer> bags) {
        return new DoseSpreader(blend, bags).spread();
    }

    private BagPlan spread() {
        List<double[]> shares = shares();
        List<BagPlan.Dose> doses = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            Map<List<Long>, Double> used = used(doses);
            List<BagPlan.Dose> next = new ArrayList<>();
            for (int p = 0; p < plots.size(); p++) {
                Cancellation.check();
                next.addAll(dates(p, shares.get(p), used));
            }
            doses = next;
        }
        return new BagPlan(bags, doses);
    }

    /** Weight of each material that each plot may use, kg. */
    private List<double[]> shares() {
        List<PlotRows> whole = blend.plots().stream()
                .map(plot -> PlotRows.together(plot, blend.materials()))
                .toList();
        int count = whole.stream().mapToInt(plot -> plot.columns().size()).sum();
        double[] costs = new double[count];
        Arrays.fill(costs, 1);
        LinearProgram program = new LinearProgram(costs);
        int first = 0;
        for (PlotRows plot : whole) {
            program.add(plot, first);
            first += plot.columns().size();
        }
        List<Integer> materials = whole.stream()
                .flatMap(plot -> plot.columns().stream())
                .map(PlotRows.Column::material)
                .toList();
        for (int m = 0; m < bags.size(); m++) {
            atMost(
                    program,
                    positions(materials, m),
                    bags.get(m) * blend.materials().get(m).bagKg());
        }
        double[] kg = program.least().orElseThrow(() -> new IllegalStateException("the bags are not enough"));
        return perPlot(whole, kg);
    }

    private List<double[]> perPlot(List<PlotRows> whole, double[] kg) {
        List<double[]> shares = new ArrayList<>();
        int at = 0;
        for (PlotRows plot : whole) {
            double[] share = new double[bags.size()];
            for (PlotRows.Column column : plot.columns()) {
                share[column.material()] += kg[at];
                at++;
            }
            shares.add(share);
        }
        return shares;
    }

    private static int[] positions(List<Integer> materials, int material) {
        return IntStream.range(0, materials.size())
                .filter(c -> materials.get(c) == material)
                .toArray();
    }

    private static void atMost(LinearProgram program, int[] columns, double most) {
        double[] ones = new double[columns.length];
        Arrays.fill(ones, 1);
        if (columns.length > 0) {
            program.atMost(columns, ones, most);
        }
    }

    /** What is used of each material on each day, kg. */
    private Map<List<Long>, Double> used(List<BagPlan.Dose> doses) {
        Map<List<Long>, Double> used = new HashMap<>();
        doses.forEach(dose -> used.merge(round(dose.plot(), dose.slot(), dose.material()), dose.kg(), Double::sum));
        return used;
    }

    private List<Long> round(int plot, int slot, int material) {
        return List.of(blend.plots().get(plot).slots().get(slot).date().toEpochDay(), (long) material);
    }

    private List<BagPlan.Dose> dates(int p, double[] share, Map<List<Long>, Double> used) {
        Plot plot = blend.plots().get(p);
        List<PlotRows.Column> columns = plots.get(p).columns();
        int count = columns.size();
        double[] costs = new double[count + 2 * plot.slots().size()];
        for (int c = 0; c < count; c++) {
            double before = used.getOrDefault(
                    round(p, columns.get(c).slots().get(0), columns.get(c).material()), 0.0);
            costs[c] = PRICE * A_ROUND_KG / (A_ROUND_KG + before);
        }
        Arrays.fill(costs, count, costs.length, 1);
        LinearProgram program = new LinearProgram(costs);
        program.add(plots.get(p), 0);
        List<Integer> materials =
                columns.stream().map(PlotRows.Column::material).toList();
        for (int m = 0; m < bags.size(); m++) {
            atMost(program, positions(materials, m), share[m]);
        }
        for (int s = 0; s < plot.slots().size(); s++) {
            offCalendar(program, p, s, count + 2 * s);
        }
        return doses(p, program.least().orElseThrow(() -> new IllegalStateException("the shares are not enough")));
    }

    /** Makes the nitrogen that is over or under what the calendar wants two columns, kg. */
    private void offCalendar(LinearProgram program, int p, int s, int over) {
        List<PlotRows.Column> columns = plots.get(p).columns();
        int[] dose = IntStream.range(0, columns.size())
                .filter(c -> columns.get(c).slots().get(0) == s)
                .toArray();
        int[] all = IntStream.concat(Arrays.stream(dose), IntStream.of(over, over + 1))
                .toArray();
        double[] n = Arrays.stream(all)
                .mapToDouble(c -> c == over
                        ? -1
                        : c == over + 1
                                ? 1
                                : blend.materials()
                                        .get(columns.get(c).material())
                                        .of(Quantity.N))
                .toArray();
        double wanted =
                blend.plots().get(p).kg(blend.plots().get(p).slots().get(s).wantedNGM2());
        program.atMost(all, n, wanted);
        program.atLeast(all, n, wanted);
    }

    private List<BagPlan.Dose> doses(int p, double[] kg) {
        List<BagPlan.Dose> doses = new ArrayList<>();
        for (int c = 0; c < plots.get(p).columns().size(); c++) {
            if (kg[c] > NOTHING_KG) {
                PlotRows.Column column = plots.get(p).columns().get(c);
                doses.add(new BagPlan.Dose(p, column.slots().get(0), column.material(), kg[c]));
            }
        }
        return doses;
    }
}
