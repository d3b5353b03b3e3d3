package loamline.files;

import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;

/** Colours of an image's row, whatever the image keeps them as. What is transparent is laid on white. */
final class Colours {
    private static final int WHITE = 255;

    private Colours() {}

    /**
     * One row.
     *
     * @param y the row, counted as the raster counts
     * @param rgb receives 0xRRGGBB for every column
     */
    static void rgb(Raster raster, int y, ColorModel colours, int[] rgb) {
        boolean plain = colours instanceof ComponentColorModel
                && colours.getTransferType() == DataBuffer.TYPE_BYTE
                && colours.getColorSpace().isCS_sRGB()
                && !colours.hasAlpha()
                && colours.getNumComponents() == 3;
        if (plain) {
            plain(raster, y, rgb);
        } else {
            any(raster, y, colours, rgb);
        }
    }

    private static void plain(Raster raster, int y, int[] rgb) {
        int[] bands = raster.getPixels(raster.getMinX(), y, rgb.length, 1, (int[]) null);
        for (int x = 0, i = 0; x < rgb.length; x++, i += 3) {
            rgb[x] = bands[i] << 16 | bands[i + 1] << 8 | bands[i + 2];
        }
    }

    private static void any(Raster raster, int y, ColorModel colours, int[] rgb) {
        Object pixel = null;
        for (int x = 0; x < rgb.length; x++) {
            pixel = raster.getDataElements(raster.getMinX() + x, y, pixel);
            rgb[x] = onWhite(colours.getRGB(pixel));
        }
    }

    private static int onWhite(int argb) {
        int alpha = argb >>> 24;
        if (alpha == WHITE) {
            return argb & 0xFFFFFF;
        }
        int light = (WHITE - alpha) * WHITE;
        int red = ((argb >> 16 & 0xFF) * alpha + light) / WHITE;
        int green = ((argb >> 8 & 0xFF) * alpha + light) / WHITE;
        int blue = ((argb & 0xFF) * alpha + light) / WHITE;
        return red << 16 | green << 8 | blue;
    }
}
