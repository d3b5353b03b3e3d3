package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.soil.Element;
import loamline.soil.LabValue;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;

/** The phosphate of compost counts: it is taken off the need, and the law sees it. */
class CompostTest {
    private static final double LB = Factors.G_M2_PER_LB_1000FT2;
    private static final LocalDate SPRING = LocalDate.of(2027, 4, 1);
    private static final List<Product> LIST = List.of(
            Products.of("slow 24-0-8", 24, 0, 8, 45, 0),
            Products.of("urea 46-0-0", 46, 0, 0),
            Products.of("triple 0-46-0", 0, 46, 0),
            Products.of("sulfate 0-0-50", 0, 0, 50));
    /** 1,000 lb/yd³, 60 % dry. */
    private static final double KG_M3 = 1000 * Factors.KG_PER_LB / Factors.M3_PER_YD3;

    private static Target target(double inches, OptionalDouble pPct) {
        Target.Compost compost = new Target.Compost(pPct, OptionalDouble.of(60), OptionalDouble.of(KG_M3));
        return new Target(
                "Lawn",
                "tall fescue",
                "virginia",
                "medium",
                OptionalDouble.of(2 * LB),
                Target.Seed.NONE,
                inches * Factors.MM_PER_IN,
                Target.Keeping.USUAL,
                compost,
                2);
    }

    /** A lawn tested on a day, low or high in phosphorus; invented. */
    private static Season season(Target target, double phosphorusPpm, SeasonOptions options) {
        List<LabValue> lab = List.of(lab(Element.P, phosphorusPpm), lab(Element.K, 30));
        Ground lawn = new Ground("Lawn", "tall fescue", 400, 400);
        return Season.of(new SeasonInputs(List.of(lawn), lab, LIST, List.of(), List.of(target), options));
    }

    private static LabValue lab(Element element, double ppm) {
        LabValue.Made made = LabValue.Made.of(element, "ppm", "Mehlich-3", "", OptionalDouble.of(0.1016));
        return new LabValue("A", List.of("Lawn"), element, ppm, made, "invented", Optional.of(SPRING), 2);
    }

    private static List<String> codes(Season season) {
        return season.problems().stream()
                .map(Problem::code)
                .filter(code -> code.startsWith("COMPOST"))
                .toList();
    }

    private static ZoneSeason only(Season season) {
        return season.zones().get(0);
    }

    @Test
    void itsPhosphateIsTakenOffTheNeedAndItsAccountSaysHow() {
        double inches = 0.02;
        Season without = season(target(0, OptionalDouble.of(0.5)), 10, SeasonOptions.from(SPRING));
        Season with = season(target(inches, OptionalDouble.of(0.5)), 10, SeasonOptions.from(SPRING));
        double need = only(without).remaining(Nutrient.P2O5).orElseThrow();
        // derived: a quarter inch brings 5.30 lb P2O5/M, so so much of it by depth
        double brought = 3.0864 * inches * 1000 * 0.60 * 0.005 * 2.29 * LB;
        assertThat(only(with).compostGM2(Nutrient.P2O5)).isCloseTo(brought, within(1e-4));
        assertThat(need).isGreaterThan(brought);
        assertThat(only(with).remaining(Nutrient.P2O5).orElseThrow()).isCloseTo(need - brought, within(1e-4));
        assertThat(only(with).need()).isEqualTo(only(without).need());
        assertThat(with.accounts().get("/zones/0/compost/P2O5").formula()).startsWith("P2O5 = depth");
        assertThat(without.accounts()).doesNotContainKey("/zones/0/compost/P2O5");
        assertThat(spread(with)).isLessThan(spread(without));
        assertThat(codes(with)).isEmpty();
    }

    private static double spread(Season season) {
        return season.tasks().stream()
                .filter(task -> task.product().startsWith("triple"))
                .mapToDouble(Task::kg)
                .sum();
    }

    @Test
    void moreThanIsNeededIsSaid() {
        Season season = season(target(0.25, OptionalDouble.of(0.5)), 10, SeasonOptions.from(SPRING));
        assertThat(only(season).remaining(Nutrient.P2O5)).hasValue(0);
        assertThat(spread(season)).isZero();
        assertThat(codes(season)).containsExactly("COMPOST_BEYOND_NEED");
    }

    @Test
    void withoutItsAnalysisNothingIsTakenOffAndItIsAskedFor() {
        Season season = season(target(0.25, OptionalDouble.empty()), 10, SeasonOptions.from(SPRING));
        assertThat(only(season).compostGM2(Nutrient.P2O5)).isZero();
        assertThat(only(season).questions()).anyMatch(words -> words.contains("compost_p_pct"));
        assertThat(codes(season)).isEmpty();
    }

    @Test
    void theLawSeesItWhereNoTestShowsANeed() {
        SeasonOptions maryland = SeasonOptions.from(SPRING).in("MD");
        assertThat(codes(season(target(0.02, OptionalDouble.of(0.5)), 500, maryland)))
                .containsExactlyInAnyOrder("COMPOST_BEYOND_NEED", "COMPOST_BARRED");
        assertThat(codes(season(target(0.02, OptionalDouble.of(0.5)), 10, maryland)))
                .isEmpty();
    }

    @Test
    void michiganLetsALittlePhosphorusOfOrganicsPass() {
        // Michigan PA 299 of 2010 (second-hand): no more than 0.25 lb P, not P2O5, on 1,000 ft² at a time
        SeasonOptions michigan = SeasonOptions.from(SPRING).in("MI");
        double inches = 0.25 / (3.0864 * 1000 * 0.60 * 0.005);
        assertThat(codes(season(target(0.999 * inches, OptionalDouble.of(0.5)), 500, michigan)))
                .containsExactly("COMPOST_BEYOND_NEED");
        assertThat(codes(season(target(1.001 * inches, OptionalDouble.of(0.5)), 500, michigan)))
                .contains("COMPOST_BARRED");
    }

    @Test
    void floridaCapsItAsAnyPhosphate() {
        // Florida 5E-1.003 (second-hand): 0.25 lb P2O5 on 1,000 ft² at a time
        SeasonOptions florida = SeasonOptions.from(SPRING).in("FL");
        double inches = 0.25 / (3.0864 * 1000 * 0.60 * 0.005 * 2.29);
        assertThat(codes(season(target(0.999 * inches, OptionalDouble.of(0.5)), 10, florida)))
                .isEmpty();
        assertThat(codes(season(target(1.001 * inches, OptionalDouble.of(0.5)), 10, florida)))
                .contains("COMPOST_ABOVE_CAP");
    }
}
