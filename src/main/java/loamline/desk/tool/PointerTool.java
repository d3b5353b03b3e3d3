package loamline.desk.tool;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loamline.desk.session.Selection;
import loamline.desk.tool.Input.Held;
import loamline.desk.tool.Input.KeyName;
import loamline.geometry.Box;
import loamline.geometry.Corner;
import loamline.geometry.Point;
import loamline.yard.Edits;
import loamline.yard.Feature;
import loamline.yard.Naming;
import loamline.yard.Reshape;
import loamline.yard.Yard;

/**
 * The pointer: selects, moves and reshapes what is there.
 *
 * <p>A click selects the feature under it, Shift-click adds it or takes it away, a click on nothing is left to the map.
 * A drag of what is selected moves all that is selected; a drag of anything else is left to the map, unless Shift is
 * held: then it selects what lies wholly in the box. If just one feature is selected it shows its grips. A corner that
 * was clicked is hot: Delete takes it out, else Delete takes out what is selected. Arrows move the selection by 0.1 ft,
 * with Shift by 1 ft. Esc drops a drag, else the hot corner, else the selection.
 *
 * @param gesture what the first button is doing
 * @param hot the corner clicked last, while its feature stays the one selected
 * @param snap where a place being dragged is taken to be
 */
public record PointerTool(Gesture gesture, Optional<HotCorner> hot, SnapHook snap) implements Tool {
    /** How far the mouse may slip in a click, in logical pixels. Common practice, no source. */
    static final double SLIP_PX = 4;

    /** An arrow moves by a tenth of a foot; 1 ft is 0.3048 m by definition (NIST SP 811, appendix B). */
    static final double NUDGE_M = 0.03048;

    /** With Shift, by a foot. */
    static final double LARGE_NUDGE_M = 0.3048;

    /** What the first button is doing. */
    sealed interface Gesture permits Rest, Passing, Moving, Pulling, Banding, Dropped {}

    /** It is up. */
    record Rest() implements Gesture {}

    /** It went down on something that it does not move: the map may do so. */
    record Passing() implements Gesture {}

    /** It is on what is selected, and moves it once it has left where it went down. */
    record Moving(Point from, String key, boolean away) implements Gesture {}

    /** It has hold of a grip. */
    record Pulling(Point from, String key, Grip grip, boolean away) implements Gesture {}

    /** It spans a box, or chooses what is under it if it stays where it is. */
    record Banding(Point from, Point to, boolean away) implements Gesture {}

    /** It is still down after Esc, and does nothing any more. */
    record Dropped() implements Gesture {}

    /** A corner of a feature. */
    record HotCorner(String key, Corner corner) {}

    /** The pointer with nothing going on. */
    public static PointerTool with(SnapHook snap) {
        return new PointerTool(new Rest(), Optional.empty(), snap);
    }

    @Override
    public Pointer cursor() {
        return Pointer.ARROW;
    }

    @Override
    public Step on(Input input, Surroundings around) {
        if (input instanceof Input.Press press) {
            return pressed(press, around);
        } else if (input instanceof Input.Drag drag) {
            return dragged(drag.at(), drag.held(), around);
        } else if (input instanceof Input.Release release) {
            return released(release.at(), release.held(), around);
        } else if (input instanceof Input.Key key) {
            return keyed(key.key(), key.held(), around);
        }
        return Step.pass(this);
    }

    private Step pressed(Input.Press press, Surroundings around) {
        double reachM = Picking.REACH_PX * around.metresPerPx();
        Optional<Feature> only = only(around);
        Optional<Grip> grip = only.flatMap(feature -> Grips.at(feature, press.at(), reachM));
        if (grip.isPresent()) {
            return gripped(only.orElseThrow(), grip.get(), press, around);
        }
        if (press.held().shift()) {
            return Step.to(doing(new Banding(press.at(), press.at(), false)));
        }
        Optional<Feature> meant = Picking.at(around.yard(), press.at(), reachM);
        if (meant.isEmpty()) {
            return Step.pass(cold());
        }
        String key = meant.get().key();
        return around.selection().keys().contains(key)
                ? Step.to(cold().doing(new Moving(press.at(), key, false)))
                : Step.to(cold().doing(new Passing()), select(List.of(key)));
    }

