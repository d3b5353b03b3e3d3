package loamline.sampling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.geometry.Box;
import loamline.geometry.CellMosaic;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.sampling.strata.CorePlacement;
import loamline.sampling.strata.Cores;
import loamline.sampling.strata.EqualAreaStrata;
import loamline.sampling.strata.Ground;
import loamline.sampling.strata.Spare;
import loamline.sampling.strata.Spares;
import loamline.sampling.strata.Strata;
import loamline.yard.PlanOptions;
import loamline.yard.PlanOptions.Place;

/** One zone's eligible ground, divided into strata. */
final class ZoneStrata {
    /** Halvings of the cell while a thin zone has too few; after four, a cell is 1/256 of its first area. */
    private static final int MOST_HALVINGS = 4;

    /** Cells a stratum should have, so that one cell more or less leaves the areas within 1 %. */
    private static final int LEAST_CELLS_PER_STRATUM = 100;

    /** Draws of a zone's random cores while one stands too close to another zone's. */
    private static final int MOST_DRAWS = 50;

    private final Region ground;
    private final GridSpec grid;
    private final int[] cells;
    private final Strata strata;

    private ZoneStrata(Region ground, Mask mask, int k, long seed) {
        this.ground = ground;
        this.grid = mask.grid();
        this.cells = mask.indexes();
        double[] xM = Arrays.stream(cells)
                .mapToDouble(c -> grid.xOf(c % grid.columns()))
                .toArray();
        double[] yM = Arrays.stream(cells)
                .mapToDouble(c -> grid.yOf(c / grid.columns()))
                .toArray();
        this.strata = EqualAreaStrata.divide(Ground.of(xM, yM, grid.cellM()), k, seed);
    }

    /**
     * Divides ground.
     *
     * @param ground not empty
     * @param k number of strata, at least 1; fewer are made if the ground has fewer cells
     */
    static ZoneStrata of(Region ground, int k, long seed) {
        Box box = ground.box().orElseThrow();
        double cellM = EqualAreaStrata.cellSideM(ground.areaM2(), k);
        Mask mask = Mask.of(GridSpec.covering(box, cellM), ground);
        for (int i = 0; i < MOST_HALVINGS && mask.count() < LEAST_CELLS_PER_STRATUM * k; i++) {
            cellM /= 2;
            mask = Mask.of(GridSpec.covering(box, cellM), ground);
        }
        return new ZoneStrata(ground, mask, Math.min(k, mask.count()), seed);
    }

    double areaCv() {
        return strata.areaCv();
    }

    double meanRadiusM() {
        return strata.meanRadiusM();
    }

    /** The ground of each stratum. */
    List<Region> regions() {
        int[] labels = IntStream.range(0, cells.length).map(strata::stratumOf).toArray();
        return new CellMosaic(grid.originX(), grid.originY(), grid.cellM(), grid.columns())
                .regions(cells, labels, strata.count());
    }

    /**
     * One core a stratum, with its spares.
     *
     * @param others cores of zones planned before, to stay away from
     */
    List<Draft.Spot> spots(String zone, int firstStratum, PlanOptions options, long seed, List<Point> others) {
        Cores cores = options.place() == Place.CENTRE ? CorePlacement.atCentres(strata) : drawn(seed, others);
        List<List<Point>> spares = new ArrayList<>();
        for (int s = 0; s < strata.count(); s++) {
            spares.add(new ArrayList<>());
        }
        for (Spare spare : Spares.choose(cores, options.sparesPerStratum())) {
            spares.get(spare.stratum()).add(Frame.onStep(new Point(spare.xM(), spare.yM())));
        }
        return IntStream.range(0, strata.count())
                .mapToObj(s -> new Draft.Spot(
                        zone, firstStratum + s, onGround(s, cores), List.copyOf(spares.get(s)), Optional.empty()))
                .toList();
    }

    /** A cell counts by its middle, so a place near its border may lie off the ground: then the middle is taken. */
    private Point onGround(int stratum, Cores cores) {
        Point p = Frame.onStep(new Point(cores.xM(stratum), cores.yM(stratum)));
        if (ground.covers(p)) {
            return p;
        }
        return Arrays.stream(strata.cellsOf(stratum))
                .mapToObj(cell -> grid.centre(cells[cell]))
                .min(Comparator.comparingDouble(p::distanceTo))
                .orElse(p);
    }

    private Cores drawn(long seed, List<Point> others) {
        Cores best = CorePlacement.atRandom(strata, seed);
        for (int i = 1; i < MOST_DRAWS && nearestM(best, others) < Strata.CLEARANCE * meanRadiusM(); i++) {
            Cores next = CorePlacement.atRandom(strata, seed + i);
            best = nearestM(next, others) > nearestM(best, others) ? next : best;
        }
        return best;
    }

    private double nearestM(Cores cores, List<Point> others) {
        return IntStream.range(0, strata.count())
                .mapToObj(s -> new Point(cores.xM(s), cores.yM(s)))
                .flatMapToDouble(p -> others.stream().mapToDouble(p::distanceTo))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
