package loamline.demo;

/** Seeded noise over the plane: the same place always gives the same value. */
final class Noise {
    private static final double DIAGONAL = Math.sqrt(0.5);
    private static final double[] GRADIENT_X = {1, DIAGONAL, 0, -DIAGONAL, -1, -DIAGONAL, 0, DIAGONAL};
    private static final double[] GRADIENT_Y = {0, DIAGONAL, 1, DIAGONAL, 0, -DIAGONAL, -1, -DIAGONAL};

    private final long seed;

    Noise(long seed) {
        this.seed = seed * 0x9E3779B97F4A7C15L;
    }

    /** A fixed random number for a pair of whole numbers, 0 (in) to 1 (out). */
    double of(long i, long j) {
        return (mixed(i, j) >>> 11) * 0x1.0p-53;
    }

    /** Gradient noise with features about one unit wide: about -0.7 to 0.7, 0 on whole numbers. */
    double at(double x, double y) {
        long column = (long) Math.floor(x);
        long row = (long) Math.floor(y);
        double u = x - column;
        double v = y - row;
        double south = blend(slope(column, row, u, v), slope(column + 1, row, u - 1, v), u);
        double north = blend(slope(column, row + 1, u, v - 1), slope(column + 1, row + 1, u - 1, v - 1), u);
        return blend(south, north, v);
    }

    /** The sum of octaves from one unit downwards, each half as wide and half as strong as the one before. */
    double octaves(double x, double y, int count) {
        double sum = 0;
        double scale = 1;
        for (int i = 0; i < count; i++) {
            sum += at(x * scale + 17.3 * i, y * scale - 9.1 * i) / scale;
            scale *= 2;
        }
        return sum;
    }

    private double slope(long column, long row, double u, double v) {
        int direction = (int) (mixed(column, row) >>> 61);
        return GRADIENT_X[direction] * u + GRADIENT_Y[direction] * v;
    }

    private static double blend(double a, double b, double t) {
        return a + (b - a) * t * t * t * (t * (6 * t - 15) + 10);
    }

    /** The finishing steps of SplitMix64 (Steele, Lea and Flood 2014, OOPSLA). */
    private long mixed(long i, long j) {
        long z = seed + i * 0xD1342543DE82EF95L + j * 0xAF251AF3B0F025B5L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
