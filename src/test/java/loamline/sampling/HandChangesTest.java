package loamline.sampling;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.account.Problem;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Stratum;
import loamline.yard.Core;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class HandChangesTest {
    private static final Yard YARD = yard(
            turf("front", box(0, 0, 30, 12)),
            turf("back", box(0, 22, 30, 40)),
            building(box(8, 12, 24, 22)),
            gate(29, 15));
    private static final CorePlan PLAN = CorePlanner.standing(YARD);
    private static final Yard WRITTEN = HandChanges.written(YARD, PLAN);

    private static PlannedCore core(CorePlan plan, String id) {
        return plan.cores().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    private static Stratum stratum(CorePlan plan, String id) {
        PlannedCore core = core(plan, id);
        return plan.composites().stream()
                .filter(bag -> bag.name().equals(core.composite()))
                .findFirst()
                .orElseThrow()
                .strata()
                .get(core.stratum() - 1);
    }

    private static List<String> codes(CorePlan plan) {
        return plan.problems().stream().map(Problem::code).toList();
    }

    @Test
    void writingThePlanDownChangesNeitherCoresNorWalksNorStrata() {
        CorePlan kept = CorePlanner.standing(WRITTEN);
        assertThat(kept.problems()).isEmpty();
        assertThat(kept.composites())
                .extracting(CorePlan.Composite::name, CorePlan.Composite::zones, CorePlan.Composite::strata)
                .isEqualTo(PLAN.composites().stream()
                        .map(bag -> tuple(bag.name(), bag.zones(), bag.strata()))
                        .toList());
        assertThat(kept.merges()).isEqualTo(PLAN.merges());
        for (PlannedCore was : PLAN.cores()) {
            PlannedCore is = core(kept, was.id());
            assertThat(is.at()).isEqualTo(Frame.onStep(was.at()));
            assertThat(is.spareOf()).isEqualTo(was.spareOf());
            assertThat(is.stratum()).isEqualTo(was.stratum());
            assertThat(is.zone()).isEqualTo(was.zone());
        }
        assertThat(kept.totalWalkM()).isCloseTo(PLAN.totalWalkM(), within(1e-4)); // places are kept to a micrometre
    }

    @Test
    void writingTwiceIsWritingOnce() {
        assertThat(HandChanges.written(WRITTEN, CorePlanner.standing(WRITTEN))).isEqualTo(WRITTEN);
    }

    @Test
    void theFirstWritingSaysHowItWasPlanned() {
        assertThat(WRITTEN.planning()).contains(PlanOptions.USUAL);
        assertThat(HandChanges.isByHand(YARD)).isFalse();
        assertThat(HandChanges.isByHand(WRITTEN)).isTrue();
    }

    @Test
    void aCoreMovedWithinItsStratumGivesNoProblem() {
        Point centre = core(PLAN, "A2").at();
        CorePlan moved = CorePlanner.standing(HandChanges.moved(WRITTEN, "A2", centre.plus(0.3, 0.2)));
        assertThat(core(moved, "A2").at()).isEqualTo(Frame.onStep(centre.plus(0.3, 0.2)));
        assertThat(moved.problems()).isEmpty();
        assertThat(core(moved, "A2s").at())
                .isEqualTo(core(CorePlanner.standing(WRITTEN), "A2s").at());
    }

    @Test
    void aCoreMovedIntoAnothersStratumSaysSo() {
        Point beside = core(PLAN, "A3").at().plus(0.3, 0.2);
        CorePlan moved = CorePlanner.standing(HandChanges.moved(WRITTEN, "A2", beside));
        assertThat(moved.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("CORE_IN_OTHER_STRATUM");
            assertThat(problem.message()).startsWith("A2 lies in the stratum of A3");
        });
        assertThat(core(moved, "A2").stratum()).isEqualTo(core(PLAN, "A2").stratum());
    }

    @Test
    void aCoreInABufferOffTurfOrInAnotherZoneSaysSo() {
        assertThat(codes(CorePlanner.standing(HandChanges.moved(WRITTEN, "A2", new Point(0.2, 0.2)))))
                .containsExactly("CORE_IN_BUFFER");
        assertThat(codes(CorePlanner.standing(HandChanges.moved(WRITTEN, "A2", new Point(4, 17)))))
                .containsExactly("CORE_OFF_TURF");
        assertThat(core(PLAN, "A2").zone()).isEqualTo("front");
        assertThat(codes(CorePlanner.standing(HandChanges.moved(WRITTEN, "A2", new Point(15, 30)))))
                .containsExactly("CORE_IN_OTHER_ZONE");
    }

    @Test
    void aSwapPutsTheCoreWhereItsSpareWas() {
        CorePlan swapped = CorePlanner.standing(HandChanges.swapped(WRITTEN, "A2"));
        assertThat(core(swapped, "A2").at())
                .isEqualTo(Frame.onStep(core(PLAN, "A2s").at()));
        assertThat(core(swapped, "A2s").at())
                .isEqualTo(Frame.onStep(core(PLAN, "A2").at()));
        assertThat(HandChanges.swapped(HandChanges.swapped(WRITTEN, "A2"), "A2"))
                .isEqualTo(WRITTEN);
    }

    @Test
    void planningTheRestLeavesLockedCoresAndGivesTheirStrataNoOther() {
        Point place = core(PLAN, "A2").at().plus(0.4, -0.3);
        Yard set = HandChanges.locked(HandChanges.moved(WRITTEN, "A2", place), "A2", true);
        Yard stray = HandChanges.moved(set, "A5", core(PLAN, "A6").at().plus(0.2, 0.2));
        Yard again = HandChanges.replanned(stray, CorePlanner.planRest(stray));
        CorePlan plan = CorePlanner.standing(again);
        assertThat(plan.problems()).isEmpty();
        assertThat(core(plan, "A2").at()).isEqualTo(Frame.onStep(place));
        assertThat(again.all(Core.class).filter(Core::locked))
                .extracting(Core::id)
                .containsExactly("A2");
        assertThat(plan.mainCores()).hasSameSizeAs(PLAN.mainCores());
        assertThat(plan.mainCores())
                .extracting(PlannedCore::stratum)
                .hasSameElementsAs(
                        PLAN.mainCores().stream().map(PlannedCore::stratum).toList());
        List<Point> unlocked = PLAN.mainCores().stream()
                .filter(c -> !c.id().equals("A2"))
                .map(c -> Frame.onStep(c.at()))
                .toList();
        assertThat(plan.mainCores().stream().filter(c -> !c.id().equals("A2")).map(PlannedCore::at))
                .containsExactlyInAnyOrderElementsOf(unlocked);
    }

    @Test
    void planningTheRestWithOtherNumbersKeepsTheLockedCoreAsOneOfThem() {
        Yard set = HandChanges.locked(WRITTEN, "B4", true);
        PlanOptions u = PlanOptions.USUAL;
        Yard asked = set.withPlanning(new PlanOptions(
                u.kits(),
                10,
                u.edgeBufferM(),
                u.trunkBufferM(),
                u.headBufferM(),
                u.place(),
                u.sparesPerStratum(),
                u.seed(),
                u.walk(),
                u.probe(),
                u.extras()));
        CorePlan plan = CorePlanner.standing(HandChanges.replanned(asked, CorePlanner.planRest(asked)));
        assertThat(plan.mainCores().stream().filter(c -> c.composite().equals("B")))
                .hasSize(10);
        assertThat(core(plan, "B4").at())
                .isEqualTo(Frame.onStep(core(PLAN, "B4").at()));
    }

    @Test
    void planningAfreshDropsAllHandChanges() {
        Yard set = HandChanges.locked(HandChanges.moved(WRITTEN, "A2", new Point(4, 4)), "A2", true);
        assertThat(CorePlanner.standing(HandChanges.afresh(set))).isEqualTo(PLAN);
    }

    @Test
    void anIdThatIsNotThereChangesNothing() {
        assertThat(HandChanges.moved(WRITTEN, "Z9", new Point(0, 0))).isEqualTo(WRITTEN);
        assertThat(HandChanges.swapped(WRITTEN, "Z9")).isEqualTo(WRITTEN);
        assertThat(HandChanges.locked(WRITTEN, "A2s", true)).isEqualTo(WRITTEN);
    }

    @Test
    void ownStrataHoldTheirCores() {
        CorePlan kept = CorePlanner.standing(WRITTEN);
        assertThat(kept.mainCores())
                .allSatisfy(c -> assertThat(stratum(kept, c.id()).ground().covers(c.at()))
                        .isTrue());
    }
}
