package loamline.units;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number without sign as people write it: {@code 12.5}, {@code 12,5}, {@code 7,410}, {@code 7.410,5}, {@code 7 410},
 * {@code 3/4}, {@code 1 1/2}, {@code 1-1/2}. {@link Parsing} has the rule for points and commas.
 */
final class Numeral {
    /** The longest stretch of {@link PlainText} that is meant as one number, well formed or not. */
    static final Pattern STRETCH = Pattern.compile(
            "(?:\\d+[ -])?\\d+ ?/ ?\\d+" // a fraction, perhaps after a whole
                    + "|\\d{1,3}(?: \\d{3}(?![\\d]| ?/))+(?:[.,]\\d+)?" // thousands set apart by blanks
                    + "|[.,]?\\d[\\d.,]*(?<!,)");

    private static final Pattern FRACTION = Pattern.compile("(?:(\\d+)[ -])?(\\d+) ?/ ?(\\d+)");

    private Numeral() {}

    /** The value of a {@link #STRETCH}; empty if it makes no number. Finite for a stretch of at most 300 characters. */
    static OptionalDouble valueOf(String stretch) {
        Matcher fraction = FRACTION.matcher(stretch);
        if (fraction.matches()) {
            double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
            double divisor = Double.parseDouble(fraction.group(3));
            return divisor == 0
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(whole + Double.parseDouble(fraction.group(2)) / divisor);
        }
        for (Notation notation : Notation.values()) {
            if (notation.form.matcher(stretch).matches()) {
                return OptionalDouble.of(notation.read(stretch));
            }
        }
        return OptionalDouble.empty();
    }

    /** The ways to write whole and decimals; no text fits two of them. */
    private enum Notation {
        POINT("\\d+\\.?\\d*|\\.\\d+", "", "."),
        COMMA("(?![1-9]\\d{0,2},\\d{3}$)\\d*,\\d+", "", ","),
        GROUPED_BY_COMMA("[1-9]\\d{0,2}(,\\d{3})+(\\.\\d*)?", ",", "."),
        GROUPED_BY_POINT("[1-9]\\d{0,2}(\\.\\d{3})+(\\.\\d{3}|,\\d+)", ".", ","),
        GROUPED_BY_BLANK("[1-9]\\d{0,2}( \\d{3})+([.,]\\d+)?", " ", ",");

        private final Pattern form;
        private final String group;
        private final String decimal;

        Notation(String form, String group, String decimal) {
            this.form = Pattern.compile(form);
            this.group = group;
            this.decimal = decimal;
        }

        private double read(String stretch) {
            return Double.parseDouble(stretch.replace(group, "").replace(decimal, "."));
        }
    }
}
