package loamline.demo;

/** Blurs a raster with weights 1 2 1 along both axes; beyond the border the border goes on. */
final class Blur {
    private Blur() {}

    /**
     * One pass.
     *
     * @param in rows of pixels, bands of a pixel side by side
     */
    static float[] once(float[] in, int width, int bands) {
        int row = width * bands;
        return along(along(in, row, bands, row), row, row, in.length);
    }

    /** Neighbours lie {@code step} apart, within blocks of {@code block} values. */
    private static float[] along(float[] in, int row, int step, int block) {
        float[] out = new float[in.length];
        for (int i = 0; i < in.length; i++) {
            int start = i - i % block;
            int before = i - step >= start ? i - step : i;
            int after = i + step < start + block ? i + step : i;
            out[i] = (in[before] + 2 * in[i] + in[after]) / 4;
        }
        return out;
    }
}
