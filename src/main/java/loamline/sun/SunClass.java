package loamline.sun;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.CellMosaic;
import loamline.geometry.Region;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.reference.LightClass;
import loamline.yard.Zone;

/**
 * Turf of one light class, as a zone that could be made of it.
 *
 * @param light the class
 * @param ground its turf, borders smoothed; perhaps in parts, never empty
 */
public record SunClass(LightClass light, Region ground) {
    /** Smaller patches are not worth treating apart: common practice, no source. */
    public static final double LEAST_PATCH_M2 = 10;

    /** Labels reach so far beyond the turf, so that smoothing their outer border leaves the turf alone. */
    private static final int MARGIN_CELLS = 4;

    /**
     * Cuts turf into light classes, darkest first: classes that occur, each patch of {@link #LEAST_PATCH_M2} at least
     * unless it touches no other. Together they are the turf, and none overlaps another.
     *
     * @param turf the zones that the study looked at
     */
    public static List<SunClass> propose(SunStudy study, List<Zone> turf) {
        List<LightClass> classes = LightClass.published();
        GridSpec grid = study.hours().spec();
        int columns = grid.columns() + 2 * MARGIN_CELLS;
        int least = (int) Math.ceil(LEAST_PATCH_M2 / grid.cellAreaM2());
        int[] labels = new Patchwork(columns, labels(study.hours(), classes, columns))
                .withoutSmall(least)
                .grown(MARGIN_CELLS)
                .labels();
        int[] cells = IntStream.range(0, labels.length)
                .filter(cell -> labels[cell] != Patchwork.NONE)
                .toArray();
        double margin = MARGIN_CELLS * grid.cellM();
        List<Region> regions = new CellMosaic(grid.originX() - margin, grid.originY() - margin, grid.cellM(), columns)
                .regions(cells, IntStream.of(cells).map(cell -> labels[cell]).toArray(), classes.size());
        Region all = Region.union(turf.stream().map(Zone::net).toList());
        List<SunClass> proposed = new ArrayList<>();
        for (int i = 0; i < classes.size(); i++) {
            Region ground = regions.get(i).intersection(all);
            if (!ground.isEmpty()) {
                proposed.add(new SunClass(classes.get(i), ground));
            }
        }
        return List.copyOf(proposed);
    }

    /** The class of each cell on a grid with a margin round it. */
    private static int[] labels(Grid hours, List<LightClass> classes, int columns) {
        GridSpec grid = hours.spec();
        int[] labels = new int[columns * (grid.rows() + 2 * MARGIN_CELLS)];
        Arrays.fill(labels, Patchwork.NONE);
        for (int cell = 0; cell < grid.size(); cell++) {
            if (!Double.isNaN(hours.at(cell))) {
                int row = cell / grid.columns() + MARGIN_CELLS;
                labels[row * columns + cell % grid.columns() + MARGIN_CELLS] = LightClass.of(hours.at(cell), classes);
            }
        }
        return labels;
    }
}
