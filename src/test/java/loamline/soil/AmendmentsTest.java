package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.reference.SoilTables;
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
