package loamline.sampling.strata;

import java.util.SplittableRandom;

/**
 * Puts one core in each stratum.
 *
 * <p>No two cores come closer than {@link Strata#CLEARANCE} of the mean stratum's radius while their strata have a
 * place that far from the others; failing that, the farthest place looked at is taken.
 */
public final class CorePlacement {
    /** Draws for one random core; a neighbour's core bars at most a small part of a stratum, so one or two do. */
    private static final int MOST_DRAWS = 100;

    /** How far a core keeps inside its cell, in cells: far above rounding in metres, far below what a probe can do. */
    private static final double INSET = 1e-6;

    private final Strata strata;
    private final double clearance;
    private final double[] x;
    private final double[] y;
    private final Spots taken;

    private CorePlacement(Strata strata) {
        this.strata = strata;
        this.clearance = Strata.CLEARANCE * strata.meanRadius();
        this.x = new double[strata.count()];
        this.y = new double[strata.count()];
        this.taken = new Spots(strata.count());
    }

    /**
     * Cores at the strata's centres of gravity. Where a centre lies off its stratum (a bend, a hole, two parts), or
     * too close to a core placed before, the core takes the middle of the stratum's nearest cell that is far enough
     * from the others.
     */
    public static Cores atCentres(Strata strata) {
        CorePlacement placement = new CorePlacement(strata);
        boolean[] placed = new boolean[strata.count()];
        for (int s = 0; s < placed.length; s++) {
            placed[s] = placement.putAtCentre(s);
        }
        for (int s = 0; s < placed.length; s++) {
            if (!placed[s]) {
                placement.putNearCentre(s);
            }
        }
        return new Cores(strata, placement.x, placement.y);
    }

    /**
     * A random core in each stratum, evenly over its cells and within the cell, drawn again while it is too close to
     * a core placed before. The drawing again makes cores of neighbours a little less than independent; it bars
     * pairs that would be as good as one core.
     */
    public static Cores atRandom(Strata strata, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        CorePlacement placement = new CorePlacement(strata);
        for (int s = 0; s < strata.count(); s++) {
            placement.putAtRandom(s, random);
        }
        return new Cores(strata, placement.x, placement.y);
    }

    private void put(int stratum, double atX, double atY) {
        x[stratum] = atX;
        y[stratum] = atY;
        taken.add(atX, atY);
    }

    /** A place in cells, kept off the lines between them: there, rounding in metres could carry it to the next cell. */
    private static double offTheLines(double at) {
        double middle = Math.floor(at + 0.5);
        return middle + Math.max(INSET - 0.5, Math.min(0.5 - INSET, at - middle));
    }

    private boolean putAtCentre(int stratum) {
        double cx = offTheLines(strata.centreX(stratum));
        double cy = offTheLines(strata.centreY(stratum));
        int cell = strata.ground().cellCovering(cx, cy);
        boolean fits = cell != Ground.NONE && strata.stratumOf(cell) == stratum && taken.distance(cx, cy) >= clearance;
        if (fits) {
            put(stratum, cx, cy);
        }
        return fits;
    }

    private void putNearCentre(int stratum) {
        Ground ground = strata.ground();
        int best = Ground.NONE;
        double bestRoom = 0;
        double bestOff = 0;
        for (int cell : strata.cellsIn(stratum)) {
            double room = Math.min(clearance, taken.distance(ground.column(cell), ground.row(cell)));
            double off = Math.hypot(
                    ground.column(cell) - strata.centreX(stratum), ground.row(cell) - strata.centreY(stratum));
            if (best == Ground.NONE || room > bestRoom || (room == bestRoom && off < bestOff)) {
                best = cell;
                bestRoom = room;
                bestOff = off;
            }
        }
        put(stratum, ground.column(best), ground.row(best));
    }

    private void putAtRandom(int stratum, SplittableRandom random) {
        int[] cells = strata.cellsIn(stratum);
        double bestX = 0;
        double bestY = 0;
        double bestRoom = -1;
        for (int draw = 0; draw < MOST_DRAWS && bestRoom < clearance; draw++) {
            int cell = cells[random.nextInt(cells.length)];
            double atX = offTheLines(strata.ground().column(cell) + random.nextDouble() - 0.5);
            double atY = offTheLines(strata.ground().row(cell) + random.nextDouble() - 0.5);
            double room = taken.distance(atX, atY);
            if (room > bestRoom) {
                bestX = atX;
                bestY = atY;
                bestRoom = room;
            }
        }
        put(stratum, bestX, bestY);
    }
}
