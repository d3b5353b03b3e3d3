package loamline.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.coverage.CoverageSimplifier;
import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Regions made of square cells, their borders smoothed together so that neighbours still share them.
 *
 * @param originX west side of column 0, m
 * @param originY south side of row 0, m
 * @param cellM side of a cell, m
 * @param columns cells in a row; index = row · columns + column
 */
public record CellMosaic(double originX, double originY, double cellM, int columns) {
    /** Borders may move by about a cell and a half: that takes the stairs out. */
    private static final double SMOOTHING_CELLS = 1.5;

    /**
     * Joins cells by label.
     *
     * @param cells indexes of the cells
     * @param labels for each cell, from 0
     * @param count number of labels
     * @return one region a label, in order; empty where no cell has it
     */
    public List<Region> regions(int[] cells, int[] labels, int count) {
        List<List<Polygon>> runs = new ArrayList<>();
        for (int label = 0; label < count; label++) {
            runs.add(new ArrayList<>());
        }
        for (int from = 0; from < cells.length; ) {
            int to = from + 1;
            while (to < cells.length
                    && labels[to] == labels[from]
                    && cells[to] == cells[to - 1] + 1
                    && cells[to] % columns != 0) {
                to++;
            }
            runs.get(labels[from]).add(run(cells[from] % columns, to - from, cells[from] / columns));
            from = to;
        }
        Geometry[] joined = runs.stream()
                .map(list -> CoverageUnion.union(list.toArray(Polygon[]::new)))
                .map(union -> union == null ? Jts.FACTORY.createPolygon() : union)
                .toArray(Geometry[]::new);
        List<Region> regions = new ArrayList<>();
        for (Geometry smooth : CoverageSimplifier.simplify(joined, SMOOTHING_CELLS * cellM)) {
            regions.add(Region.of(smooth));
        }
        return List.copyOf(regions);
    }

    /** Cells side by side in a row, with every corner of every cell, so that runs that touch share their corners. */
    private Polygon run(int firstColumn, int length, int row) {
        Coordinate[] ring = new Coordinate[2 * length + 3];
        for (int i = 0; i <= length; i++) {
            double x = originX + (firstColumn + i) * cellM;
            ring[i] = new Coordinate(x, originY + row * cellM);
            ring[2 * length + 1 - i] = new Coordinate(x, originY + (row + 1) * cellM);
        }
        ring[2 * length + 2] = ring[0];
        return Jts.FACTORY.createPolygon(ring);
    }
}
