package loamline.sampling.strata;

import java.util.Comparator;

/**
 * Divides ground into k compact strata of equal area.
 *
 * <p><b>What.</b> Of all divisions whose strata differ by at most one cell, one with a small mean squared distance
 * to the nearest core, cores standing at the strata's centres as {@link CorePlacement#atCentres} puts them. Seeded
 * starts are settled on coarse blocks, the best few refined on the cells, balanced exactly, and the cheapest kept;
 * then broken strata are joined where it costs little.
 *
 * <p><b>Units and shape.</b> See {@link Ground}; k from 1 to the number of cells.
 *
 * <p><b>NaN.</b> Ground has none.
 *
 * <p><b>Ties and borders.</b> Equal areas come before everything: strata differ by at most one cell. Compactness
 * comes next; a stray piece counts as one percent of the mean squared distance, so a stratum spans a gap in the
 * ground only where areas force it or the alternative is worse by more.
 *
 * <p><b>Accuracy.</b> A heuristic, no proof. On the reference shapes of the tests every seed came within {@link
 * #ACCURACY} of the best known division.
 *
 * <p><b>Cost.</b> For twelve strata on 6,000 cells some 20 ms, half of it for the starts; joining broken strata may
 * double that. Choose cells by {@link #cellSideM}: finer ones cost time and change the plan little.
 *
 * <p><b>Reference.</b> Walvoort, Brus and de Gruijter 2010, Computers and Geosciences 36:1261-1267, for compact
 * strata of equal area; {@link PowerDiagram} and {@link ExactBalance} name the mathematics.
 */
public final class EqualAreaStrata {
    /** How much the mean squared distance may exceed the best known, as a share (held by the tests). */
    static final double ACCURACY = 0.01;

    /** Cells of a zone that make strata smooth and cheap: five hundred for each of twelve. Own choice, no source. */
    private static final int USUAL_CELLS = 6000;

    /** Cells of a stratum at least, where the caller leaves the choice to {@link #cellSideM}: area CV below 0.005. */
    private static final int LEAST_CELLS_PER_STRATUM = 100;

    /** Blocks that starts work on: fewer rank them wrongly (measured on notched ground). */
    private static final int BLOCKS = 500;

    private static final int BLOCKS_PER_STRATUM = 40;

    /** If one start in ten is within one percent of the best, forty find one in 98.5 % of cases: 1 - 0.9^40. */
    private static final int MOST_STARTS = 40;

    /** Many strata average out: the more there are, the less starts differ and the more each costs (measured). */
    private static final int STRATA_STARTED = 600;

    private static final int LEAST_STARTS = 8;

    /** Starts taken further: blocks may rank the best two or three wrongly. */
    private static final int FINALISTS = 3;

    /** Sweeps over the cells from a start settled on blocks; what area is left over, the exact balance moves. */
    private static final int FINE_SWEEPS = 6;

    private EqualAreaStrata() {}

    /**
     * The side of cells that suits a zone: about 6,000 cells, more for more than 60 strata.
     *
     * @param areaM2 area of the eligible ground, m², above 0
     * @param k number of strata, 1 or more
     */
    public static double cellSideM(double areaM2, int k) {
        return Math.sqrt(areaM2 / Math.max(USUAL_CELLS, LEAST_CELLS_PER_STRATUM * k));
    }

    /**
     * Divides ground.
     *
     * @param k number of strata
     * @param seed the same seed gives the same strata
     * @throws IllegalArgumentException if k is below 1 or above the number of cells
     */
    public static Strata divide(Ground ground, int k, long seed) {
        if (k < 1 || k > ground.size()) {
            throw new IllegalArgumentException("k must be 1 to the number of cells, " + ground.size() + ": got " + k);
        }
        double cellsPerBlock = (double) ground.size() / Math.max(BLOCKS, BLOCKS_PER_STRATUM * k);
        int blockSide = (int) Math.max(1, Math.rint(Math.sqrt(cellsPerBlock)));
        int starts = Math.max(LEAST_STARTS, Math.min(MOST_STARTS, STRATA_STARTED / k));
        WeightedPoints cells = WeightedPoints.cellsOf(ground);
        return new Starts(WeightedPoints.blocksOf(ground, blockSide), k)
                .best(starts, FINALISTS, seed).stream()
                        .map(start -> refined(ground, cells, start))
                        .min(Comparator.comparingDouble(Repair::cost))
                        .map(Repair::join)
                        .orElseThrow();
    }

    private static Strata refined(Ground ground, WeightedPoints cells, PowerDiagram start) {
        start.settle(cells, FINE_SWEEPS);
        return new Strata(ground, start.size(), ExactBalance.of(cells, start));
    }
}
