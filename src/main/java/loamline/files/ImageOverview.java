package loamline.files;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A large image with most of its pixels left out, to have something to look at while the rest is read.
 *
 * @param step one pixel of {@code coarse} stands for so many of the image in a row
 */
public record ImageOverview(int widthPx, int heightPx, int step, BufferedImage coarse) implements ImagePixels {
    /** An image up to this size is read in about a second, and needs no overview. */
    private static final long SMALL_PX = 12_000_000;

    private static final double ABOUT_PX = 1_000_000;

    /** Reads the overview of a large image; empty for an image that is not large. */
    public static Optional<ImageOverview> read(Path image) throws IOException {
        try (ImageInputStream in = PixelRows.stream(image)) {
            ImageReader reader = PixelRows.reader(in);
            try {
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                long pixels = (long) width * height;
                return pixels <= SMALL_PX ? Optional.empty() : Optional.of(read(reader, width, height));
            } finally {
                reader.dispose();
            }
        }
    }

    private static ImageOverview read(ImageReader reader, int width, int height) throws IOException {
        int step = (int) Math.ceil(Math.sqrt(width / ABOUT_PX * height));
        ImageReadParam coarse = reader.getDefaultReadParam();
        coarse.setSourceSubsampling(step, step, 0, 0);
        return new ImageOverview(width, height, step, reader.read(0, coarse));
    }

    @Override
    public void draw(Graphics2D graphics, AffineTransform toDevice) {
        AffineTransform whole = new AffineTransform(toDevice);
        whole.scale(step, step);
        graphics.drawImage(coarse, whole, null);
    }
}
