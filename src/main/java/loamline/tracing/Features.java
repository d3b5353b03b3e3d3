package loamline.tracing;

/**
 * What the eye tells ground apart by, for every cell of a window: colour and texture.
 *
 * <p>Cells are square groups of scale x scale pixels, row-major from the top left; those at the right and the
 * bottom may be cut by the picture's edge. A cell is open where more than half of its pixels show ground that
 * may be traced.
 *
 * <p>Texture is the lightness that a blur takes out, averaged over a small square: fine for a mown lawn, coarse
 * for a tree, next to nothing for concrete.
 */
final class Features {
    /** Cells of a window at most; larger windows are reduced by whole pixels until they fit. */
    static final int MAX_CELLS = 900_000;

    /** Lightness, green to red, blue to yellow; then texture. */
    static final int CHANNELS = 4;

    /** Those of the channels that are colour. */
    static final int COLOURS = 3;

    /** Lightness counts less than hue: shade, slope and mowing stripes change it and not the ground. */
    static final float LIGHTNESS_WEIGHT = 0.6f;

    /** Half the side of the square over which texture is averaged, cells. */
    private static final int TEXTURE_RADIUS = 3;

    static final byte OPEN = 0;
    static final byte NO_DATA = 1;
    static final byte CLOSED = 2;

    final int width;
    final int height;
    final int scale;

    /** The channels, lightness times its weight, smoothed; 0 where a cell is not open. */
    final float[][] planes;

    /** {@link #OPEN}, {@link #NO_DATA} or {@link #CLOSED}, by cell. */
    final byte[] state;

    /** Whether a cell is open. */
    final boolean[] open;

    private Features(int width, int height, int scale) {
        this.width = width;
        this.height = height;
        this.scale = scale;
        this.planes = new float[CHANNELS][width * height];
        this.state = new byte[width * height];
        this.open = new boolean[width * height];
    }

    static Features of(Picture picture) {
        int scale = 1;
        while ((long) reduced(picture.width(), scale) * reduced(picture.height(), scale) > MAX_CELLS) {
            scale++;
        }
        Features f = new Features(reduced(picture.width(), scale), reduced(picture.height(), scale), scale);
        f.reduce(picture);
        f.smooth();
        return f;
    }

    private static int reduced(int pixels, int scale) {
        return (pixels + scale - 1) / scale;
    }

    /** The cell that holds a pixel. */
    int cellOf(Pixel pixel) {
        return pixel.y() / scale * width + pixel.x() / scale;
    }

    /** Averages the light of each cell's open pixels and turns it into a colour. */
    private void reduce(Picture picture) {
        float[] lab = new float[COLOURS];
        for (int cell = 0, left = 0, top = 0; cell < state.length; cell++) {
            // The pixels of the cell, cut at the picture's edge.
            int right = Math.min(picture.width(), left + scale);
            int bottom = Math.min(picture.height(), top + scale);
            // Light adds up; bytes of sRGB do not.
            float red = 0;
            float green = 0;
            float blue = 0;
            int count = 0;
            int closed = 0;
            for (int y = top; y < bottom; y++) {
                for (int x = left; x < right; x++) {
                    int index = y * picture.width() + x;
                    if (picture.isClosed(index)) {
                        closed++;
                    } else if (picture.isData(index)) {
                        int argb = picture.argb(index);
                        red += Oklab.linear(argb >> 16);
                        green += Oklab.linear(argb >> 8);
                        blue += Oklab.linear(argb);
                        count++;
                    }
                }
            }
            // One colour for the cell, if it is open.
            open[cell] = 2 * count > (right - left) * (bottom - top);
            if (open[cell]) {
                Oklab.of(red / count, green / count, blue / count, lab);
                planes[0][cell] = LIGHTNESS_WEIGHT * lab[0];
                planes[1][cell] = lab[1];
                planes[2][cell] = lab[2];
            } else {
                state[cell] = closed > 0 ? CLOSED : NO_DATA;
            }
            // On to the next cell, or the next row of cells.
            left = right < picture.width() ? right : 0;
            top = left == 0 ? bottom : top;
        }
    }

    /** Blurs the colours over the open cells, and derives the texture. */
    private void smooth() {
        float[] ones = new float[open.length];
        for (int cell = 0; cell < ones.length; cell++) {
            ones[cell] = open[cell] ? 1 : 0;
        }
        float[] spare = new float[open.length];
        float[] near = ones.clone();
        Blur.binomial(near, spare, width, height);
        float[] sharp = planes[0].clone();
        for (int channel = 0; channel < COLOURS; channel++) {
            Blur.binomial(planes[channel], spare, width, height);
            divide(planes[channel], near);
        }
        float[] texture = planes[COLOURS];
        for (int cell = 0; cell < texture.length; cell++) {
            texture[cell] = Math.abs(sharp[cell] - planes[0][cell]) / LIGHTNESS_WEIGHT;
        }
        Blur.box(texture, spare, width, height, TEXTURE_RADIUS);
        Blur.box(ones, spare, width, height, TEXTURE_RADIUS);
        divide(texture, ones);
    }

    private void divide(float[] plane, float[] by) {
        for (int cell = 0; cell < plane.length; cell++) {
            plane[cell] = open[cell] ? plane[cell] / by[cell] : 0;
        }
    }
}
