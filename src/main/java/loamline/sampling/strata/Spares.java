package loamline.sampling.strata;

import java.util.ArrayList;
import java.util.List;

/**
 * Chooses spares: in each stratum the cell that lies farthest from all cores, from the spares chosen before, and
 * from the stratum's border, whichever is nearest.
 */
public final class Spares {
    /**
     * How much a metre to the border counts beside a metre to a core: in a disc of radius r with its core in the
     * middle, spares then stand at 2/3 r, outside the clearance of 1/2 r. Own choice, no source.
     */
    private static final double BORDER_WEIGHT = 2;

    private final Strata strata;
    private final Spots taken;
    private final Spots cores;

    private Spares(Cores cores, int perStratum) {
        this.strata = cores.strata();
        this.cores = cores.spots(0);
        this.taken = cores.spots(perStratum * strata.count());
    }

    /**
     * Spares in order of choice: the first of every stratum, then the second of every stratum, and so on. A stratum
     * goes without where none of its free cells keeps {@link Strata#CLEARANCE} of the mean stratum's radius from
     * every core, as in a stratum of one cell. The same cores give the same spares.
     *
     * @param perStratum how many in each stratum, 0 or more
     * @throws IllegalArgumentException if it is below 0
     */
    public static List<Spare> choose(Cores cores, int perStratum) {
        if (perStratum < 0) {
            throw new IllegalArgumentException("perStratum must be 0 or more: got " + perStratum);
        }
        Spares spares = new Spares(cores, perStratum);
        List<Spare> chosen = new ArrayList<>();
        for (int i = 0; i < perStratum * spares.strata.count(); i++) {
            int stratum = i % spares.strata.count();
            int cell = spares.best(stratum);
            if (cell != Ground.NONE) {
                Ground ground = spares.strata.ground();
                spares.taken.add(ground.column(cell), ground.row(cell));
                chosen.add(new Spare(stratum, ground.xM(cell), ground.yM(cell)));
            }
        }
        return List.copyOf(chosen);
    }

    private int best(int stratum) {
        Ground ground = strata.ground();
        Spots border = borderOf(stratum);
        double clearance = Strata.CLEARANCE * strata.meanRadius();
        int best = Ground.NONE;
        double bestRoom = 0;
        for (int cell : strata.cellsIn(stratum)) {
            int x = ground.column(cell);
            int y = ground.row(cell);
            double room = Math.min(taken.distance(x, y), BORDER_WEIGHT * (border.distance(x, y) + 0.5));
            if (room > bestRoom && cores.distance(x, y) >= clearance) {
                best = cell;
                bestRoom = room;
            }
        }
        return best;
    }

    /** The cells of a stratum that have a side on its border. */
    private Spots borderOf(int stratum) {
        Ground ground = strata.ground();
        int[] cells = strata.cellsIn(stratum);
        Spots border = new Spots(cells.length);
        for (int cell : cells) {
            if (touchesOutside(cell, stratum)) {
                border.add(ground.column(cell), ground.row(cell));
            }
        }
        return border;
    }

    private boolean touchesOutside(int cell, int stratum) {
        for (int side = 0; side < Ground.SIDES; side++) {
            int next = strata.ground().neighbour(cell, side);
            if (next == Ground.NONE || strata.stratumOf(next) != stratum) {
                return true;
            }
        }
        return false;
    }
}
