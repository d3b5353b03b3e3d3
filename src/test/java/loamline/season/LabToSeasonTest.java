package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.reference.SoilTables;
import loamline.soil.Element;
import loamline.soil.LabValue;
import loamline.soil.LimeTable;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;

/** From a laboratory's report to what is bought. */
class LabToSeasonTest {
    private static final LocalDate SPRING = LocalDate.of(2027, 4, 1);

    /** Derived from Penn State AASL, Lime Recommendations Turf: acidity 6.5 to pH 6.5, 110 lb; 4,200 ft² in 40 lb bags. */
    @Test
    void aLawnOf4200SquareFeetTakesTwelveBagsOfLime() {
        double lbM = LimeTable.of(SoilTables.published(), "penn-state")
                .rate(6.5, 6.5)
                .orElseThrow();
        double areaM2 = 4200 * Factors.M_PER_FT * Factors.M_PER_FT;
        double kg = lbM * Factors.G_M2_PER_LB_1000FT2 / 1000 * areaM2;
        assertThat(kg / Factors.KG_PER_LB).isCloseTo(462, within(1e-6));
        assertThat(Math.ceil(kg / (40 * Factors.KG_PER_LB))).isEqualTo(12);
    }

    private static LabValue value(Element element, double value, String unit, String extractant) {
        return new LabValue(
                "A",
                List.of("Lawn"),
                element,
                value,
                LabValue.Made.of(element, unit, extractant, "", OptionalDouble.of(0.1016)),
                "Thistlewick Make-Believe Soil Lab",
                Optional.of(SPRING),
                2);
    }

    @Test
    void theLaboratorysOwnRecommendationIsTheNeedWhereNoGuidelineFitsItsExtractant() {
        List<LabValue> lab =
                List.of(value(Element.K, 88, "ppm", "modified Morgan"), value(Element.REC_K2O, 2, "lb/1000 ft2", ""));
        Season season = Season.of(new SeasonInputs(
                List.of(new Ground("Lawn", "Kentucky bluegrass", 400, 400)),
                lab,
                List.of(Products.of("sulfate 0-0-50", 0, 0, 50)),
                List.of(),
                List.of(),
                SeasonOptions.from(SPRING)));
        ZoneSeason lawn = season.zones().get(0);
        assertThat(lawn.need().get(Nutrient.K2O) / Factors.G_M2_PER_LB_1000FT2).isCloseTo(2, within(1e-9));
        assertThat(lawn.accounts().get(Nutrient.K2O).note()).contains("Taken because no rule is held");
        assertThat(lawn.questions()).noneMatch(question -> question.startsWith("potash"));
    }
}
