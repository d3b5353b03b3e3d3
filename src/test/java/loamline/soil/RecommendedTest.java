package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.account.Problem;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;

/** The laboratory's own recommendation: beside our number, and in its place where we have none. */
class RecommendedTest {
    private static final double LB_M = Factors.G_M2_PER_LB_1000FT2;

    private static SampleResult report(LabValue... values) {
        return SoilReport.of(List.of(values), SoilOptions.USUAL).samples().get(0);
    }

    private static LabValue recommended(String element, double lbM) {
        return Values.withoutDepth(Values.of(element, lbM, "lb/1000 ft²", ""));
    }

    @Test
    void itIsTakenWhereNoGuidelineFitsTheExtractantAndTheAccountSaysSo() {
        Advice<Double> need = report(Values.of("K", 88, "ppm", "modified Morgan"), recommended("recK2O", 2))
                .needs()
                .k2oGM2();
        assertThat(need.value().orElseThrow() / LB_M).isCloseTo(2, within(1e-12));
        assertThat(need.account().orElseThrow().note())
                .contains("Taken because no rule is held that turns K by modified Morgan into an amount");
        assertThat(need.account().orElseThrow().inputs()).containsEntry("laboratory", "lab");
        assertThat(need.account().orElseThrow().sources())
                .extracting(s -> s.id())
                .containsExactly("laboratory");
    }

    @Test
    void itIsTakenWhereTheTestHasNoValueAtAll() {
        SampleResult sample = report(recommended("recP2O5", 1), recommended("recLime", 50));
        assertThat(sample.needs().p2o5GM2().value().orElseThrow() / LB_M).isCloseTo(1, within(1e-12));
        assertThat(sample.needs().k2oGM2().isGiven()).isFalse();
        assertThat(sample.lime().value().orElseThrow().cceKgM2() * 1000 / LB_M).isCloseTo(50, within(1e-9));
        assertThat(sample.lime().value().orElseThrow().method()).contains("laboratory");
    }

    @Test
    void itStandsBesideOurNumberWhereThereIsOne() {
        SampleResult sample = report(Values.of("K", 20, "ppm", "Mehlich-3"), recommended("recK2O", 0.5));
        assertThat(sample.recommended().k2oGM2().orElseThrow() / LB_M).isCloseTo(0.5, within(1e-12));
        assertThat(sample.needs().k2oGM2().value().orElseThrow()).isGreaterThan(0.5 * LB_M);
        assertThat(sample.needs().k2oGM2().account().orElseThrow().sources())
                .noneMatch(s -> s.id().equals("laboratory"));
    }

    @Test
    void limeItRecommendsIsSplitLikeAnyOther() {
        Lime lime = report(Values.of("pH", 5.2, "", "water"), recommended("recLime", 230))
                .lime()
                .value()
                .orElseThrow();
        assertThat(lime.dosesKgM2()).hasSize(3); // 100 lb at most, Penn State AASL, Home Lawn - Maintain
        assertThat(report(Values.of("pH", 6.8, "", "water"), recommended("recLime", 50))
                        .lime()
                        .value()
                        .orElseThrow()
                        .cceKgM2())
                .isZero();
    }

    @Test
    void aPlainValueOfTheSoilIsNotTakenForOne() {
        List<Problem> problems = SoilReport.of(List.of(Values.of("recK2O", 90, "ppm", "")), SoilOptions.USUAL)
                .problems();
        assertThat(problems).extracting(Problem::code).contains("LAB_UNIT_UNFIT");
        assertThat(report(Values.of("recK2O", 90, "ppm", "")).recommended().k2oGM2())
                .isEmpty();
    }

    @Test
    void itAsksForNeitherDepthNorExtractantNorMethod() {
        assertThat(SoilReport.of(List.of(recommended("recK2O", 1)), SoilOptions.USUAL)
                        .problems())
                .isEmpty();
    }
}
