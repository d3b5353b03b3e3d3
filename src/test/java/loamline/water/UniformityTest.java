package loamline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class UniformityTest {
    /** 24 cups, ml; the ratios below follow by arithmetic from the definitions. */
    private static final double[] CUPS = {
        22, 25, 28, 31, 18, 20, 24, 27, 30, 33, 26, 21, 15, 17, 23, 29, 32, 35, 19, 24, 28, 26, 22, 25
    };

    private static Uniformity of(double... depths) {
        return Uniformity.of(depths).orElseThrow();
    }

    @Test
    void twentyFourCupsGiveTheRatiosOfTheirDefinitions() {
        Uniformity u = of(CUPS);
        assertThat(u.n()).isEqualTo(24);
        assertThat(u.mean()).isEqualTo(25);
        assertThat(u.duLq()).isCloseTo((15 + 17 + 18 + 19 + 20 + 21) / 6.0 / 25, within(1e-12)); // 0.7333
        assertThat(u.duLh()).isCloseTo(0.83333, within(1e-5));
        assertThat(u.cu()).isCloseTo(0.83333, within(1e-5));
        assertThat(u.cv()).isCloseTo(0.2090, within(5e-5));
        assertThat(u.minRatio()).isCloseTo(0.6, within(1e-12));
    }

    /** CATI Irrigation Notes 880802: a coefficient of 1.8 turns 30 minutes into 54. */
    @Test
    void theSchedulingCoefficientStretchesTheRunTime() {
        double coefficient = of(1, 1.8, 2.6).schedulingCoefficient().orElseThrow();
        assertThat(30 * coefficient).isCloseTo(54, within(1e-9));
        assertThat(of(0, 1).schedulingCoefficient()).isEmpty();
    }

    @Test
    void theLowestQuarterOfEighteenIsFive() {
        double[] depths = DoubleStream.iterate(1, d -> d + 1).limit(18).toArray();
        assertThat(of(depths).duLq()).isCloseTo(3 / 9.5, within(1e-12));
        assertThat(Uniformity.lowest(17, 4)).isEqualTo(4);
        assertThat(Uniformity.lowest(19, 4)).isEqualTo(5);
        assertThat(Uniformity.lowest(1, 4)).isEqualTo(1);
        assertThat(Uniformity.lowest(5, 2)).isEqualTo(3);
    }

    @Test
    void nothingAndADryLawnHaveNoUniformity() {
        assertThat(Uniformity.of()).isEmpty();
        assertThat(Uniformity.of(0, 0, 0)).isEmpty();
    }

    @Test
    void readingsThatCannotBeAreRefused() {
        assertThatThrownBy(() -> Uniformity.of(1, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uniformity.of(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uniformity.of(1, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The deviations below the mean make up half of all. */
    @Property(seed = Laws.SEED)
    void christiansenIsNeverAboveTheLowHalf(@ForAll @Size(40) List<@DoubleRange(min = 0.1, max = 60) Double> depths) {
        Uniformity u = of(depths.stream().mapToDouble(d -> d).toArray());
        assertThat(u.cu()).isLessThanOrEqualTo(u.duLh() + 1e-12);
        assertThat(u.duLq()).isLessThanOrEqualTo(u.duLh() + 1e-12).isGreaterThanOrEqualTo(u.minRatio() - 1e-12);
    }

    @Property(seed = Laws.SEED)
    void ratiosDoNotDependOnTheUnit(
            @ForAll @Size(min = 2, max = 30) List<@DoubleRange(min = 0.1, max = 60) Double> depths,
            @ForAll @DoubleRange(min = 0.01, max = 100) double unit) {
        Uniformity u = of(depths.stream().mapToDouble(d -> d).toArray());
        Uniformity other = of(depths.stream().mapToDouble(d -> d * unit).toArray());
        assertThat(other.duLq()).isCloseTo(u.duLq(), within(1e-9));
        assertThat(other.cu()).isCloseTo(u.cu(), within(1e-9));
        assertThat(other.cv()).isCloseTo(u.cv(), within(1e-9));
    }
}
