package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import loamline.Laws;
import loamline.yard.Kind;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What holds for every season that rests on laboratory values, beside water and under a law. */
class SeasonLawsTest {
    @Property(seed = Laws.SEED, tries = 30)
    void noPlanBreaksACapALawABanOrASetback(@ForAll long seed) {
        LabSeasons.Case made = LabSeasons.of(seed);
        Season season = Season.of(made.inputs());
        assertThat(PlanAudit.broken(made, season)).isEmpty();
    }

    @Test
    void aSliverThatTheSetbackLeavesIsNoGroundToSpreadOn() {
        Yard yard = YardFixtures.yard(
                YardFixtures.turf("lawn", YardFixtures.box(0, 0, 10, 10)),
                YardFixtures.cover(Kind.WATER, YardFixtures.box(0, -1, 10, 0)));
        assertThat(Ground.of(yard, 9.995).get(0).treatedM2()).isZero();
        assertThat(Ground.of(yard, 9.9).get(0).treatedM2()).isCloseTo(1, within(1e-9));
    }

    /** Else the law above would hold for want of cases. */
    @Test
    void theCasesReachEveryRule() {
        Set<String> spread = new HashSet<>();
        for (long seed = 0; seed < 50; seed++) {
            LabSeasons.Case made = LabSeasons.of(seed);
            Season season = Season.of(made.inputs());
            assertThat(PlanAudit.broken(made, season)).as("seed " + seed).isEmpty();
            season.tasks().forEach(task -> spread.add(task.product()));
            boolean isSetBack = made.inputs().grounds().stream().anyMatch(g -> g.treatedM2() < g.netM2());
            spread.add(isSetBack ? "set back" : season.isOptimal() ? "planned" : "blocked");
        }
        assertThat(spread)
                .contains(
                        "urea",
                        "triple",
                        "potash",
                        "ground lime",
                        "sulfur",
                        "gypsum",
                        "set back",
                        "planned",
                        "blocked");
    }
}
