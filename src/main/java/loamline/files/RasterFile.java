package loamline.files;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.raster.GridSpec;

/**
 * A grid of values as a file that map programs open: a GeoTIFF where the yard has a place on the earth, an ESRI ASCII
 * grid where it has none. North is up in both.
 */
public final class RasterFile {
    /** What stands in an ASCII grid where there is no data. */
    private static final String NO_DATA = "-9999";

    private RasterFile() {}

    /** The ending that fits a frame: {@code .tif} or {@code .asc}. */
    public static String endingFor(Frame frame) {
        return frame.origin().isPresent() ? ".tif" : ".asc";
    }

    /**
     * The bytes of the file with that ending.
     *
     * @param values as the grid has them, row by row from the south-west; NaN for no data
     * @throws IllegalArgumentException if there is not one value a cell
     */
    public static byte[] of(GridSpec grid, double[] values, Frame frame) {
        if (values.length != grid.size()) {
            throw new IllegalArgumentException(values.length + " values for " + grid.size() + " cells");
        }
        Optional<LonLat> origin = frame.origin();
        return origin.isPresent()
                ? FloatTiff.of(grid, values, origin.get())
                : ascii(grid, values).getBytes(StandardCharsets.US_ASCII);
    }

    private static String ascii(GridSpec grid, double[] values) {
        StringBuilder out = new StringBuilder();
        out.append("ncols ").append(grid.columns()).append('\n');
        out.append("nrows ").append(grid.rows()).append('\n');
        out.append("xllcorner ").append(JsonText.number(grid.originX())).append('\n');
        out.append("yllcorner ").append(JsonText.number(grid.originY())).append('\n');
        out.append("cellsize ").append(JsonText.number(grid.cellM())).append('\n');
        out.append("NODATA_value ").append(NO_DATA).append('\n');
        for (int row = grid.rows() - 1; row >= 0; row--) {
            int first = row * grid.columns();
            out.append(IntStream.range(first, first + grid.columns())
                            .mapToObj(i -> Double.isNaN(values[i]) ? NO_DATA : JsonText.number(values[i]))
                            .collect(Collectors.joining(" ")))
                    .append('\n');
        }
        return out.toString();
    }
}
