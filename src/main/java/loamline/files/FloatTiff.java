package loamline.files;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.plugins.tiff.GeoTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.plugins.tiff.TIFFTag;
import javax.imageio.stream.ImageOutputStream;
import loamline.place.LonLat;
import loamline.raster.GridSpec;

/**
 * A grid of values as GeoTIFF (OGC 19-008r4): one band of 32-bit floats, deflated, NaN for no data, in the yard's own
 * plane. So no cell is moved or mixed with its neighbour; map programs turn the plane on the fly.
 */
final class FloatTiff {
    /** Rows packed together: a program that shows a part unpacks no more than it must. */
    private static final int STRIP_ROWS = 64;

    /** Where GDAL and others look for the value that means no data. */
    private static final TIFFTag NO_DATA = new TIFFTag("GDAL_NODATA", 42113, 1 << TIFFTag.TIFF_ASCII);

    private static final char USER_DEFINED = 32767;

    private FloatTiff() {}

    /**
     * @param values row by row from the south-west
     * @param origin where the yard's plane touches the earth
     */
    static byte[] of(GridSpec grid, double[] values, LonLat origin) {
        BufferedImage image = image(grid, values);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            ImageWriteParam param = deflated(writer, grid);
            IIOMetadata blank =
                    writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), param);
            TIFFDirectory tags = TIFFDirectory.createFromMetadata(blank);
            addPlace(tags, grid, origin);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, tags.getAsMetadata()), param);
        } catch (IOException e) {
            throw new IllegalStateException("TIFF written to memory", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static BufferedImage image(GridSpec grid, double[] values) {
        ColorModel grey = new ComponentColorModel(
                ColorSpace.getInstance(ColorSpace.CS_GRAY), false, false, Transparency.OPAQUE, DataBuffer.TYPE_FLOAT);
        WritableRaster raster = grey.createCompatibleWritableRaster(grid.columns(), grid.rows());
        double[] line = new double[grid.columns()];
        for (int row = 0; row < grid.rows(); row++) {
            System.arraycopy(values, row * grid.columns(), line, 0, grid.columns());
            raster.setSamples(0, grid.rows() - 1 - row, grid.columns(), 1, 0, line);
        }
        return new BufferedImage(grey, raster, false, null);
    }

    private static ImageWriteParam deflated(ImageWriter writer, GridSpec grid) {
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionType("ZLib");
        param.setTilingMode(ImageWriteParam.MODE_EXPLICIT);
        param.setTiling(grid.columns(), Math.min(STRIP_ROWS, grid.rows()), 0, 0);
        return param;
    }

    private static void addPlace(TIFFDirectory tags, GridSpec grid, LonLat origin) {
        double north = grid.originY() + grid.rows() * grid.cellM();
        char[] keys = {
            1, 1, 1, 12, // GeoTIFF 1.1, twelve keys
            1024, 0, 1, 1, // a projected plane
            1025, 0, 1, 1, // a pixel is an area
            2048, 0, 1, 4326, // over WGS 84
            3072, 0, 1, USER_DEFINED,
            3074, 0, 1, USER_DEFINED,
            3075, 0, 1, 1, // transverse Mercator
            3076, 0, 1, 9001, // metres
            3080, GeoTIFFTagSet.TAG_GEO_DOUBLE_PARAMS, 1, 0, // longitude of the origin
            3081, GeoTIFFTagSet.TAG_GEO_DOUBLE_PARAMS, 1, 1, // latitude of the origin
            3082, GeoTIFFTagSet.TAG_GEO_DOUBLE_PARAMS, 1, 2, // false easting
            3083, GeoTIFFTagSet.TAG_GEO_DOUBLE_PARAMS, 1, 2, // false northing
            3092, GeoTIFFTagSet.TAG_GEO_DOUBLE_PARAMS, 1, 3 // scale at the origin
        };
        addDoubles(tags, GeoTIFFTagSet.TAG_MODEL_PIXEL_SCALE, grid.cellM(), grid.cellM(), 0);
        addDoubles(tags, GeoTIFFTagSet.TAG_MODEL_TIE_POINT, 0, 0, 0, grid.originX(), north, 0);
        addDoubles(tags, GeoTIFFTagSet.TAG_GEO_DOUBLE_PARAMS, origin.lonDeg(), origin.latDeg(), 0, 1);
        TIFFTag directory = GeoTIFFTagSet.getInstance().getTag(GeoTIFFTagSet.TAG_GEO_KEY_DIRECTORY);
        tags.addTIFFField(new TIFFField(directory, TIFFTag.TIFF_SHORT, keys.length, keys));
        tags.addTIFFField(new TIFFField(NO_DATA, TIFFTag.TIFF_ASCII, 1, new String[] {"nan"}));
    }

    private static void addDoubles(TIFFDirectory tags, int number, double... values) {
        TIFFTag tag = GeoTIFFTagSet.getInstance().getTag(number);
        tags.addTIFFField(new TIFFField(tag, TIFFTag.TIFF_DOUBLE, values.length, values));
    }
}
