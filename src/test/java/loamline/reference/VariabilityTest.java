package loamline.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VariabilityTest {
    /** University of Kentucky SB271, table 1, 25 fields: least, median and most CV, derived from its means and SDs. */
    @ParameterizedTest
    @CsvSource({"P, 18, 74, 118", "K, 20, 30, 49", "OM, 12, 17, 37"})
    void aFigureIsTheMedianOfTheFieldsToFourPerCent(String element, double least, double median, double most) {
        double cvPct = held(element);
        assertThat(cvPct).isBetween(least, most).isCloseTo(median, within(4.0));
    }

    /** The same, field 37: P 44.1 ± 14.6, K 272.4 ± 82.8, OM 3.13 ± 0.57; its K and OM are the figures held. */
    @ParameterizedTest
    @CsvSource({"P, 44.1, 14.6, 33.1", "K, 272.4, 82.8, 30.4", "OM, 3.13, 0.57, 18.2"})
    void aFieldOfMiddlingSpread(String element, double mean, double sd, double cvPct) {
        assertThat(100 * sd / mean).isCloseTo(cvPct, within(0.05));
        assertThat(held(element)).isGreaterThanOrEqualTo(Math.floor(cvPct));
    }

    private static double held(String element) {
        return Variability.published().stream()
                .filter(row -> row.element().equals(element))
                .findFirst()
                .orElseThrow()
                .cvPct();
    }

    @Test
    void everyRowHasAFigureAndASource() {
        assertThat(Variability.published()).extracting(Variability::element).containsExactly("P", "K", "OM");
        assertThat(Variability.published())
                .allMatch(row -> row.cvPct() > 0 && row.source().citation().contains("SB271"))
                .noneMatch(row -> row.source().citation().contains("\""));
    }
}
