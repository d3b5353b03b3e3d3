package loamline.files;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;

/**
 * The rows of an image from top to bottom, each unpacked once and forgotten, so that memory does not grow with the
 * image. JPEG and PNG cannot be entered in the middle: their readers write into a raster that keeps no row. Other
 * formats are read band by band.
 */
final class PixelRows {
    /** Rows of a band, at least. */
    private static final int BAND_ROWS = 128;

    /** A strip of a TIFF is unpacked whole; one that takes more than this share of the heap is refused. */
    private static final double MOST_OF_HEAP = 0.25;

    private static final int BYTES_A_PIXEL = 4;

    /** Takes the rows; colours are 0xRRGGBB, in an array that is used again. */
    interface Sink {
        void size(int widthPx, int heightPx) throws IOException;

        void row(int y, int[] rgb) throws IOException;
    }

    private final ImageReader reader;
    private final Sink sink;

    private PixelRows(ImageReader reader, Sink sink) {
        this.reader = reader;
        this.sink = sink;
    }

    static ImageInputStream stream(Path image) throws IOException {
        ImageInputStream in = ImageIO.createImageInputStream(image.toFile());
        if (in == null) {
            throw new IOException("cannot be opened");
        }
        return in;
    }

    /** The reader of an image, its input set. */
    static ImageReader reader(ImageInputStream in) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        if (!readers.hasNext()) {
            throw new IOException("is no image that can be shown: save it as PNG, JPEG or TIFF");
        }
        ImageReader reader = readers.next();
        reader.setInput(in, false, true);
        return reader;
    }

    /** @throws IOException if the image cannot be read; its message says why, in words for a user */
    static void read(Path image, Sink sink) throws IOException {
        try (ImageInputStream in = stream(image)) {
            ImageReader reader = reader(in);
            try {
                new PixelRows(reader, sink).read();
            } catch (IllegalArgumentException | IndexOutOfBoundsException e) { // ImageIO on broken images
                throw new IOException("is damaged and cannot be shown: save it again", e);
            } finally {
                reader.dispose();
            }
        }
    }

    private void read() throws IOException {
        String format = reader.getFormatName().toLowerCase(Locale.ROOT);
        sink.size(reader.getWidth(0), reader.getHeight(0));
        if (!format.equals("jpeg") && !format.equals("png")) {
            readBands(Math.min(reader.getHeight(0), reader.getTileHeight(0)));
        } else if (!readThrough()) {
            sink.size(reader.getWidth(0), reader.getHeight(0));
            readBands(reader.getHeight(0));
        }
    }

    /** Whether the rows came in order; if not, the image has to be read in one piece. */
    private boolean readThrough() throws IOException {
        int width = reader.getWidth(0);
        ImageTypeSpecifier type = reader.getImageTypes(0).next();
        int[] rgb = new int[width];
        ColorModel colours = type.getColorModel();
        PassingRaster rows = new PassingRaster(type.getSampleModel(width, reader.getHeight(0)), (y, row) -> {
            Colours.rgb(row, row.getMinY(), colours, rgb);
            sink.row(y, rgb);
        });
        ImageReadParam whole = reader.getDefaultReadParam();
        whole.setDestination(new BufferedImage(colours, rows, colours.isAlphaPremultiplied(), null));
        try {
            reader.read(0, whole);
            return true;
        } catch (IOException | RuntimeException e) { // readers of ImageIO wrap what a raster throws
            if (isIn(e, PassingRaster.OutOfOrder.class)) {
                return false;
            }
            throw e;
        }
    }

    private static boolean isIn(Throwable thrown, Class<? extends Throwable> sort) {
        return sort.isInstance(thrown) || (thrown.getCause() != null && isIn(thrown.getCause(), sort));
    }

    private void readBands(int strip) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((double) strip * width * BYTES_A_PIXEL
                > MOST_OF_HEAP * Runtime.getRuntime().maxMemory()) {
            throw new IOException(
                    "keeps its pixels in too large pieces: save it again without interlacing, or with tiles");
        }
        int band = strip * Math.max(1, BAND_ROWS / strip);
        int[] rgb = new int[width];
        for (int top = 0; top < height; top += band) {
            ImageReadParam part = reader.getDefaultReadParam();
            part.setSourceRegion(new Rectangle(0, top, width, Math.min(band, height - top)));
            BufferedImage read = reader.read(0, part);
            Raster raster = read.getRaster();
            for (int y = 0; y < read.getHeight(); y++) {
                Colours.rgb(raster, y, read.getColorModel(), rgb);
                sink.row(top + y, rgb);
            }
        }
    }
}
