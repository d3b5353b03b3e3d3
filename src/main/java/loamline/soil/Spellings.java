package loamline.soil;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Finds what a text names, whatever its case, blanks, hyphens, brackets and raised digits.
 *
 * @param byName by the name as {@link #plain} has it; no name stands for two things
 */
record Spellings<T>(Map<String, T> byName) {
    private static final Pattern IDLE = Pattern.compile("[\\s()_+-]");

    /**
     * The names of some things.
     *
     * @param others further names of a thing, divided by {@code |}; may be empty
     * @throws IllegalStateException if two things have one name
     */
    static <T> Spellings<T> of(T[] things, Function<T, String> label, Function<T, String> others) {
        Map<String, T> byName = new HashMap<>();
        for (T thing : things) {
            List<String> names = new ArrayList<>(List.of(others.apply(thing).split("\\|", -1)));
            names.add(label.apply(thing));
            names.removeIf(String::isEmpty);
            for (String name : names) {
                T other = byName.put(plain(name), thing);
                if (other != null && !other.equals(thing)) {
                    throw new IllegalStateException("“" + name + "” names both " + other + " and " + thing);
                }
            }
        }
        return new Spellings<>(byName);
    }

    Optional<T> find(String text) {
        return Optional.ofNullable(byName.get(plain(text)));
    }

    static String plain(String text) {
        String lower = text.toLowerCase(Locale.ROOT)
                .replace('³', '3')
                .replace('²', '2')
                .replace('₂', '2')
                .replace('¹', '1')
                .replace('⁻', '-')
                .replace('µ', 'u')
                .replace('μ', 'u')
                .replace(" per ", "/");
        return IDLE.matcher(lower).replaceAll("");
    }
}
