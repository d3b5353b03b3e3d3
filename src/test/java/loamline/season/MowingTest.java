package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import loamline.reference.TurfTables;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heights of the mower, in inches as printed. */
class MowingTest {
    private static final double IN = Factors.M_PER_IN;

    private static Mowing mowing(String grass, String region) {
        TurfTables tables = TurfTables.published();
        return Mowing.of(tables.grass(grass).orElseThrow(), region, tables).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        // derived from the rule of a third; Purdue University's example says 4.0, which takes but a quarter
        "3.0, 4.5",
        // the same, and the table of University of California IPM agrees
        "1.0, 1.5",
        "2.0, 3.0",
    })
    void grassIsCutBeforeItStandsHalfAsHighAgain(double set, double standing) {
        assertThat(Mowing.standingM(set * IN) / IN).isCloseTo(standing, within(1e-12));
        assertThat(1 - set / standing).isLessThanOrEqualTo(1.0 / 3 + 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        // Purdue University, AY-8
        "Kentucky bluegrass, indiana, 2.5, 3.5",
        "perennial ryegrass, indiana, 2.5, 3.5",
        "fine fescue, indiana, 2.5, 3.5",
        "tall fescue, indiana, 3.0, 4.0",
        "zoysia, indiana, 1.0, 1.0",
        // North Carolina Cooperative Extension Franklin: 3 to 3.5 in spring, 3.5 to 4 in summer
        "tall fescue, north carolina, 3.0, 4.0",
    })
    void theMowerIsSetAsTheRegionSays(String grass, String region, double low, double high) {
        assertThat(mowing(grass, region).lowM() / IN).isCloseTo(low, within(1e-12));
        assertThat(mowing(grass, region).highM() / IN).isCloseTo(high, within(1e-12));
        assertThat(mowing(grass, region).region()).isEqualTo(region);
    }

    /** University of California IPM, mowing warm-season turf: set to, cut at. */
    @ParameterizedTest
    @CsvSource({
        "bermudagrass, 1, 1.5, 1.5, 2.25",
        "buffalograss, 1, 2, 1.5, 3",
        "St. Augustine, 1, 2, 1.5, 3",
        "zoysia, 0.5, 1, 0.75, 1.5",
    })
    void warmSeasonGrassIsSetAndCutAsCaliforniaPrints(String grass, double low, double high, double from, double to) {
        Mowing mowing = mowing(grass, "california");
        assertThat(mowing.lowM() / IN).isCloseTo(low, within(1e-12));
        assertThat(mowing.highM() / IN).isCloseTo(high, within(1e-12));
        assertThat(Mowing.standingM(mowing.lowM()) / IN).isCloseTo(from, within(1e-12));
        assertThat(Mowing.standingM(mowing.highM()) / IN).isCloseTo(to, within(1e-12));
    }

    @Test
    void shadeAddsHalfAnInchToAnInch() {
        // Purdue University, AY-8: tall fescue at 3.0 in is left at 3.5 to 4.0 in shade
        Mowing sun = mowing("tall fescue", "indiana");
        assertThat(sun.inShade().lowM() / IN).isCloseTo(3.5, within(1e-12));
        assertThat((sun.inShade().highM() - sun.highM() + sun.lowM()) / IN).isCloseTo(4.0, within(1e-12));
    }

    @Test
    void whereARegionHasNoFigureAnotherSpeaksAndIsNamed() {
        assertThat(mowing("tall fescue", "kansas").region()).isEqualTo("indiana");
        TurfTables tables = TurfTables.published();
        assertThat(Mowing.of(tables.grass("bentgrass").orElseThrow(), "indiana", tables))
                .isEmpty();
    }
}
