package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import loamline.desk.session.Selection;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.yard.AreaKinds;
import loamline.yard.Combine;
import loamline.yard.Copies;
import loamline.yard.Edits;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Naming;
import loamline.yard.Reshape;
import loamline.yard.Yard;

/** The editing commands. Features of unknown kind are left out of whatever is selected. */
public final class Commands {
    /** Copies come to lie this far east and south of what they copy, m: about a footstep, so that both are seen. */
    static final double COPY_OFFSET_M = 0.5;

    public static final Command COPY = new Command(
            "Copy",
            "Ctrl+C",
            context -> some(context).map(keys -> List.of(new Effect.Copy(Copies.of(context.yard(), keys)))));

    public static final Command CUT_OUT = new Command(
            "Cut",
            "Ctrl+X",
            context -> some(context)
                    .map(keys -> List.of(
                            new Effect.Copy(Copies.of(context.yard(), keys)),
                            edit("cut out", context, Edits.remove(context.yard(), keys)))));

    public static final Command PASTE =
            new Command("Paste", "Ctrl+V", context -> put("paste", context, context.copied()));

    public static final Command DUPLICATE =
            new Command("Duplicate", "Ctrl+D", context -> put("duplicate", context, context.features()));

    public static final Command REMOVE = onSome("Remove", "Delete", "remove", Edits::remove);

    public static final Command SELECT_ALL =
            new Command("Select all", "Ctrl+A", context -> selecting(context, feature -> true));

    public static final Command SELECT_KIND = new Command(
            "Select all of this kind",
            "Ctrl+Shift+A",
            context -> selecting(
                    context,
                    feature -> context.features().stream()
                            .anyMatch(chosen -> chosen.kind().equals(feature.kind()))));

    public static final Command JOIN = new Command(
            "Join",
            "Ctrl+J",
            context -> Combine.join(context.yard(), context.keys()).map(joined -> outcome("join", context, joined)));

    public static final Command CUT_ALONG = new Command(
            "Cut along a line …", "X", context -> taking(context, LineTool.cutting(), Commands::isCuttable));

    public static final Command MIRROR_ACROSS = new Command(
            "Mirror across a line …", "", context -> taking(context, LineTool.mirroring(), feature -> true));

    public static final Command TURN_RIGHT = turn("Turn right a quarter", "Ctrl+R", 90);

    public static final Command TURN_LEFT = turn("Turn left a quarter", "Ctrl+Shift+R", -90);

    public static final Command TURN_ABOUT =
            new Command("Turn about a place …", "", context -> taking(context, LineTool.turning(), feature -> true));

    public static final Command MIRROR_SIDEWAYS =
            new Command("Mirror left to right", "Ctrl+H", context -> mirrored(context, 0, 1));

    public static final Command MIRROR_UPSIDE =
            new Command("Mirror top to bottom", "Ctrl+Shift+H", context -> mirrored(context, 1, 0));

    public static final Command RAISE = onSome("Raise", "Ctrl+]", "raise", Copies::raised);

    public static final Command LOWER = onSome("Lower", "Ctrl+[", "lower", Copies::lowered);

    private static final List<Command> ALL = Stream.concat(
                    Stream.of(
                            COPY,
                            CUT_OUT,
                            PASTE,
                            DUPLICATE,
                            REMOVE,
                            SELECT_ALL,
                            SELECT_KIND,
                            JOIN,
                            CUT_ALONG,
                            TURN_RIGHT,
                            TURN_LEFT,
                            TURN_ABOUT,
                            MIRROR_SIDEWAYS,
                            MIRROR_UPSIDE,
                            MIRROR_ACROSS,
                            RAISE,
                            LOWER),
                    AreaKinds.ALL.stream().map(Commands::changeTo))
            .toList();

    private Commands() {}

    /** All of them that need no more to be said, in the order of a menu. */
    public static List<Command> all() {
        return ALL;
    }

    /** Whether it takes what is selected for another kind of ground. */
    public static boolean isChangeOfKind(Command command) {
        return ALL.indexOf(command) >= ALL.size() - AreaKinds.ALL.size();
    }

