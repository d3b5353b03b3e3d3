package loamline.sun;

import java.util.stream.IntStream;
import loamline.cancel.Cancellation;
import loamline.raster.GridSpec;

/**
 * Direct light of many positions of the sun, added up cell by cell.
 *
 * <p><b>What.</b> For each sum k and each cell, Σ over positions of weight[k][position] · share of the sun's light that
 * reaches the middle of the cell ({@link ShadowBand} says how).
 *
 * <p><b>Units and shape.</b> {@code east[i]}, {@code north[i]}: how far the shadow of a thing 1 m high reaches, m; one
 * weight a sum and position, in whatever the sum is to have; sums row-major over the grid.
 *
 * <p><b>NaN.</b> None in, none out.
 *
 * <p><b>Ties and borders.</b> As in {@link ShadowBand}.
 *
 * <p><b>Accuracy.</b> Sums are floats: whole weights add up exactly to 16 million, others to {@link #ACCURACY} of the sum.
 *
 * <p><b>Cost.</b> Rows of all shadows at all positions, plus cells · positions; bands of rows run side by side, and the
 * sums do not depend on how many. Allocates one band of cells a band, nothing a position.
 *
 * <p><b>Reference.</b> None; it is a sum.
 */
final class LightKernel {
    /** Error of a sum of a few thousand floats, as a share of it. */
    static final double ACCURACY = 1e-4;

    /** Cells of a band: its floats stay in a core's own cache. */
    private static final int BAND_CELLS = 32_768;

    /** Bands at least, so that all cores have work to the end. */
    private static final int LEAST_BANDS = 8;

    private LightKernel() {}

    /** Adds to the sums. */
    static void add(
            GridSpec grid, CasterTable casters, double[] east, double[] north, float[][] weights, float[][] sums) {
        int bandRows =
                Math.max(1, Math.min(BAND_CELLS / grid.columns(), (grid.rows() + LEAST_BANDS - 1) / LEAST_BANDS));
        int bands = (grid.rows() + bandRows - 1) / bandRows;
        IntStream.range(0, bands).parallel().forEach(band -> {
            int firstRow = band * bandRows;
            int rows = Math.min(bandRows, grid.rows() - firstRow);
            ShadowBand shadows = new ShadowBand(grid, firstRow, rows);
            for (int i = 0; i < east.length; i++) {
                Cancellation.check();
                shadows.shade(casters, east[i], north[i]);
                for (int k = 0; k < sums.length; k++) {
                    if (weights[k][i] != 0) {
                        addBand(shadows.light, weights[k][i], sums[k], firstRow * grid.columns());
                    }
                }
            }
        });
    }

    private static void addBand(float[] light, float weight, float[] sum, int offset) {
        for (int cell = 0; cell < light.length; cell++) {
            sum[offset + cell] += weight * light[cell];
        }
    }
}
