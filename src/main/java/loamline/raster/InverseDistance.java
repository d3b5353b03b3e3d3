package loamline.raster;

/**
 * The mean of values weighted by distance to a negative power.
 *
 * <p><b>What:</b> Σ z h⁻ᵖ / Σ h⁻ᵖ over all points.
 *
 * <p><b>Units and shape:</b> metres; arrays of one length.
 *
 * <p><b>NaN:</b> must not occur; the result is NaN without points.
 *
 * <p><b>Ties and borders:</b> at a point its value, of several points there the first.
 *
 * <p><b>Accuracy:</b> that of doubles.
 *
 * <p><b>Cost:</b> points a prediction.
 *
 * <p><b>Reference:</b> Shepard 1968, Proceedings of the 23rd ACM National Conference, 517-524.
 */
public final class InverseDistance {
    private static final int NONE = -1;

    private InverseDistance() {}

    /** The value at a place, all points counting. */
    public static double at(double[] x, double[] y, double[] values, double power, double atX, double atY) {
        return without(NONE, x, y, values, power, atX, atY);
    }

    /** Value less prediction for every point, each predicted from all others. */
    public static double[] leaveOneOut(double[] x, double[] y, double[] values, double power) {
        double[] residuals = new double[values.length];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = values[i] - without(i, x, y, values, power, x[i], y[i]);
        }
        return residuals;
    }

    private static double without(
            int left, double[] x, double[] y, double[] values, double power, double atX, double atY) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < values.length; i++) {
            double distance = Math.hypot(x[i] - atX, y[i] - atY);
            if (i == left) {
                continue;
            }
            if (distance == 0) {
                return values[i];
            }
            double weight = Math.pow(distance, -power);
            sum += weight * values[i];
            weights += weight;
        }
        return sum / weights;
    }
}