    /** Turns the selection about its middle. */
    private static Command turn(String label, String shortcut, double clockwiseDeg) {
        return onSome(
                label,
                shortcut,
                "turn",
                (yard, keys) -> Reshape.box(yard, keys)
                        .map(box -> Reshape.turned(yard, keys, box.centre(), clockwiseDeg))
                        .orElse(yard));
    }

    /** Gives the selected features a name. */
    public static Command rename(String name) {
        return new Command(
                "Rename",
                "",
                context -> each(
                        "rename",
                        context,
                        feature -> Naming.name(feature).isPresent(),
                        f -> Naming.renamed(f, name.strip())));
    }

    /** Takes the selected outlines for another kind of ground. */
    public static Command changeTo(Kind kind) {
        Predicate<Feature> isOther =
                feature -> AreaKinds.isArea(feature) && !feature.kind().equals(Optional.of(kind));
        return new Command(
                "Change to " + kind.word(),
                "",
                context -> context.features().stream().allMatch(AreaKinds::isArea)
                        ? each(
                                "change to " + kind.word() + ":",
                                context,
                                isOther,
                                feature -> AreaKinds.as(kind, feature))
                        : Optional.empty());
    }

    /** A command for anything that is selected. */
    private static Command onSome(
            String label, String shortcut, String verb, BiFunction<Yard, Set<String>, Yard> edit) {
        return new Command(
                label,
                shortcut,
                context -> some(context).map(keys -> List.of(edit(verb, context, edit.apply(context.yard(), keys)))));
    }

    private static Optional<Set<String>> some(Command.Context context) {
        return Optional.of(context.keys()).filter(keys -> !keys.isEmpty());
    }

    private static Effect edit(String verb, Command.Context context, Yard after) {
        return new Effect.Edit(verb + " " + Naming.called(context.yard(), context.keys()), after);
    }

    private static List<Effect> outcome(String verb, Command.Context context, Combine.Outcome outcome) {
        return List.of(edit(verb, context, outcome.yard()), new Effect.Select(Selection.ofFeatures(outcome.keys())));
    }

    private static Optional<List<Effect>> put(String verb, Command.Context context, List<Feature> copied) {
        if (copied.isEmpty()) {
            return Optional.empty();
        }
        Combine.Outcome pasted = Copies.paste(context.yard(), copied, COPY_OFFSET_M, -COPY_OFFSET_M);
        String what = copied.size() == 1 ? Naming.called(copied.get(0)) : copied.size() + " things";
        return Optional.of(List.of(
                new Effect.Edit(verb + " " + what, pasted.yard()),
                new Effect.Select(Selection.ofFeatures(pasted.keys()))));
    }

    private static Optional<List<Effect>> selecting(Command.Context context, Predicate<Feature> wanted) {
        List<String> keys = context.yard().features().stream()
                .filter(feature -> feature.kind().isPresent())
                .filter(wanted)
                .map(Feature::key)
                .toList();
        return keys.isEmpty() ? Optional.empty() : Optional.of(List.of(new Effect.Select(Selection.ofFeatures(keys))));
    }

    private static Optional<List<Effect>> taking(Command.Context context, Tool tool, Predicate<Feature> suits) {
        return context.features().stream().anyMatch(suits)
                ? Optional.of(List.of(new Effect.Take(tool)))
                : Optional.empty();
    }

    private static boolean isCuttable(Feature feature) {
        return feature.shape()
                .filter(shape -> shape instanceof Outline || shape instanceof Polyline)
                .isPresent();
    }

    /** Mirrored across the line through the middle of the selection in a direction. */
    private static Optional<List<Effect>> mirrored(Command.Context context, double dx, double dy) {
        Set<String> keys = context.keys();
        return Reshape.box(context.yard(), keys).map(box -> {
            Point middle = box.centre();
            Yard after = Reshape.mirrored(context.yard(), keys, middle, middle.plus(dx, dy));
            return List.of(edit("mirror", context, after));
        });
    }

    private static Optional<List<Effect>> each(
            String verb, Command.Context context, Predicate<Feature> suits, Function<Feature, Feature> change) {
        List<Feature> suiting = context.features().stream().filter(suits).toList();
        Yard changed = context.yard();
        for (Feature feature : suiting) {
            changed = Edits.replace(changed, change.apply(feature));
        }
        return suiting.isEmpty() ? Optional.empty() : Optional.of(List.of(edit(verb, context, changed)));
    }
}
