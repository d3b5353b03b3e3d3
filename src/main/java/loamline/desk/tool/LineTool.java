package loamline.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loamline.desk.session.Selection;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.yard.Combine;
import loamline.yard.Naming;
import loamline.yard.Reshape;
import loamline.yard.Yard;

/**
 * Draws a line to cut what is selected along it, to mirror it across, or to turn it: about the first place, so that
 * what lies towards the second comes to lie towards the third. Each click sets a place; Enter or a double click ends
 * the cut, the last place that is needed ends the others. Backspace takes a place back, Esc a place, else the tool.
 *
 * @param use what the line is for
 * @param places set so far, any two in a row apart
 * @param aim where the pointer was last, once it was seen
 * @param snap where a place is taken to be
 */
public record LineTool(Use use, List<Point> places, Optional<Point> aim, SnapHook snap) implements Tool {
    /** What the line is for. */
    enum Use {
        CUT(2, Integer.MAX_VALUE, "Click along the cut, right across what is selected. Enter or a double click cuts."),
        MIRROR(2, 2, "Click two places of the line to mirror across."),
        TURN(3, 3, "Click what to turn about, then a place, then where it is to come.");

        private final int least;
        private final int most;
        private final String hint;

        Use(int least, int most, String hint) {
            this.least = least;
            this.most = most;
            this.hint = hint;
        }
    }

    public LineTool {
        places = List.copyOf(places);
    }

    /** Cuts what is selected. */
    public static LineTool cutting() {
        return new LineTool(Use.CUT, List.of(), Optional.empty(), SnapHook.NONE);
    }

    /** Mirrors what is selected. */
    public static LineTool mirroring() {
        return new LineTool(Use.MIRROR, List.of(), Optional.empty(), SnapHook.NONE);
    }

    /** Turns what is selected. */
    public static LineTool turning() {
        return new LineTool(Use.TURN, List.of(), Optional.empty(), SnapHook.NONE);
    }

    /** The same with its places drawn to something. */
    public LineTool with(SnapHook changed) {
        return new LineTool(use, places, aim, changed);
    }

    @Override
    public Step on(Input input, Surroundings around) {
        if (input instanceof Input.Press press) {
            return press.clicks() > 1 ? finished(around) : placed(snap.place(press.at(), press.held(), around), around);
        } else if (input instanceof Input.Move move) {
            Point at = snap.place(move.at(), move.held(), around);
            return Step.to(new LineTool(use, places, Optional.of(at), snap));
        } else if (input instanceof Input.Key key) {
            return keyed(key.key(), around);
        }
        return input instanceof Input.Typed ? Step.pass(this) : Step.to(this);
    }

    private Step placed(Point at, Surroundings around) {
        if (!places.isEmpty() && places.get(places.size() - 1).equals(at)) {
            return Step.to(this);
        }
        LineTool longer =
                withPlaces(Stream.concat(places.stream(), Stream.of(at)).toList());
        return longer.places().size() == use.most ? longer.finished(around) : Step.to(longer);
    }

    private Step keyed(Input.KeyName key, Surroundings around) {
        boolean isEmpty = places.isEmpty();
        return switch (key) {
            case ENTER -> finished(around);
            case BACKSPACE -> isEmpty ? Step.pass(this) : Step.to(shorter());
            case ESCAPE -> isEmpty ? Step.to(this, new Effect.Done()) : Step.to(shorter());
            default -> Step.pass(this);
        };
    }

    private LineTool shorter() {
        return withPlaces(places.subList(0, places.size() - 1));
    }

    private Step finished(Surroundings around) {
        if (places.size() < use.least) {
            return Step.to(this, new Effect.Say("Set " + (use.least - places.size()) + " more."));
        }
        Set<String> keys = Set.copyOf(around.selection().keys());
        return switch (use) {
            case MIRROR -> done("mirror ", Reshape.mirrored(around.yard(), keys, places.get(0), places.get(1)), around);
            case TURN -> done("turn ", Reshape.turned(around.yard(), keys, places.get(0), turnDeg()), around);
            case CUT -> cut(keys, around);
        };
    }

    private Step done(String verb, Yard after, Surroundings around) {
        String called =
                Naming.called(around.yard(), Set.copyOf(around.selection().keys()));
        return Step.to(withPlaces(List.of()), new Effect.Edit(verb + called, after), new Effect.Done());
    }

    /** From the second place to the third round the first, clockwise, degrees. */
    private double turnDeg() {
        return Reshape.azimuth(places.get(0), places.get(2)) - Reshape.azimuth(places.get(0), places.get(1));
    }

    private Step cut(Set<String> keys, Surroundings around) {
        return Combine.cut(around.yard(), keys, new Polyline(places))
                .map(cut -> Step.to(
                        withPlaces(List.of()),
                        new Effect.Edit("cut " + Naming.called(around.yard(), keys), cut.yard()),
                        new Effect.Select(Selection.ofFeatures(cut.keys())),
                        new Effect.Done()))
                .orElse(Step.to(
                        this, new Effect.Say("The line divides nothing that is selected: run it right across.")));
    }

    private LineTool withPlaces(List<Point> changed) {
        return new LineTool(use, changed, aim, snap);
    }

    @Override
    public List<Guide> guides(Surroundings around) {
        if (places.isEmpty()) {
            return List.of();
        }
        List<Point> shown = new ArrayList<>(places);
        aim.ifPresent(shown::add);
        List<Guide> guides = new ArrayList<>();
        guides.add(new Guide.Line(shown, false, Guide.Style.DRAWN));
        places.forEach(place -> guides.add(new Guide.Grip(place, false, false)));
        return guides;
    }

    @Override
    public String hint() {
        return use.hint;
    }
}
