package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seed and fertilizer as tasks for a person with a spreader. */
class GroundTasksTest {
    private static final double LB = Factors.G_M2_PER_LB_1000FT2;
    private static final SeasonOptions SPRING = SeasonOptions.from(LocalDate.of(2027, 4, 1));

    private static Target target(String grass, OptionalDouble bareShare, double nLb) {
        Target usual = Target.of("Lawn");
        return new Target(
                "Lawn",
                grass,
                "virginia",
                "medium",
                OptionalDouble.of(nLb * LB),
                new Target.Seed(List.of(), bareShare, OptionalDouble.empty(), OptionalDouble.empty()),
                0,
                usual.keeping(),
                usual.compost(),
                2);
    }

    private static Season season(Target target, List<Product> products, SeasonOptions options) {
        Ground lawn = new Ground("Lawn", "", 3000 * Factors.M2_PER_FT2, 3000 * Factors.M2_PER_FT2);
        return Season.of(new SeasonInputs(List.of(lawn), List.of(), products, List.of(), List.of(target), options));
    }

    private static Task seed(String grass, double sunHours, SeasonOptions options) {
        SeasonInputs inputs = season(target(grass, OptionalDouble.of(0.45), 0), List.of(), options)
                .inputs()
                .withSun(Map.of("Lawn", sunHours));
        return Season.of(inputs).tasks().get(0);
    }

    @Test
    void aPartlyBareLawnTakesTheFullRateThereAndHalfElsewhere() {
        // derived: tall fescue at 7 lb/M, 45 % bare over 3,000 ft²: 15.2 lb
        assertThat(seed("tall fescue", 8, SPRING).kg() / Factors.KG_PER_LB).isCloseTo(15.2, within(0.05));
    }

    @Test
    void aMixByWeightIsToldByCountToo() {
        // derived from Cornell's seeds in a pound: 30 % bluegrass by weight is 72 % by count
        Target plain = target("tall fescue", OptionalDouble.of(1), 0);
        Target.Seed mix = new Target.Seed(
                List.of(new Target.Part("Kentucky bluegrass", 30), new Target.Part("perennial ryegrass", 70)),
                OptionalDouble.of(1),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Target mixed = new Target(
                plain.zone(),
                plain.grass(),
                plain.region(),
                plain.use(),
                plain.nGM2(),
                mix,
                0,
                plain.keeping(),
                plain.compost(),
                2);
        assertThat(season(mixed, List.of(), SPRING).tasks().get(0).reason())
                .endsWith("by count 72 % Kentucky bluegrass, 28 % perennial ryegrass");
    }

    /** Hours: W. Reeves, University of Georgia Extension (second-hand); bermuda Bunnell et al. 2005. */
    @ParameterizedTest
    @CsvSource({
        "tall fescue, 6.0, ''",
        "tall fescue, 5.0, sow one that bears shade",
        "fine fescue, 5.0, ''",
        "fine fescue, 3.9, change the use",
    })
    void seedThatWantsMoreSunIsToldSo(String grass, double hours, String words) {
        List<String> cautions = seed(grass, hours, SPRING).cautions();
        if (words.isEmpty()) {
            assertThat(cautions).noneMatch(caution -> caution.contains("direct sun"));
        } else {
            assertThat(cautions).anyMatch(caution -> caution.contains("direct sun") && caution.contains(words));
        }
    }

    @Test
    void coolSeasonSeedWantsFortyFiveDaysBeforeFrost() {
        // from memory of extension practice: 45 days; sown on September 1, so frost on October 16 or later will do
        assertThat(seed("tall fescue", 8, SPRING.withFrost(MonthDay.of(10, 16))).cautions())
                .noneMatch(caution -> caution.contains("frost"));
        assertThat(seed("tall fescue", 8, SPRING.withFrost(MonthDay.of(10, 15))).cautions())
                .anyMatch(caution -> caution.contains("2027-08-31"));
    }

    @Test
    void aDoseIsSpreadInTwoHalvesAcrossEachOther() {
        // Rutgers: New Jersey's 0.9 lb N at most is 0.45 a pass. University of Massachusetts: 20-5-10 at 1 lb N/M is
        // 5.00
        // lb/M, 2.5 each way
        Product product = Products.of("20-0-10", 20, 0, 10, 40, 0);
        Season jersey = season(target("tall fescue", OptionalDouble.empty(), 2.4), List.of(product), SPRING.in("NJ"));
        assertThat(jersey.tasks()).isNotEmpty().allSatisfy(task -> {
            assertThat(task.passes()).isEqualTo(2);
            assertThat(1000 * task.kgM2() / task.passes() * 0.20 / LB).isLessThanOrEqualTo(0.45 + 1e-9);
        });
        double rate = 1 / product.material().of(loamline.season.blend.Quantity.N);
        assertThat(rate / jersey.tasks().get(0).passes()).isEqualTo(2.5);
    }
}
