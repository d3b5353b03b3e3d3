package loamline.files;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** A part of an image as pixels. */
public final class ImageWindow {
    private ImageWindow() {}

    /**
     * Reads a part of an image, every so many pixels.
     *
     * @param part in pixels of the image, within it
     * @param step 1 takes every pixel, 2 every other one in both directions, and so on
     * @return 0xAARRGGBB in sRGB, row by row from the top left; rows of ⌈width / step⌉ pixels
     * @throws IOException if the image cannot be read
     */
    public static int[] argb(Path image, Rectangle part, int step) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(image.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException("is no image that can be read");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true);
                ImageReadParam param = reader.getDefaultReadParam();
                param.setSourceRegion(part);
                param.setSourceSubsampling(step, step, 0, 0);
                BufferedImage read = reader.read(0, param);
                int width = read.getWidth();
                return read.getRGB(0, 0, width, read.getHeight(), null, 0, width);
            } catch (RuntimeException e) { // ImageIO answers some broken images with unchecked exceptions
                throw new IOException("is damaged and cannot be read", e);
            } finally {
                reader.dispose();
            }
        }
    }
}
