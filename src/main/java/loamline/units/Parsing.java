package loamline.units;

import loamline.units.ParseResult.Reason;
import loamline.units.ParseResult.Refused;

/**
 * From a typed text to a value.
 *
 * <p>The grammar, in any case, with or without the blanks:
 *
 * <ul>
 *   <li>A number and a unit of either system: {@code 12.5 ft}, {@code 3gpm}, {@code 7410 sq. ft.}, {@code 5 lb per 1,000
 *       ft²}. A bare number is in the unit that the default system shows.
 *   <li>A number is {@code 12.5}, {@code 3/4}, {@code 1 1/2}, {@code 1-1/2} or {@code 1½}.
 *   <li>A unit counted out in a smaller one may go on in that one, written or not: {@code 12 ft 6 in}, {@code 12'6"},
 *       {@code 12'-6"}, {@code 12' 6}, {@code 1 h 30 min}, {@code 5 lb 4 oz}. The second number must be less than one
 *       of the first unit, and a hyphen or comma between the two only joins them.
 *   <li>A sign stands in front and holds for the whole: {@code -12 ft 6 in} is -12.5 ft.
 * </ul>
 *
 * <p>The rule for points and commas, the same in both systems:
 *
 * <ul>
 *   <li>One point and no comma: decimal. {@code 1.250} is 1.25.
 *   <li>One comma and no point: between thousands if it stands after one to three digits, the first not zero, and before
 *       exactly three ({@code 1,000} is a thousand); else decimal ({@code 12,5} is 12.5 and {@code 0,125} is an eighth).
 *   <li>Both, or one of them repeated, or blanks: thousands where they cut groups of three, and the last mark, of the
 *       other kind, is decimal. {@code 1,234.5}, {@code 1.234,5}, {@code 1 234,5} are the same.
 *   <li>Anything else, as {@code 1,00,0}, is no number. Exponents are not read.
 * </ul>
 *
 * <p>Blanks may be of any kind, the minus sign, primes, quotation marks, raised digits and fractions those of Unicode.
 */
public final class Parsing {
    /** Longest text that is read; no quantity needs more. It also keeps every number far from overflow. */
    public static final int MAX_CHARS = 100;

    private Parsing() {}

    /**
     * Reads a text.
     *
     * @param defaultSystem what a bare number means
     * @return the value in the measure's stored unit, of any sign; or why there is none
     */
    public static ParseResult parse(Measure measure, String text, UnitSystem defaultSystem) {
        if (text.length() > MAX_CHARS) {
            return new Refused(Reason.TOO_LONG, MAX_CHARS, text.substring(MAX_CHARS), measure);
        }
        return new QuantityReader(measure, text, defaultSystem).read();
    }
}
