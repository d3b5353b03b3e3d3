package loamline.tracing;

import java.util.BitSet;

/**
 * A window of an image and where in it ground may be traced.
 *
 * <p>Pixels are packed 0xAARRGGBB in sRGB, row by row from the top left; index = row · width + column. A pixel
 * less than half opaque is no data.
 */
public final class Picture {
    /** The largest window, in pixels; larger ones are to be cut round the click by the caller. */
    public static final int MAX_PIXELS = 64_000_000;

    private static final int HALF_OPAQUE = 128;

    private final int width;
    private final int height;
    private final int[] argb;
    private final BitSet closed;

    private Picture(int width, int height, int[] argb, BitSet closed) {
        this.width = width;
        this.height = height;
        this.argb = argb;
        this.closed = closed;
    }

    /**
     * A picture in which everything may be traced.
     *
     * @param argb width · height pixels, copied
     * @throws IllegalArgumentException if a side is below 1, there are too many pixels, or their number differs
     */
    public static Picture of(int width, int height, int[] argb) {
        if (width < 1 || height < 1 || (long) width * height > MAX_PIXELS || argb.length != width * height) {
            throw new IllegalArgumentException("no picture of " + width + " x " + height + " from " + argb.length
                    + " pixels (at least 1 x 1, at most " + MAX_PIXELS + ")");
        }
        return new Picture(width, height, argb.clone(), new BitSet());
    }

    /**
     * The same picture with limits.
     *
     * @param pixels indexes of the pixels that no trace may enter, such as ground already traced and what lies
     *     beyond the property line; copied. A {@link loamline.raster.Mask} over a grid from 0, 0 with cells of 1
     *     gives them for a region in pixels
     */
    public Picture closedTo(BitSet pixels) {
        return new Picture(width, height, argb, (BitSet) pixels.clone());
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** Whether a place lies on the picture. */
    boolean has(Pixel pixel) {
        return pixel.x() >= 0 && pixel.x() < width && pixel.y() >= 0 && pixel.y() < height;
    }

    int argb(int index) {
        return argb[index];
    }

    boolean isData(int index) {
        return argb[index] >>> 24 >= HALF_OPAQUE;
    }

    boolean isClosed(int index) {
        return closed.get(index);
    }
}
