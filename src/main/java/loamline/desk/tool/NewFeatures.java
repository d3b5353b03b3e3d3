package loamline.desk.tool;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Edits;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Gate;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Panel;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;
import loamline.yard.Yard;

/** Features as they are when just drawn: a free key, the next name of their kind, and the usual sizes. */
final class NewFeatures {
    private NewFeatures() {}

    /** @throws IllegalArgumentException if the kind has no outline */
    static Feature area(Kind kind, Outline outline, Yard yard) {
        String key = Edits.freeKey(yard);
        return switch (kind) {
            case BOUNDARY -> new Boundary(key, "", outline, Extras.NONE);
            case TURF ->
                new Turf(
                        key,
                        freeName("Turf", Turf::zone, yard.all(Turf.class)),
                        "",
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        outline,
                        Extras.NONE);
            case BUILDING ->
                new Building(
                        key,
                        freeName("Building", Building::name, yard.all(Building.class)),
                        Building.DEFAULT_HEIGHT_M,
                        0,
                        outline,
                        Extras.NONE);
            case BED, PAVING, GRAVEL, WATER, DECK ->
                new Cover(key, kind, freeName(capital(kind), Cover::name, yard.all(Cover.class)), outline, Extras.NONE);
            case TROUBLE -> new Trouble(key, "", OptionalInt.empty(), outline, Extras.NONE);
            case KEEPAWAY -> keepAway(outline, OptionalDouble.empty(), yard);
            default -> throw new IllegalArgumentException(kind + " has no outline");
        };
    }

    /** @throws IllegalArgumentException if the kind is no line */
    static Feature line(Kind kind, Polyline line, Yard yard) {
        String key = Edits.freeKey(yard);
        return switch (kind) {
            case FENCE, WALL -> new Barrier(key, kind, Barrier.DEFAULT_HEIGHT_M, List.of(), true, line, Extras.NONE);
            case PANEL -> new Panel(key, Panel.DEFAULT_HEIGHT_M, 0, 0, line, Extras.NONE);
            case KEEPAWAY -> keepAway(line, OptionalDouble.empty(), yard);
            default -> throw new IllegalArgumentException(kind + " is no line");
        };
    }

    /** A tree whose height is not known yet. */
    static Feature tree(Point at, OptionalDouble crownRadiusM, Yard yard) {
        return new Tree(
                Edits.freeKey(yard),
                crownRadiusM,
                OptionalDouble.empty(),
                Tree.DEFAULT_TRUNK_RADIUS_M,
                false,
                Tree.DEFAULT_TRANSMISSION,
                OptionalDouble.empty(),
                false,
                at,
                Extras.NONE);
    }

    /** A head without a valve, the first of h1, h2, … that is free. */
    static Feature head(Point at, OptionalDouble radiusM, double arcStartDeg, double arcSweepDeg, Yard yard) {
        return new Head(
                Edits.freeKey(yard),
                free(n -> "h" + n, yard.all(Head.class).map(Head::id)),
                "",
                Optional.empty(),
                radiusM,
                arcStartDeg,
                arcSweepDeg,
                OptionalDouble.empty(),
                Head.DEFAULT_PROFILE,
                0,
                at,
                Extras.NONE);
    }

    static Feature gate(Point at, Yard yard) {
        return new Gate(Edits.freeKey(yard), at, Extras.NONE);
    }

    static Feature keepAway(Shape place, OptionalDouble radiusM, Yard yard) {
        return new KeepAway(Edits.freeKey(yard), radiusM.orElse(KeepAway.DEFAULT_RADIUS_M), "", place, Extras.NONE);
    }

    /** The first of "Bed", "Bed 2", "Bed 3", … that is free. */
    private static <T> String freeName(String word, Function<T, String> name, Stream<T> others) {
        return free(n -> n == 1 ? word : word + " " + n, others.map(name));
    }

    /** The first of a row of names that nobody has, in any case. */
    private static String free(IntFunction<String> nth, Stream<String> taken) {
        var lower = taken.map(name -> name.strip().toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
        int n = 1;
        while (lower.contains(nth.apply(n).toLowerCase(Locale.ROOT))) {
            n++;
        }
        return nth.apply(n);
    }

    private static String capital(Kind kind) {
        return kind.name().charAt(0) + kind.word().substring(1);
    }
}
