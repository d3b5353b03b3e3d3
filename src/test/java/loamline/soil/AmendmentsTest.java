package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmendmentsTest {
    private static final double LB_M_PER_LB_ACRE = 1 / 43.56;
    private static final SulfurTable STRONG = SulfurTable.of(SoilTables.published(), SulfurTable.STRONG);
    private static final SulfurTable ALKALINE = SulfurTable.of(SoilTables.published(), SulfurTable.ALKALINE);

    /** Table attributed to Michigan State University; differences derived. */
    @ParameterizedTest
    @CsvSource({
        "7.0, 6.0, LOAM, 1020, 23.4",
        "7.0, 6.0, SAND, 310, 7.1",
        "7.0, 6.0, CLAY, 1530, 35.1",
        "6.5, 4.5, SAND, 660, 15.2"
    })
    void sulfurIsTheDifferenceOfTwoReadings(double from, double to, Texture.Group group, double lbAcre, double lbM) {
        double found = STRONG.lbAcre(from, to, group).orElseThrow();
        assertThat(found).isCloseTo(lbAcre, within(1e-9));
        assertThat(found * LB_M_PER_LB_ACRE).isCloseTo(lbM, within(0.05));
    }

    /** From memory of the Western Fertilizer Handbook; lb on 1,000 ft² derived. */
    @ParameterizedTest
    @CsvSource({"8.5, 45.9, 57.4, 68.9", "8.0, 27.5, 34.4, 45.9", "7.5, 11.5, 18.4, 23.0", "7.0, 2.3, 3.4, 6.9"})
    void sulfurForAlkalineSoil(double ph, double sand, double loam, double clay) {
        List<Double> found = List.of(Texture.Group.SAND, Texture.Group.LOAM, Texture.Group.CLAY).stream()
                .map(group -> ALKALINE.lbAcre(ph, 6.5, group).orElseThrow() * LB_M_PER_LB_ACRE)
                .toList();
        assertThat(found.get(0)).isCloseTo(sand, within(0.05));
        assertThat(found.get(1)).isCloseTo(loam, within(0.05));
        assertThat(found.get(2)).isCloseTo(clay, within(0.05));
        assertThat(ALKALINE.lbAcre(9, 6.5, Texture.Group.SAND)).isEmpty();
    }

    /** Purdue's limits of 5 lb at a time and 10 a year: the third dressing of 11.5 falls into the second year. */
    @Test
    void sulfurIsSpreadOverYears() {
        List<Double> doses = Doses.split(11.5, 5);
        assertThat(doses).hasSize(3);
        assertThat(Doses.years(doses, 10)).containsExactly(1, 1, 2);
    }

    /** Ali, section 8.7: ESP 35 to 15, CEC 22, 40 cm; with a safety factor of 1.25 28.23 t/ha. */
    @Test
    void gypsumByTheRule() {
        double meq = Gypsum.sodiumToReplaceMeq(22, 35, 15);
        assertThat(meq).isCloseTo(4.4, within(1e-9));
        assertThat(Gypsum.ruleTHa(meq, 0.40)).isCloseTo(22.587, within(5e-4));
        assertThat(1.25 * Gypsum.ruleTHa(meq, 0.40)).isCloseTo(28.23, within(5e-3));
        assertThat(Gypsum.sodiumToReplaceMeq(22, 10, 15)).isZero();
    }

    /** Ali, section 8.7: the same rule in its US form, 1.7 short tons an acre-foot for each meq; one decimal is printed. */
    @Test
    void gypsumByTheRuleInShortTons() {
        double tHa = Gypsum.ruleTHa(1, 12 * Factors.M_PER_IN);
        assertThat(tHa / 10 / SoilMass.KG_M2_PER_LB_ACRE / 2000).isCloseTo(1.7, within(0.05));
    }

    /** Derived: 1 lb of sulfur neutralises 3.12 lb of CaCO₃; 1 % of it in a furrow slice takes 147 lb on 1,000 ft². */
    @Test
    void sulfurThatFreeCarbonateUsesUp() {
        double lbAcre = SulfurAdvice.carbonateLbAcre(1);
        assertThat(0.01 * SoilMass.FURROW_SLICE_LB_ACRE / lbAcre).isCloseTo(3.12, within(5e-3));
        assertThat(lbAcre).isCloseTo(6407, within(1.0));
        assertThat(lbAcre * LB_M_PER_LB_ACRE).isCloseTo(147, within(0.5));
    }

    /** Purdue: 5 lb at a time, 10 a year, above pH 7.5. Southern Lawns (second-hand): 218 to 436 lb/acre are 5 to 10 lb. */
    @Test
    void sulfurHasItsLimitsOnTurf() {
        NamedRow cap = SoilTables.published().rows("sulfur-caps.csv").get(0);
        assertThat(cap.number("most_lb_1000ft2")).isEqualTo(5);
        assertThat(cap.number("most_year_lb_1000ft2")).isEqualTo(10);
        assertThat(cap.number("act_above_ph")).isEqualTo(7.5);
        assertThat(5 * 43.56).isCloseTo(218, within(0.5));
        assertThat(10 * 43.56).isCloseTo(436, within(0.5));
    }

    /** Oster, Shainberg & Abrol 1999, as given by North Dakota State University; value derived. */
    @Test
    void gypsumByOster() {
        assertThat(Gypsum.osterTHa(1.1, 0.40, 1.4, 4.4)).isCloseTo(23.31, within(5e-3));
    }

    /** Derived from the weight of CaSO₄·2H₂O. */
    @Test
    void gypsumByTheory() {
        assertThat(Gypsum.theoryLbAcre(1)).isCloseTo(1722, within(0.5));
        assertThat(Gypsum.theoryLbAcre(1) * LB_M_PER_LB_ACRE).isCloseTo(39.5, within(0.05));
        double sixInches = Gypsum.theoryLbAcre(1) * 6 * Factors.M_PER_IN / SoilMass.FURROW_SLICE_M;
        assertThat(sixInches).isCloseTo(1550, within(0.5));
        assertThat(sixInches * LB_M_PER_LB_ACRE).isCloseTo(35.6, within(0.05));
        // an acre-foot of 3,600,000 lb: 1.55 short tons; taken as 4,000,000 lb: 1.72, to which the rule of 1.7 belongs
        assertThat(2 * sixInches / 2000).isCloseTo(1.55, within(5e-3));
        assertThat(2 * Gypsum.theoryLbAcre(1) / 2000).isCloseTo(1.72, within(5e-3));
    }

    /** From memory of USDA Handbook 60; values derived. */
    @ParameterizedTest
    @CsvSource({"18, 20.19", "5, 5.76", "10, 11.89", "13, 15.19", "15, 17.26"})
    void sodiumShareFromTheExtract(double sar, double espPct) {
        assertThat(Salinity.espPct(sar)).isCloseTo(espPct, within(5e-3));
    }

    @Test
    void sodiumAdsorptionRatio() {
        assertThat(Salinity.sar(36, 6, 2)).isCloseTo(18.0, within(1e-9)); // derived
        assertThat(Salinity.espPct(0)).isZero();
    }
}
