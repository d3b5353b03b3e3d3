package loamline.sampling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class AllocationTest {
    @Test
    void sharesByAreaWithTheRestToTheLargestFractions() {
        assertThat(Allocation.shares(12, new double[] {159.4, 143.1})).containsExactly(6, 6);
        assertThat(Allocation.shares(10, new double[] {53, 24, 23})).containsExactly(5, 3, 2);
    }

    @Test
    void everyZoneHasACore() {
        assertThat(Allocation.shares(12, new double[] {1000, 1, 1})).containsExactly(10, 1, 1);
        assertThat(Allocation.shares(2, new double[] {5, 5, 5})).containsExactly(1, 1, 1);
    }

    @Test
    void noZonesNoCores() {
        assertThat(Allocation.shares(12, new double[0])).isEmpty();
    }

    @Property(seed = Laws.SEED, tries = 300)
    void nothingIsLost(
            @ForAll @IntRange(min = 1, max = 40) int cores,
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0.01, max = 5000) Double> areas) {
        int[] shares = Allocation.shares(
                cores, areas.stream().mapToDouble(Double::doubleValue).toArray());
        assertThat(Arrays.stream(shares).min().orElseThrow()).isPositive();
        assertThat(Arrays.stream(shares).sum()).isEqualTo(Math.max(cores, areas.size()));
    }
}
