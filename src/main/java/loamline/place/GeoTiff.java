package loamline.place;

import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.util.Optional;
import org.apache.sis.coverage.grid.GridGeometry;
import org.apache.sis.coverage.grid.PixelInCell;
import org.apache.sis.referencing.operation.transform.MathTransforms;
import org.apache.sis.storage.Aggregate;
import org.apache.sis.storage.DataStore;
import org.apache.sis.storage.DataStoreException;
import org.apache.sis.storage.GridCoverageResource;
import org.apache.sis.storage.Resource;
import org.apache.sis.storage.StorageConnector;
import org.apache.sis.storage.geotiff.GeoTiffStoreProvider;
import org.opengis.referencing.operation.Matrix;

/**
 * What a TIFF says of its place (OGC 19-008r4, GeoTIFF 1.1), read by Apache SIS.
 *
 * <p>Pixels are never touched, so their compression does not matter. Both raster types, pixel as area and pixel as
 * point, give the same corner-based {@link Affine}.
 *
 * @param toCrs from pixels to the axes of its system; empty if the file does not say
 * @param crs its system; empty if the file does not say
 */
public record GeoTiff(int widthPx, int heightPx, Optional<Affine> toCrs, Optional<Crs> crs) {
    /**
     * Reads the tags of the first image.
     *
     * @param tiff at its start; closed afterwards
     * @throws IOException if the channel cannot be read
     * @throws PlaceException if this is no TIFF, or its place cannot be used
     */
    public static GeoTiff read(SeekableByteChannel tiff) throws PlaceException, IOException {
        EpsgDatabase.keepQuiet();
        TiffTags.check(tiff);
        try (DataStore store = new GeoTiffStoreProvider().open(new StorageConnector(tiff))) {
            return of(firstImage(store).getGridGeometry());
        } catch (DataStoreException | RuntimeException e) { // SIS answers some broken tags with unchecked exceptions
            throw new PlaceException("the tags of this TIFF cannot be read; save the image again as GeoTIFF", e);
        }
    }

    private static GridCoverageResource firstImage(DataStore store) throws DataStoreException, PlaceException {
        if (store instanceof Aggregate images) {
            for (Resource image : images.components()) {
                if (image instanceof GridCoverageResource pixels) {
                    return pixels;
                }
            }
        }
        throw new PlaceException("there is no image in this TIFF");
    }

    private static GeoTiff of(GridGeometry grid) throws PlaceException {
        return new GeoTiff(
                Math.toIntExact(grid.getExtent().getSize(0)),
                Math.toIntExact(grid.getExtent().getSize(1)),
                grid.isDefined(GridGeometry.GRID_TO_CRS) ? Optional.of(affine(grid)) : Optional.empty(),
                grid.isDefined(GridGeometry.CRS)
                        ? Optional.of(Crs.of(grid.getCoordinateReferenceSystem()))
                        : Optional.empty());
    }

    /** The first two axes of the grid and of the system; SIS lists east before north, and heights last. */
    private static Affine affine(GridGeometry grid) throws PlaceException {
        Matrix m = MathTransforms.getMatrix(grid.getGridToCRS(PixelInCell.CELL_CORNER));
        if (m == null) {
            throw new PlaceException("the image is placed by control points and not yet rectified; rectify it first");
        }
        int shift = m.getNumCol() - 1;
        return new Affine(
                m.getElement(0, 0),
                m.getElement(0, 1),
                m.getElement(0, shift),
                m.getElement(1, 0),
                m.getElement(1, 1),
                m.getElement(1, shift));
    }
}
