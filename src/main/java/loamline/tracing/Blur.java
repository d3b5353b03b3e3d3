package loamline.tracing;

/**
 * Sums over the neighbourhoods of all cells, in place.
 *
 * <p>What: a plane of values is replaced by weighted sums round each cell. Units and shape: planes are
 * row-major; {@code spare} is scratch of the same length. NaN: spreads over its neighbourhood, and with {@link
 * #box} over the rest of its row and column. Borders: what lies outside counts as 0, so a plane divided by a
 * plane of ones that was blurred alike is the mean over what exists. Accuracy: {@link #ACCURACY}. Cost: a few
 * operations a cell, whatever the radius.
 */
final class Blur {
    /** The most that a sum over values up to 1 can be off, from rounding to float. */
    static final double ACCURACY = 1e-6;

    private Blur() {}

    /** Weights 1 4 6 4 1 both ways, divided by 256: close to a Gaussian of one cell. */
    static void binomial(float[] plane, float[] spare, int width, int height) {
        for (int start = 0; start < plane.length; start += width) {
            for (int x = 0; x < width; x++) {
                int i = start + x;
                float near = (x > 0 ? plane[i - 1] : 0) + (x + 1 < width ? plane[i + 1] : 0);
                float far = (x > 1 ? plane[i - 2] : 0) + (x + 2 < width ? plane[i + 2] : 0);
                spare[i] = 0.375f * plane[i] + 0.25f * near + 0.0625f * far;
            }
        }
        for (int start = 0; start < plane.length; start += width) {
            for (int x = 0; x < width; x++) {
                plane[start + x] = 0.375f * spare[start + x];
            }
            addRow(plane, spare, start, start - 2 * width, width, 0.0625f);
            addRow(plane, spare, start, start - width, width, 0.25f);
            addRow(plane, spare, start, start + width, width, 0.25f);
            addRow(plane, spare, start, start + 2 * width, width, 0.0625f);
        }
    }

    private static void addRow(float[] to, float[] from, int toStart, int fromStart, int width, float share) {
        if (fromStart >= 0 && fromStart < from.length) {
            for (int x = 0; x < width; x++) {
                to[toStart + x] += share * from[fromStart + x];
            }
        }
    }

    /** Equal weights over a square of 2 · radius + 1 cells, together 1. */
    static void box(float[] plane, float[] spare, int width, int height, int radius) {
        float share = 1f / ((2 * radius + 1) * (2 * radius + 1));
        // Along the rows: a running sum, into the scratch.
        for (int start = 0; start < plane.length; start += width) {
            double sum = 0;
            for (int x = -radius; x < width; x++) {
                sum += x + radius < width ? plane[start + x + radius] : 0;
                sum -= x > radius ? plane[start + x - radius - 1] : 0;
                if (x >= 0) {
                    spare[start + x] = (float) sum * share;
                }
            }
        }
        // Down the columns: a running sum for each, all moved by a row at a time.
        double[] sums = new double[width];
        for (int y = -radius; y < height; y++) {
            int in = y + radius < height ? (y + radius) * width : -1;
            int out = y > radius ? (y - radius - 1) * width : -1;
            for (int x = 0; x < width; x++) {
                sums[x] += (in >= 0 ? spare[in + x] : 0) - (out >= 0 ? spare[out + x] : 0);
                if (y >= 0) {
                    plane[y * width + x] = (float) sums[x];
                }
            }
        }
    }
}
