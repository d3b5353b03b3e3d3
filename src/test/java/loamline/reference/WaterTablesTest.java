package loamline.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.List;
import org.junit.jupiter.api.Test;

class WaterTablesTest {
    /** Means of the twelve published factors, worked out by hand. */
    @Test
    void turfCoefficientsAreThoseOfTheirTable() {
        assertThat(TurfCoefficients.published())
                .extracting(TurfCoefficients::grass)
                .containsExactly("cool season", "warm season", "bahiagrass");
        assertThat(mean("cool season")).isCloseTo(0.788, within(0.0005));
        assertThat(mean("warm season")).isCloseTo(0.651, within(0.0005));
        assertThat(TurfCoefficients.of(" BAHIAGRASS ").orElseThrow().of(Month.MAY))
                .isEqualTo(0.90);
        assertThat(TurfCoefficients.of("moss")).isEmpty();
    }

    private static double mean(String grass) {
        return TurfCoefficients.of(grass).orElseThrow().byMonth().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }

    /** Coarser soil holds less and takes in faster; a steeper slope holds less: the order of the whole table. */
    @Test
    void soilsGoFromFineToCoarse() {
        List<SoilWater> soils = SoilWater.published();
        assertThat(soils)
                .extracting(SoilWater::texture)
                .containsExactly("clay", "silty clay", "clay loam", "loam", "sandy loam", "loamy sand", "sand");
        assertThat(soils).extracting(SoilWater::intakeMmH).isSorted();
        for (SoilWater soil : soils) {
            assertThat(soil.accumulationMm()).isSortedAccordingTo((a, b) -> Double.compare(b, a));
            assertThat(soil.source().citation()).contains("Irrigation Association");
        }
    }

    @Test
    void wrongRowsAreRefused() {
        SoilWater loam = SoilWater.of("loam").orElseThrow();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SoilWater("x", 1.2, 1, loam.accumulationMm(), loam.source()));
        assertThatIllegalArgumentException().isThrownBy(() -> new SoilWater("x", 0.1, 1, List.of(1.0), loam.source()));
        assertThatIllegalArgumentException().isThrownBy(() -> new TurfCoefficients("x", List.of(1.0), loam.source()));
    }
}
