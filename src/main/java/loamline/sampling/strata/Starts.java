package loamline.sampling.strata;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Settled diagrams from many seeded starts, the best first.
 *
 * <p>Half of the starts spread their generators by squared distance (Arthur and Vassilvitskii 2007, k-means++),
 * half take places at random: either finds optima that the other misses.
 */
final class Starts {
    /** Sweeps of one start: enough to rank it (measured on notched ground, twelve strata). */
    private static final int SWEEPS = 25;

    private final WeightedPoints points;
    private final int k;

    Starts(WeightedPoints points, int k) {
        this.points = points;
        this.k = k;
    }

    /** The best {@code keep} of {@code count} starts, by mean squared distance to the nearest generator. */
    List<PowerDiagram> best(int count, int keep, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return IntStream.range(0, count)
                .mapToObj(i -> settled(random.split(), i % 2 == 0))
                .sorted(Comparator.comparingDouble(Start::mssd))
                .limit(keep)
                .map(Start::diagram)
                .toList();
    }

    private record Start(PowerDiagram diagram, double mssd) {}

    private Start settled(SplittableRandom random, boolean spread) {
        PowerDiagram diagram = spread ? spread(random) : scattered(random);
        diagram.settle(points, SWEEPS);
        return new Start(diagram, CoreDistance.nearest(points, diagram.x, diagram.y));
    }

    private PowerDiagram scattered(SplittableRandom random) {
        double[] x = new double[k];
        double[] y = new double[k];
        for (int j = 0; j < k; j++) {
            put(x, y, j, random.nextInt(points.size()), random);
        }
        return new PowerDiagram(x, y);
    }

    private PowerDiagram spread(SplittableRandom random) {
        double[] x = new double[k];
        double[] y = new double[k];
        double[] pull = points.mass.clone();
        double[] nearest = new double[points.size()];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        for (int j = 0; j < k; j++) {
            put(x, y, j, drawn(pull, random), random);
            for (int i = 0; i < nearest.length; i++) {
                double dx = points.x[i] - x[j];
                double dy = points.y[i] - y[j];
                nearest[i] = Math.min(nearest[i], dx * dx + dy * dy);
                pull[i] = points.mass[i] * nearest[i];
            }
        }
        return new PowerDiagram(x, y);
    }

    /** An index drawn in proportion to its pull. */
    private static int drawn(double[] pull, SplittableRandom random) {
        double left = random.nextDouble() * Arrays.stream(pull).sum();
        int i = 0;
        while (i < pull.length - 1 && left >= pull[i]) {
            left -= pull[i++];
        }
        return i;
    }

    /** Puts a generator somewhere in the cell around a point, so that no two fall together. */
    private void put(double[] x, double[] y, int j, int point, SplittableRandom random) {
        x[j] = points.x[point] + random.nextDouble() - 0.5;
        y[j] = points.y[point] + random.nextDouble() - 0.5;
    }
}
