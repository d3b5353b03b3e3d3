package loamline.yard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import loamline.account.Problem;
import loamline.account.Where;

/**
 * What a property can be.
 *
 * @param property its name in files
 * @param least below this it cannot be
 * @param likely above this it is hardly meant: feet given as metres, or a slip of the point
 * @param most above this it cannot be
 */
record Limit<F extends Feature>(
        Class<F> type, String property, Function<F, OptionalDouble> value, double least, double likely, double most) {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
    private static final double ABOVE_0 = Double.MIN_VALUE;

    /** Ranges are by definition; what is likely is common practice, no source. */
    private static final List<Limit<?>> ALL = List.of(
            given(Turf.class, "trouble", Turf::trouble).within(0, 1),
            given(Turf.class, "slopePct", Turf::slopePct).within(0, NO_LIMIT),
            always(Building.class, "heightM", Building::heightM)
                    .within(0, NO_LIMIT)
                    .likelyTo(60),
            always(Building.class, "eaveM", Building::eaveM).within(0, NO_LIMIT).likelyTo(5),
            always(Barrier.class, "heightM", Barrier::heightM)
                    .within(0, NO_LIMIT)
                    .likelyTo(6),
            given(Tree.class, "crownRadiusM", Tree::crownRadiusM)
                    .within(ABOVE_0, NO_LIMIT)
                    .likelyTo(25),
            given(Tree.class, "heightM", Tree::heightM)
                    .within(ABOVE_0, NO_LIMIT)
                    .likelyTo(60),
            always(Tree.class, "trunkRadiusM", Tree::trunkRadiusM)
                    .within(0, NO_LIMIT)
                    .likelyTo(3),
            always(Tree.class, "transmission", Tree::transmission).within(0, 1),
            given(Tree.class, "baseM", Tree::baseM).within(0, NO_LIMIT),
            given(Head.class, "radiusM", Head::radiusM)
                    .within(ABOVE_0, NO_LIMIT)
                    .likelyTo(40),
            always(Head.class, "arcSweepDeg", Head::arcSweepDeg).within(1, Head.FULL_CIRCLE_DEG),
            given(Head.class, "flowLpm", Head::flowLpm)
                    .within(ABOVE_0, NO_LIMIT)
                    .likelyTo(400),
            always(Head.class, "mountM", Head::mountM).within(0, NO_LIMIT).likelyTo(3),
            always(KeepAway.class, "radiusM", KeepAway::radiusM)
                    .within(0, NO_LIMIT)
                    .likelyTo(50),
            given(Trouble.class, "quality", Limit::quality).within(1, 9),
            always(Panel.class, "heightM", Panel::heightM).within(ABOVE_0, NO_LIMIT),
            always(Panel.class, "bottomM", Panel::bottomM).within(0, NO_LIMIT),
            always(Panel.class, "tiltDeg", Panel::tiltDeg).within(-90, 90));

    /** All limits that a feature breaks. */
    static List<Problem> broken(int index, Feature feature) {
        return ALL.stream()
                .flatMap(limit -> limit.brokenBy(index, feature).stream())
                .toList();
    }

    /** The limit of a property as bounds, if it has one. */
    static Optional<Bounds> bounds(Class<? extends Feature> type, String property) {
        return ALL.stream()
                .filter(limit -> limit.type.equals(type) && limit.property.equals(property))
                .findFirst()
                .map(limit -> new Bounds(limit.least, limit.likely, limit.most));
    }

    private static <F extends Feature> Limit<F> given(
            Class<F> type, String property, Function<F, OptionalDouble> value) {
        return new Limit<>(type, property, value, -NO_LIMIT, NO_LIMIT, NO_LIMIT);
    }

    private static <F extends Feature> Limit<F> always(Class<F> type, String property, ToDoubleFunction<F> value) {
        return given(type, property, feature -> OptionalDouble.of(value.applyAsDouble(feature)));
    }

    private static OptionalDouble quality(Trouble trouble) {
        return trouble.quality().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(trouble.quality().getAsInt());
    }

    private Limit<F> within(double newLeast, double newMost) {
        return new Limit<>(type, property, value, newLeast, newMost, newMost);
    }

    private Limit<F> likelyTo(double newLikely) {
        return new Limit<>(type, property, value, least, newLikely, most);
    }

    private Optional<Problem> brokenBy(int index, Feature feature) {
        OptionalDouble found = type.isInstance(feature) ? value.apply(type.cast(feature)) : OptionalDouble.empty();
        if (found.isEmpty()) {
            return Optional.empty();
        }
        double v = found.getAsDouble();
        String what = "“" + property + "” of " + CheckWords.name(feature) + " is " + number(v);
        if (!(v >= least && v <= most)) {
            return Optional.of(Problem.error(
                    "VALUE_OUT_OF_RANGE", Where.feature(index), what + " but must be " + range() + ": correct it"));
        }
        return v <= likely
                ? Optional.empty()
                : Optional.of(Problem.warning(
                        "VALUE_UNLIKELY",
                        Where.feature(index),
                        what + "; more than " + number(likely) + " is hardly meant: check the number and its unit"));
    }

    private String range() {
        if (most < NO_LIMIT) {
            return number(least) + " to " + number(most);
        }
        return least == ABOVE_0 ? "above 0" : number(least) + " or more";
    }

    private static String number(double v) {
        return v == Math.rint(v) && Math.abs(v) < 1e15 ? String.valueOf((long) v) : String.valueOf(v);
    }
}
