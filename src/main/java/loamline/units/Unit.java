package loamline.units;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One way to write a measure.
 *
 * @param symbol what is shown, such as {@code ft²}
 * @param size how many of the measure's stored unit make one of this; positive
 * @param spellings what is understood, lower case: a blank may be left out, {@code /} may be written "per", {@code 1000}
 *     may be grouped, and {@code 2} or {@code 3} may be raised
 * @param smaller the unit that this one is counted out in, as a foot in inches
 * @param pattern the spellings as they stand in a {@link PlainText}, with a blank before or none
 */
record Unit(String symbol, double size, List<String> spellings, Optional<Unit> smaller, Pattern pattern) {

    /** What may not follow a unit: it would be part of a longer word. */
    private static final String END_OF_WORD = "(?! ?[a-z/^'\"°])";

    /** A unit with its spellings, separated by {@code |}. */
    static Unit of(String symbol, double size, String spellings) {
        List<String> all = List.of(spellings.split("\\|"));
        return new Unit(symbol, size, all, Optional.empty(), patternOf(all));
    }

    /** The same unit, counted out in a smaller one of the same measure. */
    Unit countedIn(Unit smallerUnit) {
        return new Unit(symbol, size, spellings, Optional.of(smallerUnit), pattern);
    }

    private static Pattern patternOf(List<String> spellings) {
        return Pattern.compile(
                spellings.stream().map(Unit::regexOf).collect(Collectors.joining("|", " ?(?:", ")" + END_OF_WORD)));
    }

    private static String regexOf(String spelling) {
        return spelling.replaceAll("(?<=[a-z])([23])", "\\\\^?$1")
                .replace(" ", " ?")
                .replace("/", " ?(?:/|per) ?")
                .replace("1000", "1[, ]?000");
    }
}
