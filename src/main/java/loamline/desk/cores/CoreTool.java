package loamline.desk.cores;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.desk.session.Selection;
import loamline.desk.tool.Effect;
import loamline.desk.tool.Guide;
import loamline.desk.tool.Input;
import loamline.desk.tool.Input.KeyName;
import loamline.desk.tool.Surroundings;
import loamline.desk.tool.Tool;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Stratum;
import loamline.sampling.HandChanges;
import loamline.units.Factors;
import loamline.yard.Yard;

/**
 * Sets cores by hand: a drag moves one, arrows nudge the selected one, L locks it, S puts it where its spare is. While a
 * core is under the pointer or moves, the border of its stratum is drawn.
 *
 * @param hovered id of the core under the pointer, or blank
 * @param drag the core in hand, if any
 */
public record CoreTool(String hovered, Optional<Drag> drag) implements Tool {
    /** With nothing in hand. */
    public static final CoreTool IDLE = new CoreTool("", Optional.empty());

    private static final double REACH_PX = 12;

    /** The pointer may slip this far in a click without moving the core. */
    private static final double SLIP_PX = 4;

    private static final double NUDGE_M = 0.1 * Factors.M_PER_FT;
    private static final double BIG_NUDGE_M = Factors.M_PER_FT;

    /**
     * A core in hand.
     *
     * @param base the yard with all cores as its own
     * @param plan what was planned when the drag began, for the strata
     * @param grabbed where the pointer took it
     * @param from where it was
     * @param at where it is now
     * @param moving whether the pointer has gone farther than a slip
     */
    public record Drag(
            String id, Yard base, Optional<CorePlan> plan, Point grabbed, Point from, Point at, boolean moving) {
        private Drag to(Point pointer, double slipM) {
            boolean farther = moving || pointer.distanceTo(grabbed) > slipM;
            Point to = farther ? from.plus(pointer.x() - grabbed.x(), pointer.y() - grabbed.y()) : from;
            return new Drag(id, base, plan, grabbed, from, to, farther);
        }

        private Yard moved() {
            return HandChanges.moved(base, id, at);
        }
    }

    @Override
    public Step on(Input input, Surroundings around) {
        if (input instanceof Input.Press press) {
            return press(press.at(), around);
        }
        if (input instanceof Input.Drag moved && drag.isPresent()) {
            Drag next = drag.get().to(moved.at(), SLIP_PX * around.metresPerPx());
            CoreTool tool = new CoreTool(hovered, Optional.of(next));
            return next.moving() ? Step.to(tool, new Effect.Preview(next.moved())) : Step.to(tool);
        }
        if (input instanceof Input.Release && drag.isPresent()) {
            Drag done = drag.get();
            return done.moving()
                    ? Step.to(IDLE, new Effect.Edit("move core " + done.id(), done.moved()))
                    : Step.to(IDLE);
        }
        if (input instanceof Input.Move move) {
            String under = nearest(move.at(), around).map(CoreEdits.Spot::id).orElse("");
            return new Step(new CoreTool(under, Optional.empty()), List.of(), false);
        }
        if (input instanceof Input.Typed typed) {
            return typed(Character.toLowerCase(typed.character()), around);
        }
        return input instanceof Input.Key key ? key(key, around) : Step.pass(this);
    }

    private Step press(Point at, Surroundings around) {
        CoreEdits edits = CoreEdits.of(around);
        Optional<CoreEdits.Spot> hit = nearest(at, around);
        Optional<Yard> base = hit.flatMap(spot -> edits.written());
        if (base.isEmpty()) {
            return Step.pass(IDLE);
        }
        CoreEdits.Spot spot = hit.get();
        Drag begun = new Drag(spot.id(), base.get(), around.plan(), at, spot.at(), spot.at(), false);
        return Step.to(new CoreTool(spot.id(), Optional.of(begun)), new Effect.Select(Selection.ofCore(spot.id())));
    }

    private static Optional<CoreEdits.Spot> nearest(Point at, Surroundings around) {
        return CoreEdits.of(around)
                .spots()
                .filter(spot -> spot.at().distanceTo(at) <= REACH_PX * around.metresPerPx())
                .min(Comparator.comparingDouble(spot -> spot.at().distanceTo(at)));
    }

