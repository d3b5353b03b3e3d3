package loamline.files;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the points and commas of a table's numbers mean.
 *
 * <p>Most numbers speak for themselves: {@code 12.5}, {@code 12,5}, {@code 1,234.5}, {@code 1.234,5}, {@code
 * 1,234,567}. One mark before exactly three digits does not; then the table's other numbers decide, and if they do not
 * either, the number is refused rather than guessed:
 *
 * <table>
 *   <caption>One mark before three digits</caption>
 *   <tr><th>elsewhere in the table</th><th>1,234</th><th>1.234</th></tr>
 *   <tr><td>decimal points only</td><td>1234</td><td>1.234</td></tr>
 *   <tr><td>decimal commas only</td><td>1.234</td><td>1234</td></tr>
 *   <tr><td>neither, cells parted by semicolons</td><td>1.234</td><td>1.234</td></tr>
 *   <tr><td>neither, cells parted otherwise</td><td>refused</td><td>1.234</td></tr>
 *   <tr><td>both</td><td>refused</td><td>refused</td></tr>
 * </table>
 *
 * @param points whether a number with a decimal point was seen
 * @param commas whether a number with a decimal comma was seen
 * @param separator what parts the cells
 */
record NumberStyle(boolean points, boolean commas, char separator) {
    /** The longest text that is read as a number; no measured value needs more. */
    private static final int MAX_CHARS = 40;

    private enum Notation {
        WHOLE("\\d+(?:[eE][-+]?\\d{1,3})?"),
        UNCLEAR_COMMA("[1-9]\\d{0,2},\\d{3}"),
        UNCLEAR_POINT("[1-9]\\d{0,2}\\.\\d{3}"),
        DECIMAL_POINT("(?:\\d+\\.\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?"
                + "|[1-9]\\d{0,2}(?:,\\d{3})+\\.\\d*|[1-9]\\d{0,2}(?:,\\d{3}){2,}"),
        DECIMAL_COMMA("(?:\\d+,\\d*|,\\d+)(?:[eE][-+]?\\d{1,3})?"
                + "|[1-9]\\d{0,2}(?:\\.\\d{3})+,\\d*|[1-9]\\d{0,2}(?:\\.\\d{3}){2,}");

        private final Pattern form;

        Notation(String form) {
            this.form = Pattern.compile("[-+]?(?:" + form + ")");
        }

        static Optional<Notation> of(String text) {
            return text.length() > MAX_CHARS
                    ? Optional.empty()
                    : Arrays.stream(values())
                            .filter(n -> n.form.matcher(text).matches())
                            .findFirst();
        }
    }

    /** The style of a table, told from all its cells. */
    static NumberStyle of(Stream<String> cells, char separator) {
        Set<Notation> seen = EnumSet.noneOf(Notation.class);
        cells.filter(cell -> cell.indexOf('.') >= 0 || cell.indexOf(',') >= 0)
                .forEach(cell -> Notation.of(cell).ifPresent(seen::add));
        return new NumberStyle(seen.contains(Notation.DECIMAL_POINT), seen.contains(Notation.DECIMAL_COMMA), separator);
    }

    /** The value of a cell, finite; empty if it is no number or may mean two. */
    OptionalDouble read(String cell) {
        String text = cell.replace('−', '-');
        return Notation.of(text).map(notation -> value(text, notation)).orElse(OptionalDouble.empty());
    }

    /** Whether a cell is a number that may mean two in this table. */
    boolean isUnclear(String cell) {
        return read(cell).isEmpty()
                && Notation.of(cell)
                        .filter(n -> n == Notation.UNCLEAR_COMMA || n == Notation.UNCLEAR_POINT)
                        .isPresent();
    }

    private OptionalDouble value(String text, Notation notation) {
        return switch (notation) {
            case WHOLE, DECIMAL_POINT -> withDecimalPoint(text);
            case DECIMAL_COMMA -> withDecimalComma(text);
            case UNCLEAR_POINT -> unclear(text, OptionalDouble.of(Double.parseDouble(text)));
            case UNCLEAR_COMMA -> unclear(text, separator == ';' ? withDecimalComma(text) : OptionalDouble.empty());
        };
    }

    private OptionalDouble unclear(String text, OptionalDouble ifNothingTells) {
        if (points && commas) {
            return OptionalDouble.empty();
        }
        if (points) {
            return withDecimalPoint(text);
        }
        return commas ? withDecimalComma(text) : ifNothingTells;
    }

    private static OptionalDouble withDecimalPoint(String text) {
        double value = Double.parseDouble(text.replace(",", ""));
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static OptionalDouble withDecimalComma(String text) {
        return withDecimalPoint(text.replace(".", "").replace(',', '.'));
    }
}
