package loamline.water;

import java.util.OptionalDouble;

/**
 * <b>What.</b> The mean of the driest square window of a grid, for the scheduling coefficient (CATI Irrigation Notes
 * 880802, California State University Fresno).
 *
 * <p><b>Units and shape.</b> Values row-major; a window of {@code side} by {@code side} cells.
 *
 * <p><b>NaN.</b> Marks cells that are not looked at; a window that holds one does not count.
 *
 * <p><b>Ties and borders.</b> Windows lie wholly within the grid; they do not wrap round its borders.
 *
 * <p><b>Accuracy.</b> Sums of a summed-area table: 1e-9 of the largest sum.
 *
 * <p><b>Cost.</b> Four look-ups a cell, whatever the window.
 */
final class DriestWindow {
    private DriestWindow() {}

    /** The side of a square of a share of so many cells, 1 or more. */
    static int side(int cells, double share) {
        return (int) Math.max(1, Math.rint(Math.sqrt(share * cells)));
    }

    /** The least mean of the windows; empty if none fits. */
    static OptionalDouble least(double[] values, int columns, int rows, int side) {
        double[] sums = new double[(columns + 1) * (rows + 1)];
        int[] gaps = new int[sums.length];
        sum(values, columns, rows, sums, gaps);
        int wide = columns + 1;
        double least = Double.POSITIVE_INFINITY;
        for (int row = side; row <= rows; row++) {
            for (int column = side; column <= columns; column++) {
                int ne = row * wide + column;
                int nw = ne - side;
                int se = ne - side * wide;
                int sw = se - side;
                if (gaps[ne] - gaps[nw] - gaps[se] + gaps[sw] == 0) {
                    least = Math.min(least, sums[ne] - sums[nw] - sums[se] + sums[sw]);
                }
            }
        }
        return least < Double.POSITIVE_INFINITY
                ? OptionalDouble.of(Math.max(0, least) / ((double) side * side))
                : OptionalDouble.empty();
    }

    private static void sum(double[] values, int columns, int rows, double[] sums, int[] gaps) {
        int wide = columns + 1;
        for (int row = 0; row < rows; row++) {
            double line = 0;
            int gapsInLine = 0;
            for (int column = 0; column < columns; column++) {
                double value = values[row * columns + column];
                if (Double.isNaN(value)) {
                    gapsInLine++;
                } else {
                    line += value;
                }
                int at = (row + 1) * wide + column + 1;
                sums[at] = sums[at - wide] + line;
                gaps[at] = gaps[at - wide] + gapsInLine;
            }
        }
    }
}
