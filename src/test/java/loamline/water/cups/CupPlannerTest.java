package loamline.water.cups;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import loamline.files.YardFiles;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.water.HeadPattern;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;
import loamline.yard.Zone;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CupPlannerTest {
    private static final Yard PLOVER =
            YardFiles.read(Path.of("maps/plover-court.geojson")).yard().orElseThrow();
    private static final double THROAT_CM2 = 100;

    /** Places are rounded to a centimetre. */
    private static final double ROUNDING_M = 0.01;

    @ParameterizedTest
    @ValueSource(strings = {"1", "2", "3"})
    void laysEnoughCupsInsideTheTurfAndOffTheHeads(String valve) {
        CupPlan plan = CupPlanner.of(PLOVER, valve, List.of(), THROAT_CM2);
        Region turf = Region.union(Zones.of(PLOVER).stream().map(Zone::net).toList());
        List<HeadPattern> heads =
                List.copyOf(ValveHeads.of(PLOVER, valve).byId().values());
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.cups()).hasSizeGreaterThanOrEqualTo(CupPlanner.LEAST_CUPS);
        assertThat(plan.cups().size() % 4).isZero();
        for (Point cup : plan.cups()) {
            assertThat(turf.covers(cup)).isTrue();
            assertThat(turf.distanceToEdge(cup)).isGreaterThan(CupPlanner.EDGE_M - ROUNDING_M);
            assertThat(heads)
                    .allSatisfy(head ->
                            assertThat(head.at().distanceTo(cup)).isGreaterThan(CupPlanner.EDGE_M - ROUNDING_M));
        }
        assertThat(heads)
                .allSatisfy(head -> assertThat(plan.cups().stream().filter(cup -> head.reaches(cup.x(), cup.y())))
                        .hasSizeGreaterThanOrEqualTo(HeadFindings.LEAST_CUPS_A_HEAD));
    }

    @Test
    void aHoleBetweenHeadsGetsACup() {
        Region hole = Region.around(new Point(22, 36), 1.5);
        assertThat(CupPlanner.of(PLOVER, "2", List.of(), THROAT_CM2).cups()).anyMatch(hole::covers);
    }

    @Test
    void onlyValvesNearAConcernAreWorthATest() {
        List<CupPlan> plans = CupPlanner.worthwhile(PLOVER, Concern.troubles(PLOVER), THROAT_CM2);
        assertThat(plans).extracting(CupPlan::valve).contains("2").doesNotContain("1");
        assertThat(plans).allSatisfy(plan -> assertThat(plan.reasons()).isNotEmpty());
        assertThat(CupPlanner.worthwhile(PLOVER, List.of(), THROAT_CM2)).isEmpty();
    }

    @Test
    void theValveRunsUntilTheMeanCatchCanBeRead() {
        CupPlan plan = CupPlanner.of(PLOVER, "2", List.of(), THROAT_CM2);
        double ml = plan.modelMmH() * THROAT_CM2 * plan.minutes() / 600;
        assertThat(ml).isBetween(CupDoubts.READABLE_ML, CupDoubts.READABLE_ML * (1 + 1.0 / plan.minutes()) + 0.5);
        assertThat(CupPlanner.of(PLOVER, "2", List.of(), 10_000).minutes()).isEqualTo(15);
    }

    @Test
    void aStripTooSmallForATestIsTold() {
        Yard strip = YardFixtures.yard(
                YardFixtures.turf("Strip", YardFixtures.box(0, 0, 10, 1)),
                FourHeads.yard().features().get(1));
        assertThat(CupPlanner.of(strip, FourHeads.VALVE, List.of(), THROAT_CM2).problems())
                .extracting(problem -> problem.code())
                .containsExactly("CUP_PLAN_SMALL");
    }
}
