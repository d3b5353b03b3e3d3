package loamline.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.desk.session.Selection;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.yard.Edits;
import loamline.yard.Feature;
import loamline.yard.Kind;

/**
 * Traces with the image's help: a click in a lawn, a roof or a drive gives its outline; more clicks add to it, clicks
 * with Alt take away, [ and ] make it smaller and larger, Enter accepts it, Esc drops it.
 *
 * @param tracer finds the ground round the clicks
 * @param settings what it is to be traced as, and how much counts as alike
 * @param clicks so far
 * @param asked how often the tracer was asked; an answer to an earlier question is passed over
 * @param found its answer; empty before the first
 */
public record AssistTool(AssistTracer tracer, Settings settings, List<Click> clicks, int asked, Optional<Answer> found)
        implements Tool {
    private static final String LOOKING = "Looking at the image";

    /** A step of the keys [ and ]. */
    private static final double STEP = 0.05;

    /**
     * What is set on the sheet.
     *
     * @param kind one of {@link #KINDS}
     * @param tolerance 0 to 1, see {@link AssistTracer.Asked}
     */
    public record Settings(Kind kind, double tolerance) implements Input.OfTool {
        /** Turf, at the best guess. */
        public static final Settings USUAL = new Settings(Kind.TURF, 0.5);

        /** @throws IllegalArgumentException if the kind is no ground, or the tolerance out of range */
        public Settings {
            if (!KINDS.contains(kind) || !(tolerance >= 0 && tolerance <= 1)) {
                throw new IllegalArgumentException(
                        kind + " at " + tolerance + " (one of " + KINDS + ", from 0 to 1) cannot be traced");
            }
        }

        Settings moved(double by) {
            return new Settings(kind, Math.max(0, Math.min(1, tolerance + by)));
        }
    }

    /** What ground can be traced as, turf first. */
    public static final List<Kind> KINDS =
            List.of(Kind.TURF, Kind.BUILDING, Kind.PAVING, Kind.BED, Kind.GRAVEL, Kind.WATER, Kind.DECK);

    /** A click; one with Alt takes away. */
    public record Click(Point at, boolean takesAway) {}

    /** What the tracer found, and on which question. */
    public record Answer(int asked, AssistTracer.Found found) implements Input.OfTool {}

    public AssistTool {
        clicks = List.copyOf(clicks);
    }

    /** The tool with nothing clicked. */
    public static AssistTool of(AssistTracer tracer, Settings settings) {
        return new AssistTool(tracer, settings, List.of(), 0, Optional.empty());
    }

    @Override
    public Step on(Input input, Surroundings around) {
        if (input instanceof Input.Press press) {
            return pressed(press, around);
        } else if (input instanceof Answer answer) {
            return answered(answer);
        } else if (input instanceof Settings changed) {
            return asking(changed, clicks, around);
        } else if (input instanceof Input.Typed typed) {
            return typed(Character.toUpperCase(typed.character()), around);
        } else if (input instanceof Input.Key key) {
            return keyed(key.key(), around);
        }
        return Step.pass(this);
    }

    private Step pressed(Input.Press press, Surroundings around) {
        if (around.yard().backdrop().isEmpty()) {
            return Step.to(this, new Effect.Say("There is no image to trace from: open one first."));
        }
        boolean takesAway = press.held().alt();
        if (takesAway && clicks.isEmpty()) {
            return Step.to(this, new Effect.Say("Click inside the ground first; Alt-click then takes parts away."));
        }
        List<Click> more = new ArrayList<>(clicks);
        more.add(new Click(press.at(), takesAway));
        return asking(settings, more, around);
    }

    /** Asks again for what is now clicked and set; nothing is asked while nothing is clicked. */
    private Step asking(Settings with, List<Click> these, Surroundings around) {
        int question = asked + 1;
        AssistTool next = new AssistTool(tracer, with, these, question, these.isEmpty() ? Optional.empty() : found);
        if (these.isEmpty()) {
            return Step.to(next);
        }
        AssistTracer.Asked what = new AssistTracer.Asked(
                around.yard(), with.kind(), places(these, false), places(these, true), with.tolerance());
        AssistTracer port = tracer;
        return Step.to(next, new Effect.Later(LOOKING, () -> new Answer(question, port.trace(what))));
    }

    private static List<Point> places(List<Click> clicks, boolean takingAway) {
        return clicks.stream()
                .filter(click -> click.takesAway() == takingAway)
                .map(Click::at)
                .toList();
    }

    private Step answered(Answer answer) {
        if (answer.asked() != asked) {
            return Step.to(this);
        }
        String doubts = String.join(" ", answer.found().doubts());
        return Step.to(new AssistTool(tracer, settings, clicks, asked, Optional.of(answer)), new Effect.Say(doubts));
    }

    private Step typed(char character, Surroundings around) {
        if (character == '[' || character == ']') {
            return asking(settings.moved(character == '[' ? -STEP : STEP), clicks, around);
        }
        return ToolChoice.of(character)
                .map(ToolChoice::kind)
                .filter(KINDS::contains)
                .filter(kind -> !clicks.isEmpty())
                .map(kind -> asking(new Settings(kind, settings.tolerance()), clicks, around))
                .orElse(Step.pass(this));
    }

    private Step keyed(Input.KeyName key, Surroundings around) {
        return switch (key) {
            case ENTER -> clicks.isEmpty() ? Step.pass(this) : accepted(around);
            case BACKSPACE -> clicks.isEmpty() ? Step.pass(this) : withoutLast(around);
            case ESCAPE -> clicks.isEmpty() ? Step.to(this, new Effect.Done()) : Step.to(dropped(), new Effect.Say(""));
            default -> Step.pass(this);
        };
    }

    private Step withoutLast(Surroundings around) {
        List<Click> left = clicks.subList(0, clicks.size() - 1);
        boolean anyInside = left.stream().anyMatch(click -> !click.takesAway());
        return asking(settings, anyInside ? left : List.of(), around);
    }

    private AssistTool dropped() {
        return new AssistTool(tracer, settings, List.of(), asked + 1, Optional.empty());
    }

    private Step accepted(Surroundings around) {
        Optional<AssistTracer.Found> now =
                found.filter(answer -> answer.asked() == asked).map(Answer::found);
        if (now.isEmpty()) {
            return Step.to(this, new Effect.Say("Still looking at the image; press Enter when the outline is there."));
        }
        if (now.get().isEmpty()) {
            return Step.to(this, new Effect.Say("Nothing was found here: click elsewhere, or press Esc."));
        }
        Feature feature = NewFeatures.area(settings.kind(), now.get().outline(), around.yard());
        return Step.to(
                dropped(),
                new Effect.Edit("trace " + settings.kind().word(), Edits.add(around.yard(), feature)),
                new Effect.Select(Selection.ofFeatures(List.of(feature.key()))),
                new Effect.Say(""));
    }

    @Override
    public List<Guide> guides(Surroundings around) {
        List<Guide> guides = new ArrayList<>();
        found.map(Answer::found).ifPresent(ground -> {
            ground.outline().rings().forEach(ring -> guides.add(new Guide.Line(ring, true, Guide.Style.DRAWN)));
            label(ground.outline()).ifPresent(at -> guides.add(new Guide.Words(at, words(ground, around))));
        });
        clicks.forEach(click -> guides.add(new Guide.Grip(click.at(), click.takesAway(), false)));
        return guides;
    }

    private static Optional<Point> label(Outline outline) {
        return outline.parts().isEmpty() ? Optional.empty() : Region.of(outline).innerPoint();
    }

    private String words(AssistTracer.Found ground, Surroundings around) {
        return settings.kind().word() + " "
                + Formatting.format(Measure.AREA, ground.areaM2(), around.units())
                        .text();
    }

    @Override
    public String hint() {
        return clicks.isEmpty()
                ? "Click inside a lawn, a roof or a drive on the image"
                : "Enter accepts · click adds · Alt-click takes away · [ and ] smaller, larger · Esc drops";
    }
}
