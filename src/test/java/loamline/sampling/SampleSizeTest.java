package loamline.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Check values worked by hand from n = (t·CV/E)² with tabled t. */
class SampleSizeTest {
    @ParameterizedTest
    @CsvSource({"30, 15, 0.90, 13", "30, 10, 0.95, 38", "10, 10, 0.95, 7", "18, 10, 0.90, 11"})
    void iteratesWithT(double cvPct, double errorPct, double confidence, int expected) {
        assertThat(SampleSize.coresFor(cvPct, errorPct, confidence)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"30, 15, 0.90, 10.82", "30, 10, 0.95, 34.57", "10, 10, 0.95, 3.84", "18, 10, 0.90, 8.77"})
    void startsFromTheNormalDistribution(double cvPct, double errorPct, double confidence, double expected) {
        assertThat(SampleSize.coresByNormal(cvPct, errorPct, confidence)).isCloseTo(expected, within(0.005));
    }

    @Test
    void fifteenCoresAtThirtyPerCent() {
        // 30/√15 = 7.75; t(14, 95 %) = 2.1448 gives 16.61
        assertThat(SampleSize.standardErrorPct(30, 15)).isCloseTo(7.75, within(0.005));
        assertThat(SampleSize.halfWidthPct(30, 15, 0.95)).isCloseTo(16.61, within(0.005));
        // 1.96 · 7.75 = 15.18 by the normal distribution, which t becomes with very many cores
        int many = 15_000_000;
        double spread = 30 * Math.sqrt(many / 15.0);
        assertThat(SampleSize.halfWidthPct(spread, many, 0.95)).isCloseTo(15.18, within(0.005));
    }

    @Test
    void oneCoreHasNoInterval() {
        assertThatThrownBy(() -> SampleSize.halfWidthPct(30, 1, 0.95))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least 2");
    }

    @Test
    void nonsenseIsRefusedByName() {
        assertThatThrownBy(() -> SampleSize.coresFor(Double.NaN, 10, 0.95)).hasMessageContaining("cvPct");
        assertThatThrownBy(() -> SampleSize.coresFor(30, 0, 0.95)).hasMessageContaining("errorPct");
    }

    @Test
    void aBagOfTwelveQuotesThePublishedSpread() {
        // t(11, 90 %) = 1.7959; K: 30 %, so 1.7959 · 30 / √12 = 15.55 %
        assertThat(ExpectedError.of(12)).extracting(ExpectedError::element).containsExactly("P", "K", "OM");
        assertThat(ExpectedError.of(12).get(1).halfWidthPct()).isCloseTo(15.55, within(0.005));
        assertThat(ExpectedError.of(1)).isEmpty();
    }
}
