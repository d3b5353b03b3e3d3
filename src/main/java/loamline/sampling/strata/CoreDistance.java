package loamline.sampling.strata;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How far ground lies from its nearest core.
 *
 * <p><b>What.</b> The mean over points of the squared distance to the nearest core, MSSD. The ground's bounding box
 * is cut into square buckets; each knows the few cores that are nearest to some place in it.
 *
 * <p><b>Units and shape.</b> Places in m, result in m² (any one length unit and its square). n points, m cores, both
 * at least 1.
 *
 * <p><b>NaN.</b> Refused, like infinite places: {@link IllegalArgumentException}.
 *
 * <p><b>Ties and borders.</b> Equally near cores give the same distance. Points stand for themselves: for square
 * cells of side h the continuous mean is h²/6 more.
 *
 * <p><b>Accuracy.</b> The very distances of a search over all cores; the mean to {@link #ACCURACY}.
 *
 * <p><b>Cost.</b> n · about 4 distances, and 16 m² to set up; nothing allocated for a point.
 *
 * <p><b>Reference.</b> Walvoort, Brus and de Gruijter 2010, Computers and Geosciences 36:1261-1267, for the mean
 * squared shortest distance.
 */
public final class CoreDistance {
    /** Relative error of a mean of some million squares, summed in order: n ulps at the very worst. */
    public static final double ACCURACY = 1e-9;

    /** Fine enough that a bucket sees three or four cores, coarse enough to set up in no time (measured). */
    private static final int BUCKETS_PER_CORE = 16;

    private final double[] coreX;
    private final double[] coreY;
    private final double minX;
    private final double minY;
    private final double side;
    private final int columns;
    private final int[][] candidates;

    private CoreDistance(double[] x, double[] y, double[] coreX, double[] coreY) {
        this.coreX = coreX;
        this.coreY = coreY;
        this.minX = Arrays.stream(x).min().orElseThrow();
        this.minY = Arrays.stream(y).min().orElseThrow();
        double width = Arrays.stream(x).max().orElseThrow() - minX;
        double height = Arrays.stream(y).max().orElseThrow() - minY;
        double buckets = (double) BUCKETS_PER_CORE * coreX.length;
        double wanted = Math.max(Math.sqrt(width * height / buckets), Math.max(width, height) / buckets);
        this.side = wanted > 0 ? wanted : 1;
        this.columns = (int) (width / side) + 1;
        int rows = (int) (height / side) + 1;
        this.candidates = new int[columns * rows][];
        Arrays.setAll(candidates, this::coresNear);
    }

    /**
     * Mean squared distance to the nearest core, m².
     *
     * @param xM easting of each point, m
     * @param yM northing of each point, m
     * @param coreXM easting of each core, m
     * @param coreYM northing of each core, m
     * @throws IllegalArgumentException if there is no point or no core, a pair of arrays differs in length, or a
     *     number is not finite
     */
    public static double nearestMssdM2(double[] xM, double[] yM, double[] coreXM, double[] coreYM) {
        requirePlaces(xM, yM, "points");
        requirePlaces(coreXM, coreYM, "cores");
        CoreDistance distance = new CoreDistance(xM, yM, coreXM, coreYM);
        double sum = 0;
        for (int i = 0; i < xM.length; i++) {
            sum += distance.squared(xM[i], yM[i]);
        }
        return sum / xM.length;
    }

    /** The same over weighted points. */
    static double nearest(WeightedPoints points, double[] coreX, double[] coreY) {
        CoreDistance distance = new CoreDistance(points.x, points.y, coreX, coreY);
        double sum = 0;
        for (int i = 0; i < points.size(); i++) {
            sum += points.mass[i] * distance.squared(points.x[i], points.y[i]);
        }
        return sum / points.totalMass;
    }

    private static void requirePlaces(double[] x, double[] y, String what) {
        if (x.length == 0 || x.length != y.length) {
            throw new IllegalArgumentException(
                    what + " need as many x as y, at least one: got " + x.length + " x and " + y.length + " y");
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
                throw new IllegalArgumentException(what + " must be finite: number " + i + " is " + x[i] + ", " + y[i]);
            }
        }
    }

    /** Cores that may be nearest to a place in a bucket: no farther from its middle than the nearest and a diagonal. */
    private int[] coresNear(int bucket) {
        int column = bucket % columns;
        int row = bucket / columns;
        double middleX = minX + (column + 0.5) * side;
        double middleY = minY + (row + 0.5) * side;
        double[] squared = new double[coreX.length];
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < squared.length; j++) {
            double dx = coreX[j] - middleX;
            double dy = coreY[j] - middleY;
            squared[j] = dx * dx + dy * dy;
            least = Math.min(least, squared[j]);
        }
        double reach = Math.sqrt(least) + side * Math.sqrt(2);
        double most = reach * reach * (1 + ACCURACY);
        return IntStream.range(0, squared.length)
                .filter(j -> squared[j] <= most)
                .toArray();
    }

    private double squared(double x, double y) {
        int column = (int) ((x - minX) / side);
        int row = (int) ((y - minY) / side);
        double least = Double.POSITIVE_INFINITY;
        for (int j : candidates[row * columns + column]) {
            double dx = x - coreX[j];
            double dy = y - coreY[j];
            least = Math.min(least, dx * dx + dy * dy);
        }
        return least;
    }
}
