package loamline.findings;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** P-values corrected for having looked at several things (Holm 1979, Scandinavian Journal of Statistics 6:65-70). */
final class Holm {
    private Holm() {}

    /** Corrected values in the order of the given ones, none above 1, none out of order with another. */
    static double[] corrected(List<Double> values) {
        int[] order = IntStream.range(0, values.size())
                .boxed()
                .sorted(Comparator.comparingDouble(values::get))
                .mapToInt(i -> i)
                .toArray();
        double[] corrected = new double[order.length];
        double least = 0;
        for (int i = 0; i < order.length; i++) {
            least = Math.max(least, Math.min(1, (order.length - i) * values.get(order[i])));
            corrected[order[i]] = least;
        }
        return corrected;
    }
}
