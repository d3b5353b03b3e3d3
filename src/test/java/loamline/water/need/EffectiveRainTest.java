package loamline.water.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import loamline.units.Factors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EffectiveRainTest {
    /** Worked out by hand from the rule. */
    @ParameterizedTest
    @CsvSource({"0, 0", "10, 9.84", "50, 46", "100, 84", "200, 136", "250, 150", "300, 155"})
    void theSoilConservationServiceCountsMostOfASmallRain(double rainMm, double effectiveMm) {
        assertThat(EffectiveRain.USDA_SCS.ofMonthMm(rainMm)).isCloseTo(effectiveMm, within(1e-9));
    }

    /** Worked out by hand from the rule. */
    @ParameterizedTest
    @CsvSource({"0, 0", "10, 0", "50, 20", "75, 35", "100, 55", "200, 135"})
    void faoCountsNothingOfASmallRain(double rainMm, double effectiveMm) {
        assertThat(EffectiveRain.FAO.ofMonthMm(rainMm)).isCloseTo(effectiveMm, within(1e-9));
    }

    /** Worked out by hand from the rule published by Texas A&M AgriLife (TexasET), inches. */
    @ParameterizedTest
    @CsvSource({"0.05, 0", "0.5, 0.4", "1, 0.9", "1.5, 1.233", "2, 1.567", "3, 1.567"})
    void aDaysRainLosesItsFirstTenthAndItsExcess(double rainIn, double effectiveIn) {
        assertThat(EffectiveRain.ofDayMm(rainIn * Factors.MM_PER_IN) / Factors.MM_PER_IN)
                .isCloseTo(effectiveIn, within(0.0005));
    }

    @ParameterizedTest
    @EnumSource(EffectiveRain.class)
    void noRuleCountsRainThatIsNone(EffectiveRain rule) {
        assertThatIllegalArgumentException().isThrownBy(() -> rule.ofMonthMm(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> rule.ofMonthMm(Double.NaN));
        for (double mm = 0; mm < 1000; mm += 0.5) {
            assertThat(rule.ofMonthMm(mm)).isBetween(0.0, mm);
        }
    }
}
