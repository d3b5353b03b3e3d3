package loamline.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.yard.Barrier.Opening;
import loamline.yard.Extras;
import loamline.yard.Head;
import loamline.yard.Panel;
import loamline.yard.Profile;
import org.jspecify.annotations.Nullable;

/** Property values that are more than a number or a text. */
final class PropertyValues {
    private static final JsonNames OPENING_NAMES = JsonNames.of("atM", "atFt", "widthM", "widthFt");

    private PropertyValues() {}

    /** Whether a word is the second of two; the first if it is missing. */
    static boolean either(JsonMembers p, String name, String first, String second) {
        return p.word(name, word -> isSecond(word, first, second), first + " or " + second)
                .orElse(false);
    }

    private static Optional<Boolean> isSecond(String word, String first, String second) {
        boolean isSecond = word.strip().equalsIgnoreCase(second);
        return isSecond || word.strip().equalsIgnoreCase(first) ? Optional.of(isSecond) : Optional.empty();
    }

    /** A panel without a height cannot be reckoned with, and leaving it out would lose the drawing. */
    static double panelHeightM(JsonMembers p) {
        OptionalDouble heightM = p.lengthM("height");
        if (heightM.isEmpty()) {
            p.log()
                    .warning(
                            "HEIGHT_ASSUMED",
                            p.at("heightM"),
                            "this panel has no height; " + Panel.DEFAULT_HEIGHT_M + " m is taken: give “heightM”");
        }
        return heightM.orElse(Panel.DEFAULT_HEIGHT_M);
    }

    /** The gaps of a fence; those without a place or a width are reported and left out. */
    static List<Opening> openings(JsonMembers p) {
        List<Opening> openings = new ArrayList<>();
        List<?> list = p.list("gates");
        for (int i = 0; i < list.size(); i++) {
            String at = p.at("gates") + "/" + i;
            Map<?, ?> gate = list.get(i) instanceof Map<?, ?> map ? map : Map.of();
            opening(new JsonMembers(gate, at, p.log())).ifPresent(openings::add);
        }
        return openings;
    }

    private static Optional<Opening> opening(JsonMembers gate) {
        OptionalDouble atM = gate.lengthM("at");
        OptionalDouble widthM = gate.lengthM("width");
        if (atM.isEmpty() || widthM.isEmpty()) {
            gate.log()
                    .error(
                            "GATE_INCOMPLETE",
                            gate.pointer(),
                            "a gate needs “atM” (metres along the line) and “widthM”; it is left out: give both");
            return Optional.empty();
        }
        Extras extras = new Extras(gate.others(OPENING_NAMES));
        return Optional.of(new Opening(atM.getAsDouble(), widthM.getAsDouble(), extras));
    }

    static Map<String, @Nullable Object> written(Opening opening) {
        Map<String, @Nullable Object> gate = new LinkedHashMap<>();
        gate.put("atM", opening.atM());
        gate.put("widthM", opening.widthM());
        OPENING_NAMES.addOthers(opening.extras().members(), gate);
        return gate;
    }

    /** A profile by name or by measured depths. */
    static Profile profile(JsonMembers p) {
        if (p.members().get("profile") instanceof List<?> depths) {
            return measured(depths, p);
        }
        return p.word("profile", PropertyValues::named, "cone, uniform, parabola, ellipse, ring or a list of depths")
                .orElse(Head.DEFAULT_PROFILE);
    }

    private static Optional<Profile> named(String word) {
        return Arrays.stream(Profile.Named.values())
                .filter(named -> named.name().equalsIgnoreCase(word.strip()))
                .<Profile>map(named -> named)
                .findFirst();
    }

    private static Profile measured(List<?> depths, JsonMembers p) {
        try {
            return new Profile.Measured(depths.stream()
                    .map(depth -> depth instanceof Number number ? number.doubleValue() : Double.NaN)
                    .toList());
        } catch (IllegalArgumentException notAProfile) {
            p.wrong("profile", "two or more depths from head to rim, none negative, not all 0");
            return Head.DEFAULT_PROFILE;
        }
    }

    static Object written(Profile profile) {
        return profile instanceof Profile.Measured measured
                ? measured.depths()
                : ((Profile.Named) profile).name().toLowerCase(Locale.ROOT);
    }
}
