package loamline.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.desk.session.Selection;
import loamline.desk.tool.Input.Held;
import loamline.desk.tool.ToolChoice.Variant;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import loamline.yard.Edits;
import loamline.yard.Feature;

/**
 * Draws something new, place by place: a click or a typed size each, and Enter, a double click or a click on the first
 * place to end. What takes a known number of places ends by itself; a drag then sets the next place where it ends.
 *
 * <p>Backspace takes back a typed character, else a place. Esc drops what is typed, else a place, else the tool. When
 * a thing is done it is selected, and the tool is ready for the next.
 *
 * @param choice which tool it is
 * @param variant how an outline is drawn
 * @param snapping to the yard as it was at the last input
 * @param places set so far, any two in a row apart
 * @param aim where the pointer was last, once it was seen
 * @param typing what is typed for the next place
 * @param pressed where the button went down, while it is down
 */
record Draw(
        ToolChoice choice,
        Variant variant,
        Snapping snapping,
        List<Point> places,
        Optional<Snapped> aim,
        Typing typing,
        Optional<Point> pressed)
        implements Tool {
    /** How far the mouse may slip in a click, in logical pixels. Common practice, no source. */
    static final double SLIP_PX = 6;

    Draw {
        places = List.copyOf(places);
    }

    /** A tool with nothing drawn. */
    static Draw with(ToolChoice choice, Variant variant) {
        return new Draw(
                choice, variant, Snapping.TO_NOTHING, List.of(), Optional.empty(), Typing.NONE, Optional.empty());
    }

    @Override
    public Step on(Input input, Surroundings around) {
        if (input instanceof Input.Move move) {
            return Step.to(aimed(move.at(), move.held(), around));
        } else if (input instanceof Input.Drag drag) {
            return Step.to(aimed(drag.at(), drag.held(), around));
        } else if (input instanceof Input.Press press) {
            return pressed(press, around);
        } else if (input instanceof Input.Release release) {
            return released(release, around);
        } else if (input instanceof Input.Typed typed) {
            return typed(typed.character());
        }
        return keyed(((Input.Key) input).key(), around);
    }

    private Step pressed(Input.Press press, Surroundings around) {
        if (press.clicks() > 1) {
            return places.isEmpty() ? Step.to(this) : finished(around);
        }
        return aimed(press.at(), press.held(), around)
                .withPressed(Optional.of(press.at()))
                .placed(around);
    }

    private Step released(Input.Release release, Surroundings around) {
        Draw up = withPressed(Optional.empty());
        double slipM = SLIP_PX * around.metresPerPx();
        if (places.isEmpty()
                || pressed.filter(at -> at.distanceTo(release.at()) > slipM).isEmpty()) {
            return Step.to(up);
        }
        Draw aimed = up.aimed(release.at(), release.held(), around);
        Point end = aimed.target(around.units()).at();
        List<Point> all = isRepeat(end) ? List.of() : form().dragged(places, end);
        return all.isEmpty() ? Step.to(aimed) : aimed.withPlaces(all).grown(around);
    }

    private Step typed(char c) {
        if (places.isEmpty()) {
            return choice.variants().stream()
                    .filter(other -> other.key() == Character.toUpperCase(c))
                    .findFirst()
                    .map(other -> Step.to(Draw.with(choice, other)))
                    .orElse(Step.pass(this));
        }
        if (typing.takes(c)) {
            return Step.to(withTyping(typing.with(c)));
        }
        return ToolChoice.of(c).isPresent()
                ? Step.to(this, new Effect.Say("Finish this with Enter, or leave it with Esc, before another tool."))
                : Step.pass(this);
    }

    private Step keyed(Input.KeyName key, Surroundings around) {
        boolean isIdle = places.isEmpty();
        return switch (key) {
            case ESCAPE -> isIdle ? Step.to(this, new Effect.Done()) : Step.to(back());
            case BACKSPACE ->
                isIdle ? Step.pass(this) : Step.to(typing.isEmpty() ? back() : withTyping(typing.shortened()));
            case ENTER -> isIdle ? Step.pass(this) : typing.isEmpty() ? finished(around) : placed(around);
            case TAB -> isIdle ? Step.pass(this) : Step.to(withTyping(typing.switched()));
            default -> Step.pass(this);
        };
    }

    /** One step back: what is typed, else the last place. */
    private Draw back() {
        return typing.isEmpty() ? withPlaces(places.subList(0, places.size() - 1)) : withTyping(Typing.NONE);
    }

    /** With the place that is aimed at or typed, unless it coincides with the one before. */
    private Step placed(Surroundings around) {
        Target target = target(around.units());
        if (target.refusal().isPresent()) {
            return Step.to(this, new Effect.Say(target.refusal().get()));
        }
        return isRepeat(target.at())
                ? Step.to(withTyping(Typing.NONE))
                : withPlaces(and(target.at())).grown(around);
    }

    /** Whether a place would make a side without length. */
    private boolean isRepeat(Point place) {
        return !places.isEmpty() && form().anchor(places).distanceTo(place) < Snapping.LEAST_SIDE_M;
    }

    /** What becomes of it when it has grown by a place: done if that completes it. */
    private Step grown(Surroundings around) {
        if (isClosed() || places.size() == form().most()) {
            return finished(around);
        }
        return new Step(this, said(form().warning(places, false)), true);
    }

    /** Whether the last place lies on the first. */
    private boolean isClosed() {
        return places.size() > SnapSources.LEAST_TO_CLOSE
                && places.get(places.size() - 1).equals(places.get(0));
    }

    private Step finished(Surroundings around) {
        Optional<String> lack = form().lacks(places);
        if (lack.isPresent()) {
            return Step.to(isClosed() ? back() : this, new Effect.Say(lack.get()));
        }
        Feature feature = form().made(places, around.yard());
        List<Effect> effects = new ArrayList<>();
        effects.add(new Effect.Edit("add " + choice.noun(), Edits.add(around.yard(), feature)));
        effects.add(new Effect.Select(Selection.ofFeatures(List.of(feature.key()))));
        effects.addAll(said(form().warning(places, true)));
        return new Step(withPlaces(List.of()).withPressed(Optional.empty()), effects, true);
    }

    private static List<Effect> said(Optional<String> words) {
        return words.<List<Effect>>map(text -> List.of(new Effect.Say(text))).orElse(List.of());
    }

    @Override
    public List<Guide> guides(Surroundings around) {
        List<Guide> guides = new ArrayList<>();
        if (!places.isEmpty()) {
            Target target = target(around.units());
            List<Point> shown = shown(target.at(), around);
            if (shown.size() > 1) {
                guides.addAll(form().guides(shown, around.units()));
            }
            if (shown.size() > 1 || !typing.isEmpty()) {
                guides.add(words(shown, around.units()));
            }
            places.forEach(place -> guides.add(new Guide.Grip(place, false, place.equals(target.at()))));
        }
        if (typing.isEmpty()) {
            aim.ifPresent(snapped -> guides.addAll(snapped.guides()));
        }
        return guides;
    }

    /** The places with the pending one; those of a drag while one is under way. */
    private List<Point> shown(Point target, Surroundings around) {
        double slipM = SLIP_PX * around.metresPerPx();
        boolean isDragging = pressed.filter(at -> at.distanceTo(target) > slipM).isPresent();
        List<Point> dragged = isDragging ? form().dragged(places, target) : List.of();
        if (!dragged.isEmpty()) {
            return dragged;
        }
        return isRepeat(target) ? places : and(target);
    }

    private Guide words(List<Point> shown, UnitSystem units) {
        Point middle = form().anchor(places).towards(shown.get(shown.size() - 1), 0.5);
        return new Guide.Words(middle, typing.isEmpty() ? form().words(shown, units) : typing.shown());
    }

    @Override
    public String hint() {
        return form().hint(places.size());
    }

    private Form form() {
        return Forms.of(choice, variant);
    }

    private Target target(UnitSystem units) {
        Point pointer = aim.map(Snapped::at).orElseGet(() -> places.get(places.size() - 1));
        return places.isEmpty() ? Target.at(pointer) : form().target(places, pointer, typing, units);
    }

    private List<Point> and(Point place) {
        return Stream.concat(places.stream(), Stream.of(place)).toList();
    }

    private Draw aimed(Point pointer, Held held, Surroundings around) {
        Snapping current = snapping.current(around.yard());
        List<Point> by = places.isEmpty() ? places : form().snappedBy(places);
        Snapped snapped = current.snap(pointer, held, by, around.metresPerPx());
        return new Draw(choice, variant, current, places, Optional.of(snapped), typing, pressed);
    }

    /** With other places, and nothing typed. */
    private Draw withPlaces(List<Point> changed) {
        return new Draw(choice, variant, snapping, changed, aim, Typing.NONE, pressed);
    }

    private Draw withTyping(Typing changed) {
        return new Draw(choice, variant, snapping, places, aim, changed, pressed);
    }

    private Draw withPressed(Optional<Point> changed) {
        return new Draw(choice, variant, snapping, places, aim, typing, changed);
    }
}
