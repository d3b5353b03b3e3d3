package loamline.demo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.plugins.tiff.BaselineTIFFTagSet;
import javax.imageio.plugins.tiff.GeoTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.plugins.tiff.TIFFTag;
import javax.imageio.plugins.tiff.TIFFTagSet;
import javax.imageio.stream.ImageOutputStream;

/** Writes a picture with its place as GeoTIFF (OGC 19-008r4), deflated with horizontal differencing. */
final class GeoTiff {
    private static final char HORIZONTAL_DIFFERENCING = 2;

    private static final int STRIP_ROWS = 128;

    private GeoTiff() {}

    static byte[] bytes(BufferedImage image, Grid grid) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
        ImageWriteParam param = deflated(writer, image.getWidth());
        IIOMetadata blank = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), param);
        TIFFDirectory directory = TIFFDirectory.createFromMetadata(blank);
        add(
                directory,
                BaselineTIFFTagSet.getInstance(),
                BaselineTIFFTagSet.TAG_PREDICTOR,
                TIFFTag.TIFF_SHORT,
                new char[] {HORIZONTAL_DIFFERENCING});
        addPlace(directory, grid);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, directory.getAsMetadata()), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static ImageWriteParam deflated(ImageWriter writer, int width) {
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionType("ZLib");
        param.setCompressionQuality(0); // the smallest file
        param.setTilingMode(ImageWriteParam.MODE_EXPLICIT);
        param.setTiling(width, STRIP_ROWS, 0, 0);
        return param;
    }

    private static void addPlace(TIFFDirectory directory, Grid grid) {
        TIFFTagSet tags = GeoTIFFTagSet.getInstance();
        double[] scale = {grid.pixelM(), grid.pixelM(), 0};
        double[] corner = {0, 0, 0, grid.eastM(), grid.northM(), 0};
        char[] keys = {
            1, 1, 0, 3, // version 1.1.0, three keys
            1024, 0, 1, 1, // projected
            1025, 0, 1, 1, // a pixel is an area
            3072, 0, 1, (char) grid.epsg()
        };
        add(directory, tags, GeoTIFFTagSet.TAG_MODEL_PIXEL_SCALE, TIFFTag.TIFF_DOUBLE, scale);
        add(directory, tags, GeoTIFFTagSet.TAG_MODEL_TIE_POINT, TIFFTag.TIFF_DOUBLE, corner);
        add(directory, tags, GeoTIFFTagSet.TAG_GEO_KEY_DIRECTORY, TIFFTag.TIFF_SHORT, keys);
    }

    private static void add(TIFFDirectory directory, TIFFTagSet tags, int number, int type, Object values) {
        int count = java.lang.reflect.Array.getLength(values);
        directory.addTIFFField(new TIFFField(tags.getTag(number), type, count, values));
    }
}
