package loamline.sampling.strata;

/** Places taken so far, in cells; grows to a set number. */
final class Spots {
    private final double[] x;
    private final double[] y;
    private int count;

    Spots(int most) {
        this.x = new double[most];
        this.y = new double[most];
    }

    void add(double atX, double atY) {
        x[count] = atX;
        y[count] = atY;
        count++;
    }

    /** Distance to the nearest place taken, cells; infinite while there is none. */
    double distance(double fromX, double fromY) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double dx = fromX - x[i];
            double dy = fromY - y[i];
            least = Math.min(least, dx * dx + dy * dy);
        }
        return Math.sqrt(least);
    }
}
