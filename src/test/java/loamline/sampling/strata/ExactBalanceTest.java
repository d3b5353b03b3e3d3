package loamline.sampling.strata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class ExactBalanceTest {
    private static final double ROUNDING = 1e-9;

    @Property(seed = Laws.SEED, tries = 150)
    void noAssignmentOfTheSameSizesIsCheaper(
            @ForAll @IntRange(min = 3, max = 9) int cells,
            @ForAll @IntRange(min = 2, max = 3) int k,
            @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] places = random.ints(0, 25).distinct().limit(cells).toArray();
        WeightedPoints points = WeightedPoints.cellsOf(Ground.of(
                Arrays.stream(places).mapToDouble(place -> place % 5).toArray(),
                Arrays.stream(places)
                        .mapToDouble(place -> Math.floorDiv(place, 5))
                        .toArray(),
                1));
        PowerDiagram diagram = new PowerDiagram(
                random.doubles(k, 0, 5).toArray(), random.doubles(k, 0, 5).toArray());
        int[] owner = ExactBalance.of(points, diagram);
        int[] sizes = ExactBalance.sizes(owner, k);
        assertThat(Arrays.stream(sizes)).allMatch(size -> size == cells / k || size == (cells + k - 1) / k);
        assertThat(cost(points, diagram, owner)).isCloseTo(leastCost(points, diagram, sizes), within(ROUNDING));
    }

    /** Tries every assignment. */
    private static double leastCost(WeightedPoints points, PowerDiagram diagram, int[] sizes) {
        int k = diagram.size();
        int[] owner = new int[points.size()];
        double least = Double.POSITIVE_INFINITY;
        for (int code = 0; code < Math.pow(k, owner.length); code++) {
            for (int i = 0, rest = code; i < owner.length; i++, rest /= k) {
                owner[i] = rest % k;
            }
            if (Arrays.equals(ExactBalance.sizes(owner, k), sizes)) {
                least = Math.min(least, cost(points, diagram, owner));
            }
        }
        return least;
    }

    private static double cost(WeightedPoints points, PowerDiagram diagram, int[] owner) {
        double sum = 0;
        for (int i = 0; i < owner.length; i++) {
            sum += Math.pow(points.x[i] - diagram.x[owner[i]], 2) + Math.pow(points.y[i] - diagram.y[owner[i]], 2);
        }
        return sum;
    }
}
