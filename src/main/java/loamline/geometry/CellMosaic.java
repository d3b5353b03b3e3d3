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
        List<List<Polygon>> squares = new ArrayList<>();
        for (int label = 0; label < count; label++) {
            squares.add(new ArrayList<>());
        }
        for (int i = 0; i < cells.length; i++) {
            squares.get(labels[i]).add(square(cells[i] % columns, cells[i] / columns));
        }
        Geometry[] joined = squares.stream()
                .map(list -> CoverageUnion.union(list.toArray(Polygon[]::new)))
                .map(union -> union == null ? Jts.FACTORY.createPolygon() : union)
                .toArray(Geometry[]::new);
        List<Region> regions = new ArrayList<>();
        for (Geometry smooth : CoverageSimplifier.simplify(joined, SMOOTHING_CELLS * cellM)) {
            regions.add(Region.of(smooth));
        }
        return List.copyOf(regions);
    }

    private Polygon square(int column, int row) {
        double west = originX + column * cellM;
        double east = originX + (column + 1) * cellM;
        double south = originY + row * cellM;
        double north = originY + (row + 1) * cellM;
        return Jts.FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(west, south),
            new Coordinate(east, south),
            new Coordinate(east, north),
            new Coordinate(west, north),
            new Coordinate(west, south)
        });
    }
}
