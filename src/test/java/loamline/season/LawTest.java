package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;

/** Cases of state law as the table's sources have them. */
class LawTest {
    private static final LocalDate MAY = LocalDate.of(2027, 5, 10);

    private static Law law(String state, boolean professional, boolean drop) {
        SeasonOptions usual = SeasonOptions.from(MAY).in(state);
        return Law.of(new SeasonOptions(
                MAY, usual.region(), usual.state(), professional, drop, usual.meanC(), usual.soil(), usual.tables()));
    }

    @Test
    void newYorkKeepsTwentyFeetFromWaterAndThreeWithADropSpreader() {
        assertThat(law("NY", false, false).setbackM()).isCloseTo(20 * Factors.M_PER_FT, within(1e-12));
        assertThat(law("NY", false, true).setbackM()).isCloseTo(3 * Factors.M_PER_FT, within(1e-12));
    }

    @Test
    void newYorkBarsTheWinterWithBothBorderDays() {
        Law law = law("NY", false, false);
        assertThat(law.bars(LocalDate.of(2027, 12, 15))).isTrue();
        assertThat(law.bars(LocalDate.of(2027, 12, 1))).isTrue();
        assertThat(law.bars(LocalDate.of(2027, 4, 1))).isTrue();
        assertThat(law.bars(LocalDate.of(2027, 4, 2))).isFalse();
        assertThat(law.bars(LocalDate.of(2027, 11, 30))).isFalse();
    }

    @Test
    void marylandTellsHomesFromProfessionals() {
        LocalDate late = LocalDate.of(2027, 11, 20);
        assertThat(law("MD", false, false).bars(late)).isTrue();
        assertThat(law("MD", true, false).bars(late)).isFalse();
        assertThat(law("MD", true, false).bars(LocalDate.of(2027, 12, 2))).isTrue();
    }

    @Test
    void michiganAllowsTwelveFeetFromALakeWithADropSpreaderOnly() {
        assertThat(law("MI", false, true).setbackM()).isLessThan(12 * Factors.M_PER_FT);
        assertThat(law("MI", false, false).setbackM()).isGreaterThan(12 * Factors.M_PER_FT);
    }

    @Test
    void minnesotaAllowsPhosphorusByATestOfThreeYearsOrInTheFirstSeason() {
        Law law = law("MN", false, false);
        assertThat(law.allowsPhosphorus(MAY, Optional.empty(), false)).isFalse();
        assertThat(law.allowsPhosphorus(MAY, Optional.empty(), true)).isTrue();
        assertThat(law.allowsPhosphorus(MAY, Optional.of(MAY.minusMonths(36)), false))
                .isTrue();
        assertThat(law.allowsPhosphorus(MAY, Optional.of(MAY.minusMonths(37)), false))
                .isFalse();
        assertThat(law.allowsPhosphorus(MAY, Optional.of(MAY), false)).isTrue();
        assertThat(law.allowsPhosphorus(MAY, Optional.of(MAY.plusDays(1)), false))
                .isFalse();
    }

    @Test
    void connecticutCallsUpToTwoThirdsOfAPerCentFreeOfPhosphate() {
        assertThat(Products.of("a", 0, 0.67, 7).isPhosphateFree()).isTrue();
        assertThat(Products.of("b", 10, 2, 10).isPhosphateFree()).isFalse();
    }

    @Test
    void aStateWithoutARowIsRefused() {
        assertThatThrownBy(() -> SeasonOptions.from(MAY).in("ZZ"))
                .hasMessageContaining("ZZ")
                .hasMessageContaining("NY");
    }
}