    private Step typed(char letter, Surroundings around) {
        String id = around.selection().core();
        CoreEdits edits = CoreEdits.of(around);
        if (id.isBlank() || drag.isPresent() || (letter != 'l' && letter != 's')) {
            return Step.pass(this);
        }
        Optional<Effect.Edit> edit = letter == 'l' ? edits.lock(id) : edits.swap(id);
        String refused = letter == 'l' ? "Only a core can be locked." : "Core " + id + " has no spare.";
        return Step.to(this, edit.<Effect>map(e -> e).orElseGet(() -> new Effect.Say(refused)));
    }

    private Step key(Input.Key key, Surroundings around) {
        if (key.key() == KeyName.ESCAPE && drag.isPresent()) {
            return Step.to(IDLE, new Effect.DropPreview());
        }
        double stepM = key.held().shift() ? BIG_NUDGE_M : NUDGE_M;
        String id = around.selection().core();
        double dx = key.key() == KeyName.RIGHT ? stepM : key.key() == KeyName.LEFT ? -stepM : 0;
        double dy = key.key() == KeyName.UP ? stepM : key.key() == KeyName.DOWN ? -stepM : 0;
        if ((dx == 0 && dy == 0) || drag.isPresent()) {
            return Step.pass(this);
        }
        CoreEdits edits = CoreEdits.of(around);
        return edits.spot(id)
                .flatMap(spot -> edits.move(id, spot.at().plus(dx, dy)))
                .map(edit -> Step.to(this, edit))
                .orElseGet(() -> Step.pass(this));
    }

    @Override
    public List<Guide> guides(Surroundings around) {
        List<Guide> guides = new ArrayList<>();
        if (drag.isPresent()) {
            Drag held = drag.get();
            own(held.plan(), held.id()).ifPresent(stratum -> outline(stratum, Guide.Style.SELECTED, guides));
            if (held.moving()) {
                guides.add(new Guide.Words(held.at(), where(held)));
            }
        } else if (!hovered.isBlank()) {
            own(around.plan(), hovered).ifPresent(stratum -> outline(stratum, Guide.Style.HELP, guides));
        }
        return guides;
    }

    private static void outline(Stratum stratum, Guide.Style style, List<Guide> guides) {
        for (Outline.Part part : stratum.ground().outline().parts()) {
            guides.add(new Guide.Line(part.shell(), true, style));
        }
    }

    private static Optional<Stratum> own(Optional<CorePlan> plan, String id) {
        return core(plan, id)
                .flatMap(core -> strata(plan, core.composite())
                        .filter(stratum -> stratum.number() == core.stratum())
                        .findFirst());
    }

    private static Stream<Stratum> strata(Optional<CorePlan> plan, String bag) {
        return plan.stream()
                .flatMap(p -> p.composites().stream())
                .filter(composite -> composite.name().equals(bag))
                .flatMap(composite -> composite.strata().stream());
    }

    private static Optional<PlannedCore> core(Optional<CorePlan> plan, String id) {
        return plan.stream()
                .flatMap(p -> p.cores().stream())
                .filter(core -> core.id().equals(id))
                .findFirst();
    }

    /** Where a core in hand is, told by the strata. */
    private static String where(Drag held) {
        Optional<Stratum> own = own(held.plan(), held.id());
        if (own.isEmpty()) {
            return held.id();
        }
        if (own.get().ground().covers(held.at())) {
            return held.id() + " in its stratum";
        }
        return held.plan().stream()
                .flatMap(plan -> plan.mainCores().stream())
                .filter(other -> own(held.plan(), other.id())
                        .filter(stratum -> stratum.ground().covers(held.at()))
                        .isPresent())
                .findFirst()
                .map(other -> held.id() + " in the stratum of " + other.id())
                .orElse(held.id() + " off the ground for cores");
    }

    @Override
    public String hint() {
        return "Drag a core to move it; L locks the selected one, S uses its spare, arrows nudge it.";
    }
}
