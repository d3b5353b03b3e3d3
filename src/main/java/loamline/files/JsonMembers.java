package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import loamline.place.LonLat;
import loamline.units.Factors;
import org.jspecify.annotations.Nullable;

/**
 * The members of one JSON object, asked for by name. A member that is missing or {@code null} is empty; so is
 * one of the wrong type, which is also reported as an error.
 *
 * @param members as read
 * @param pointer where the object is
 * @param log takes what is wrong
 */
record JsonMembers(Map<?, ?> members, String pointer, ProblemLog log) {
    private static final int EXCERPT_LENGTH = 40;

    /** The pointer to a member of this object. */
    String at(String name) {
        return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
    }

    /** A text; a number counts as its digits. */
    Optional<String> text(String name) {
        Object value = members.get(name);
        if (value instanceof Number number) {
            return Optional.of(JsonText.number(number));
        }
        return typed(name, String.class, "a text in quotes");
    }

    String text(String name, String otherwise) {
        return text(name).orElse(otherwise);
    }

    OptionalDouble number(String name) {
        Optional<Number> number = typed(name, Number.class, "a number without quotes");
        if (number.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = number.get().doubleValue();
        if (Double.isInfinite(value)) {
            log.error("NUMBER_TOO_LARGE", at(name), "“" + name + "” is beyond all measure: give a sensible number");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    double number(String name, double otherwise) {
        return number(name).orElse(otherwise);
    }

    /** A length in metres: the stem with M after it, or with Ft if given in feet; M counts if both are there. */
    OptionalDouble lengthM(String stem) {
        OptionalDouble metres = number(stem + "M");
        OptionalDouble feet = number(stem + "Ft");
        if (metres.isPresent() && feet.isPresent()) {
            log.warning(
                    "LENGTH_TWICE",
                    at(stem + "Ft"),
                    "“" + stem + "M” is given too and counts: remove “" + stem + "Ft”");
        }
        return metres.isPresent() || feet.isEmpty() ? metres : OptionalDouble.of(feet.getAsDouble() * Factors.M_PER_FT);
    }

    double lengthM(String stem, double otherwise) {
        return lengthM(stem).orElse(otherwise);
    }

    OptionalInt whole(String name) {
        OptionalDouble number = number(name);
        if (number.isEmpty() || number.getAsDouble() == (int) number.getAsDouble()) {
            return number.isEmpty() ? OptionalInt.empty() : OptionalInt.of((int) number.getAsDouble());
        }
        wrong(name, "a whole number");
        return OptionalInt.empty();
    }

    boolean flag(String name, boolean otherwise) {
        return typed(name, Boolean.class, "true or false").orElse(otherwise);
    }

    /** One of a set of words. */
    <E> Optional<E> word(String name, Function<String, Optional<E>> meaning, String choices) {
        Optional<String> word = typed(name, String.class, choices);
        Optional<E> meant = word.flatMap(meaning);
        if (word.isPresent() && meant.isEmpty()) {
            wrong(name, choices);
        }
        return meant;
    }

    /** A list, whose elements may be null; no elements if it is missing. */
    List<?> list(String name) {
        Object value = members.get(name);
        if (value instanceof List<?> list) {
            return list;
        }
        if (value != null) {
            wrong(name, "a list in [ ]");
        }
        return List.of();
    }

    /** A place on the earth as [longitude, latitude], where a yard may lie. */
    Optional<LonLat> lonLat(String name) {
        List<?> pair = list(name);
        if (pair.size() == 2
                && pair.get(0) instanceof Number lon
                && pair.get(1) instanceof Number lat
                && EarthPlace.hasTurf(lon.doubleValue(), lat.doubleValue())) {
            return Optional.of(new LonLat(lon.doubleValue(), lat.doubleValue()));
        }
        if (members.get(name) instanceof List<?>) {
            wrong(name, "[longitude, latitude]");
        }
        return Optional.empty();
    }

    Optional<JsonMembers> object(String name) {
        return typed(name, Map.class, "an object in { }").map(object -> new JsonMembers(object, at(name), log));
    }

    private <T> Optional<T> typed(String name, Class<T> type, String wanted) {
        Object value = members.get(name);
        if (value == null) {
            return Optional.empty();
        }
        if (!type.isInstance(value)) {
            wrong(name, wanted);
            return Optional.empty();
        }
        return Optional.of(type.cast(value));
    }

    /** Reports a member that is not what it should be. */
    void wrong(String name, String wanted) {
        log.error(
                "WRONG_TYPE",
                at(name),
                "“" + name + "” must be " + wanted + ", not " + JsonText.excerpt(members.get(name), EXCERPT_LENGTH)
                        + "; it is left out");
    }

    /** Members that are not ours, under their names in memory; each name is reported once. */
    Map<String, @Nullable Object> others(JsonNames names) {
        Map<String, @Nullable Object> others = new LinkedHashMap<>();
        members.forEach((key, value) -> {
            String name = String.valueOf(key);
            if (names.isOurs(name)) {
                return;
            }
            if (Kept.isTooDeep(value)) {
                log.warning(
                        "MEMBER_TOO_DEEP",
                        at(name),
                        "“" + name + "” is not known and nested too deep to be kept; it is left out");
                return;
            }
            log.infoOnce("UNKNOWN_PROPERTY", name, at(name), "“" + name + "” is not known here; it is kept as it is");
            others.put(names.inMemory(name), value);
        });
        return others;
    }
}
