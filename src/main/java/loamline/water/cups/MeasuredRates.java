package loamline.water.cups;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.Spacing;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.water.HeadPattern;

/**
 * The rate between the cups: what the heads as found throw, corrected by what the cups near by caught over or under it.
 *
 * <p>A place has a rate only as far as readings carry: where the nearest cup is no farther than {@code reachM}, the
 * usual distance from a cup to its neighbour.
 *
 * @param mmH mm/h, 0 or more; NaN where no reading carries, and off the turf
 * @param reachM how far a reading carries, m
 */
public record MeasuredRates(Grid mmH, double reachM) {
    /** Side of a cell, m: finer than cups are set. */
    private static final double CELL_M = 0.1;

    /** Cups that stand kilometres apart are a mistake; they must not cost memory. */
    private static final double MOST_CELLS_A_SIDE = 500;

    /** With fewer cups there is no distance to a neighbour that means anything. */
    private static final int LEAST_CUPS = 3;

    /**
     * Interpolates; empty with fewer than three cups, or all in one place.
     *
     * @param found heads as the cups have them
     * @param turf where rates are wanted
     */
    static Optional<MeasuredRates> of(List<Cup> cups, List<HeadPattern> found, Region turf) {
        List<Point> at = cups.stream().map(Cup::at).toList();
        double reachM = Spacing.usualGapM(at);
        if (at.size() < LEAST_CUPS || reachM == 0) {
            return Optional.empty();
        }
        Box box = Box.around(at.stream()).orElseThrow().grown(reachM);
        double longestM = Math.max(box.widthM(), box.heightM());
        GridSpec grid = GridSpec.covering(box, Math.max(CELL_M, longestM / MOST_CELLS_A_SIDE));
        double[] rest = cups.stream()
                .mapToDouble(cup -> cup.rateMmH() - thrown(found, cup.at()))
                .toArray();
        Mask mask = Mask.of(grid, turf);
        return Optional.of(new MeasuredRates(
                Grid.of(grid, rates -> {
                    interpolate(grid, at, rest, reachM, rates);
                    for (int cell = 0; cell < rates.length; cell++) {
                        double thrown = mask.has(cell) ? thrown(found, grid.centre(cell)) : Double.NaN;
                        rates[cell] = Math.max(0, thrown + rates[cell]);
                    }
                }),
                reachM));
    }

    private static double thrown(List<HeadPattern> heads, Point p) {
        return heads.stream().mapToDouble(head -> head.rateMmH(p.x(), p.y())).sum();
    }

    /**
     * Values between points.
     *
     * <p><b>What:</b> the mean of the values within twice the reach, weighted by 1 / distance².
     *
     * <p><b>Units and shape:</b> metres; {@code out} has a value a cell of the grid.
     *
     * <p><b>NaN:</b> out where no point is within reach; must not occur in values.
     *
     * <p><b>Ties and borders:</b> within {@link #AT_M} of a point its value is taken as it is; a point exactly at the
     * reach carries.
     *
     * <p><b>Accuracy:</b> that of doubles.
     *
     * <p><b>Cost:</b> cells · points.
     *
     * <p><b>Reference:</b> Shepard 1968, Proceedings of the 23rd ACM National Conference, 517-524.
     */
    static void interpolate(GridSpec grid, List<Point> at, double[] values, double reachM, double[] out) {
        Arrays.fill(out, Double.NaN);
        for (int cell = 0; cell < out.length; cell++) {
            double x = grid.xOf(cell % grid.columns());
            double y = grid.yOf(cell / grid.columns());
            double sum = 0;
            double weights = 0;
            double nearest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < values.length; i++) {
                double distance =
                        Math.max(AT_M, Math.hypot(at.get(i).x() - x, at.get(i).y() - y));
                nearest = Math.min(nearest, distance);
                if (distance <= 2 * reachM) {
                    sum += values[i] / (distance * distance);
                    weights += 1 / (distance * distance);
                }
            }
            if (nearest <= reachM) {
                out[cell] = sum / weights;
            }
        }
    }

    /** Nearer than this is the same place, m. */
    static final double AT_M = 1e-6;
}