    private Step gripped(Feature feature, Grip grip, Input.Press press, Surroundings around) {
        if (press.held().alt() && grip instanceof Grip.OfCorner corner) {
            return withoutCorner(feature, corner.corner(), around);
        }
        Optional<HotCorner> nowHot = grip instanceof Grip.OfCorner corner
                ? Optional.of(new HotCorner(feature.key(), corner.corner()))
                : Optional.empty();
        return Step.to(new PointerTool(new Pulling(press.at(), feature.key(), grip, false), nowHot, snap));
    }

    private Step withoutCorner(Feature feature, Corner corner, Surroundings around) {
        Optional<Feature> left = Reshape.cornerRemoved(feature, corner);
        if (left.isEmpty()) {
            int least = Corner.least(feature.shape().orElseThrow());
            String what = least == Corner.LEAST_OF_RING ? "An outline keeps at least " : "A line keeps at least ";
            return Step.to(cold(), new Effect.Say(what + least + " corners."));
        }
        return Step.to(
                cold(),
                new Effect.Edit(
                        "remove corner of " + Naming.called(feature), Edits.replace(around.yard(), left.get())));
    }

    private Step dragged(Point at, Held held, Surroundings around) {
        if (gesture instanceof Moving moving) {
            boolean away = moving.away() || isAway(moving.from(), at, around);
            PointerTool next = doing(new Moving(moving.from(), moving.key(), away));
            return away ? Step.to(next, new Effect.Preview(moved(moving, at, around))) : Step.to(next);
        } else if (gesture instanceof Pulling pulling) {
            boolean away = pulling.away() || isAway(pulling.from(), at, around);
            PointerTool next = doing(new Pulling(pulling.from(), pulling.key(), pulling.grip(), away));
            Optional<Feature> after = pulled(pulling, at, held, around);
            return away && after.isPresent()
                    ? Step.to(next, new Effect.Preview(Edits.replace(around.yard(), after.get())))
                    : Step.to(next);
        } else if (gesture instanceof Banding banding) {
            boolean away = banding.away() || isAway(banding.from(), at, around);
            return Step.to(doing(new Banding(banding.from(), at, away)));
        }
        return gesture instanceof Dropped ? Step.to(this) : Step.pass(this);
    }

    private Step released(Point at, Held held, Surroundings around) {
        PointerTool next = doing(new Rest());
        if (gesture instanceof Moving moving) {
            return moving.away()
                    ? Step.to(next, new Effect.Edit("move " + chosen(around), moved(moving, at, around)))
                    : Step.to(next, select(List.of(moving.key())));
        } else if (gesture instanceof Pulling pulling) {
            Optional<Feature> after = pulled(pulling, at, held, around);
            return pulling.away() && after.isPresent()
                    ? Step.to(next, pullEdit(pulling, after.get(), around))
                    : Step.to(next);
        } else if (gesture instanceof Banding banding) {
            return Step.to(next, select(banding.away() ? withBoxed(banding.from(), at, around) : toggled(at, around)));
        }
        return gesture instanceof Rest ? Step.pass(next) : Step.to(next);
    }

    private static Effect pullEdit(Pulling pulling, Feature after, Surroundings around) {
        Feature before = around.yard().feature(pulling.key()).orElseThrow();
        return new Effect.Edit(pulling.grip().label(before, after), Edits.replace(around.yard(), after));
    }

    private static boolean isAway(Point from, Point at, Surroundings around) {
        return from.distanceTo(at) > SLIP_PX * around.metresPerPx();
    }

    private static Yard moved(Moving moving, Point at, Surroundings around) {
        return Reshape.moved(
                around.yard(),
                keys(around),
                at.x() - moving.from().x(),
                at.y() - moving.from().y());
    }

    /** The feature with its grip dragged, if it still has it. */
    private Optional<Feature> pulled(Pulling pulling, Point at, Held held, Surroundings around) {
        return around.yard()
                .feature(pulling.key())
                .filter(feature -> Grips.of(feature).contains(pulling.grip()))
                .map(feature -> pulling.grip().dragged(feature, snap.place(at, held, around)));
    }

    private static List<String> toggled(Point at, Surroundings around) {
        List<String> keys = new ArrayList<>(around.selection().keys());
        Picking.at(around.yard(), at, Picking.REACH_PX * around.metresPerPx())
                .map(Feature::key)
                .filter(key -> !keys.remove(key))
                .ifPresent(keys::add);
        return keys;
    }

