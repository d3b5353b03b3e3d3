package loamline.desk.cores;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.desk.session.Selection;
import loamline.desk.tool.Effect;
import loamline.desk.tool.Guide;
import loamline.desk.tool.Input;
import loamline.desk.tool.Input.Held;
import loamline.desk.tool.Input.KeyName;
import loamline.desk.tool.Surroundings;
import loamline.desk.tool.Tool;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.sampling.HandChanges;
import loamline.units.UnitSystem;
import loamline.yard.Core;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class CoreToolTest {
    private static final Yard YARD = yard(turf("lawn", box(0, 0, 30, 20)), gate(0, 0));
    private static final CorePlan PLAN = CorePlanner.standing(YARD);
    private static final double METRES_PER_PX = 0.02;

    private final List<Effect> effects = new ArrayList<>();
    private Tool tool = CoreTool.IDLE;
    private Yard yard = YARD;
    private Optional<CorePlan> plan = Optional.of(PLAN);
    private Selection selection = Selection.NOTHING;

    private static Point at(String id) {
        return PLAN.cores().stream()
                .filter(core -> core.id().equals(id))
                .findFirst()
                .orElseThrow()
                .at();
    }

    private Surroundings around() {
        return new Surroundings(yard, selection, UnitSystem.US, METRES_PER_PX, plan);
    }

    private boolean send(Input input) {
        Tool.Step step = tool.on(input, around());
        tool = step.next();
        effects.addAll(step.effects());
        step.effects().forEach(effect -> {
            if (effect instanceof Effect.Select select) {
                selection = select.selection();
            }
        });
        return step.used();
    }

    private Effect.Edit onlyEdit() {
        return effects.stream()
                .filter(Effect.Edit.class::isInstance)
                .map(Effect.Edit.class::cast)
                .reduce((a, b) -> {
                    throw new AssertionError("two edits");
                })
                .orElseThrow();
    }

    private static Core core(Yard yard, String id) {
        return yard.all(Core.class)
                .filter(core -> core.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aDragIsOneEditThatWritesAllCoresAndMovesOne() {
        Point from = at("A2");
        send(new Input.Press(from.plus(0.1, 0), 1, Held.NONE));
        send(new Input.Drag(from.plus(0.5, 0.2), Held.NONE));
        send(new Input.Drag(from.plus(0.9, 0.4), Held.NONE));
        send(new Input.Release(from.plus(0.9, 0.4), Held.NONE));
        assertThat(effects.get(0)).isEqualTo(new Effect.Select(Selection.ofCore("A2")));
        assertThat(effects.subList(1, 3)).allMatch(Effect.Preview.class::isInstance);
        assertThat(onlyEdit().label()).isEqualTo("move core A2");
        assertThat(onlyEdit().after().all(Core.class)).hasSize(24);
        assertThat(core(onlyEdit().after(), "A2").at()).isEqualTo(Frame.onStep(from.plus(0.8, 0.4)));
        assertThat(tool).isEqualTo(CoreTool.IDLE);
    }

    @Test
    void aClickWithinASlipSelectsAndMovesNothing() {
        send(new Input.Press(at("A2"), 1, Held.NONE));
        send(new Input.Drag(at("A2").plus(0.05, 0), Held.NONE));
        send(new Input.Release(at("A2").plus(0.05, 0), Held.NONE));
        assertThat(effects).containsExactly(new Effect.Select(Selection.ofCore("A2")));
    }

    @Test
    void aPressBesideAllCoresIsLeftToTheMap() {
        assertThat(send(new Input.Press(new Point(-5, -5), 1, Held.NONE))).isFalse();
        assertThat(effects).isEmpty();
    }

    @Test
    void escapeDropsWhatIsInHandAndThenIsLeftToTheMap() {
        send(new Input.Press(at("A2"), 1, Held.NONE));
        send(new Input.Drag(at("A2").plus(1, 1), Held.NONE));
        assertThat(send(new Input.Key(KeyName.ESCAPE, Held.NONE))).isTrue();
        assertThat(effects.get(effects.size() - 1)).isEqualTo(new Effect.DropPreview());
        assertThat(send(new Input.Key(KeyName.ESCAPE, Held.NONE))).isFalse();
        assertThat(effects).noneMatch(Effect.Edit.class::isInstance);
    }

    @Test
    void theStratumIsDrawnUnderThePointerAndWhileItsCoreMoves() {
        send(new Input.Move(at("A2"), Held.NONE));
        assertThat(tool.guides(around())).singleElement().isInstanceOf(Guide.Line.class);
        send(new Input.Press(at("A2"), 1, Held.NONE));
        send(new Input.Drag(at("A2").plus(0.2, 0.2), Held.NONE));
        assertThat(tool.guides(around())).contains(new Guide.Words(at("A2").plus(0.2, 0.2), "A2 in its stratum"));
        send(new Input.Drag(at("A3"), Held.NONE));
        assertThat(tool.guides(around())).contains(new Guide.Words(at("A3"), "A2 in the stratum of A3"));
        send(new Input.Drag(new Point(-5, -5), Held.NONE));
        assertThat(tool.guides(around())).contains(new Guide.Words(new Point(-5, -5), "A2 off the ground for cores"));
    }

    @Test
    void lettersLockAndSwapTheSelectedCore() {
        selection = Selection.ofCore("A2");
        send(new Input.Typed('L'));
        assertThat(onlyEdit().label()).isEqualTo("lock core A2");
        assertThat(core(onlyEdit().after(), "A2").locked()).isTrue();
        effects.clear();
        send(new Input.Typed('s'));
        assertThat(onlyEdit().label()).isEqualTo("use the spare of core A2");
        assertThat(core(onlyEdit().after(), "A2").at()).isEqualTo(Frame.onStep(at("A2s")));
        assertThat(send(new Input.Typed('x'))).isFalse();
    }

    @Test
    void aLockedCoreIsFreedByTheSameLetter() {
        yard = HandChanges.locked(HandChanges.written(YARD, PLAN), "A2", true);
        plan = Optional.empty();
        selection = Selection.ofCore("A2");
        send(new Input.Typed('l'));
        assertThat(new CoreEdits(yard, plan).lockedWords()).isEqualTo("Locked: A2");
        assertThat(onlyEdit().label()).isEqualTo("unlock core A2");
        assertThat(new CoreEdits(onlyEdit().after(), plan).lockedWords()).isEmpty();
    }

    @Test
    void aSpareHasNoLockAndItsSwapIsItsCores() {
        selection = Selection.ofCore("A2s");
        send(new Input.Typed('l'));
        assertThat(effects).containsExactly(new Effect.Say("Only a core can be locked."));
        effects.clear();
        send(new Input.Typed('s'));
        assertThat(onlyEdit().label()).isEqualTo("use the spare of core A2");
    }

    @Test
    void arrowsNudgeByATenthOfAFootAndWithShiftByAFootAlsoWhileThePlanIsBeingMade() {
        selection = Selection.ofCore("A2");
        send(new Input.Key(KeyName.RIGHT, Held.NONE));
        yard = onlyEdit().after();
        plan = Optional.empty();
        effects.clear();
        send(new Input.Key(KeyName.DOWN, new Held(true, false, false)));
        assertThat(core(onlyEdit().after(), "A2").at())
                .isEqualTo(Frame.onStep(Frame.onStep(at("A2").plus(0.03048, 0)).plus(0, -0.3048)));
    }

    @Test
    void withoutAPlanAndOwnCoresNothingIsDone() {
        plan = Optional.empty();
        selection = Selection.ofCore("A2");
        assertThat(send(new Input.Press(at("A2"), 1, Held.NONE))).isFalse();
        assertThat(send(new Input.Key(KeyName.RIGHT, Held.NONE))).isFalse();
        assertThat(effects).isEmpty();
    }
}
