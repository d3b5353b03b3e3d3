package loamline.sampling;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import loamline.account.Problem;
import loamline.geometry.Point;
import loamline.yard.Core;
import loamline.yard.Extras;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class WalkDoubtsTest {
    private static Yard withCoreAt(double x, double y) {
        return yard(
                turf("lawn", box(0, 0, 20, 10)),
                building(box(0, 10, 20, 20)),
                gate(1, 1),
                new Core("c", "A1", "A", "lawn", new Point(x, y), false, Extras.NONE));
    }

    @Test
    void aCoreJustInsideAWallIsWalkedToFromOutsideAndSaysSo() {
        CorePlan plan = CorePlanner.keep(withCoreAt(10, 10.03), PlanOptions.USUAL);
        assertThat(plan.problems()).extracting(Problem::code).containsExactly("STOP_ASTRAY");
        assertThat(plan.problems().get(0).message()).contains("lies 30 mm inside an obstacle");
        assertThat(plan.walks().get(0).proven()).isTrue();
    }

    @Test
    void aCoreOnOpenGroundHasNoDoubts() {
        assertThat(CorePlanner.keep(withCoreAt(10, 5), PlanOptions.USUAL).problems())
                .isEmpty();
    }

    @Test
    void wallsThatWereMovedAreTold() {
        assertThat(WalkDoubts.of("A", 0)).isEmpty();
        assertThat(WalkDoubts.of("A", 0.12))
                .singleElement()
                .satisfies(problem -> assertThat(problem.message())
                        .contains("moved by up to 0.12 m")
                        .contains("narrower than 0.24 m"));
        assertThat(WalkDoubts.of("A", Double.POSITIVE_INFINITY))
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).contains("left no ground"));
    }
}