    private static List<String> withBoxed(Point from, Point to, Surroundings around) {
        Set<String> keys = new LinkedHashSet<>(around.selection().keys());
        keys.addAll(Picking.inside(around.yard(), boxOf(from, to)));
        return List.copyOf(keys);
    }

    private static Box boxOf(Point from, Point to) {
        return new Box(
                Math.min(from.x(), to.x()),
                Math.min(from.y(), to.y()),
                Math.max(from.x(), to.x()),
                Math.max(from.y(), to.y()));
    }

    private Step keyed(KeyName key, Held held, Surroundings around) {
        double stepM = held.shift() ? LARGE_NUDGE_M : NUDGE_M;
        return switch (key) {
            case ESCAPE -> escaped(around);
            case DELETE, BACKSPACE -> deleted(around);
            case LEFT -> nudged("west", -stepM, 0, around);
            case RIGHT -> nudged("east", stepM, 0, around);
            case UP -> nudged("north", 0, stepM, around);
            case DOWN -> nudged("south", 0, -stepM, around);
            default -> Step.pass(this);
        };
    }

    private Step escaped(Surroundings around) {
        if (isBusy()) {
            return Step.to(doing(new Dropped()), new Effect.DropPreview());
        } else if (hotIn(around).isPresent()) {
            return Step.to(cold());
        }
        return around.selection().equals(Selection.NOTHING) ? Step.pass(cold()) : Step.to(cold(), select(List.of()));
    }

    private Step deleted(Surroundings around) {
        if (isBusy() || around.selection().keys().isEmpty()) {
            return Step.pass(this);
        }
        Optional<Corner> corner = hotIn(around);
        if (corner.isPresent()) {
            return withoutCorner(only(around).orElseThrow(), corner.get(), around);
        }
        return new Step(
                cold(), Commands.REMOVE.on(new Command.Context(around.yard(), around.selection(), List.of())), true);
    }

    private Step nudged(String way, double dx, double dy, Surroundings around) {
        if (isBusy() || around.selection().keys().isEmpty()) {
            return Step.pass(this);
        }
        String label = "nudge " + chosen(around) + " " + way;
        return Step.to(this, new Effect.Edit(label, Reshape.moved(around.yard(), keys(around), dx, dy)));
    }

    private boolean isBusy() {
        return gesture instanceof Moving || gesture instanceof Pulling || gesture instanceof Banding;
    }

    private static Effect select(List<String> keys) {
        return new Effect.Select(Selection.ofFeatures(keys));
    }

    private static Set<String> keys(Surroundings around) {
        return Set.copyOf(around.selection().keys());
    }

    private static String chosen(Surroundings around) {
        return Naming.called(around.yard(), keys(around));
    }

    /** The one feature that is selected, if it is just one. */
    private static Optional<Feature> only(Surroundings around) {
        List<String> keys = around.selection().keys();
        return keys.size() == 1 ? around.yard().feature(keys.get(0)) : Optional.empty();
    }

    private Optional<Corner> hotIn(Surroundings around) {
        return hot.filter(corner -> only(around)
                        .filter(feature -> feature.key().equals(corner.key()))
                        .flatMap(Feature::shape)
                        .filter(corner.corner()::isOf)
                        .isPresent())
                .map(HotCorner::corner);
    }

    private PointerTool doing(Gesture changed) {
        return new PointerTool(changed, hot, snap);
    }

    private PointerTool cold() {
        return new PointerTool(new Rest(), Optional.empty(), snap);
    }

    @Override
    public List<Guide> guides(Surroundings around) {
        if (gesture instanceof Banding banding && banding.away()) {
            List<Point> corners =
                    boxOf(banding.from(), banding.to()).outline().vertices().toList();
            return List.of(new Guide.Line(corners, true, Guide.Style.SELECTED));
        }
        Optional<Grip> hotGrip = hotIn(around).map(Grip.OfCorner::new);
        return only(around).filter(feature -> !isBusy()).stream()
                .flatMap(feature -> Grips.of(feature).stream()
                        .<Guide>map(grip ->
                                new Guide.Grip(grip.at(feature), grip.isMiddle(), hotGrip.equals(Optional.of(grip)))))
                .toList();
    }

    @Override
    public String hint() {
        return "Click selects, Shift adds; drag moves it, or its corners";
    }
}
