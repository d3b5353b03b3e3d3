package loamline.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class VariabilityTest {
    @Test
    void everyRowHasAFigureAndASource() {
        assertThat(Variability.published()).extracting(Variability::element).containsExactly("P", "K", "OM");
        assertThat(Variability.published())
                .allMatch(row -> row.cvPct() > 0 && row.source().citation().contains("SB271"))
                .noneMatch(row -> row.source().citation().contains("\""));
    }
}
