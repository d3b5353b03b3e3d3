package loamline.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import loamline.units.UnitTable.Shown;

/**
 * From a value to what is read. Halves round away from zero, as people do by hand.
 *
 * <p>All methods take values in the measure's stored unit and throw {@link IllegalArgumentException} for NaN and
 * infinities.
 */
public final class Formatting {
    /** Significant digits that {@link #editable} keeps: more than a person measures, fewer than arithmetic blurs. */
    public static final int EDITABLE_DIGITS = 9;

    private static final int CONCISE_DIGITS = 4;

    /** Decimals of a standard error beyond which it is shown as 0; no measure here is read finer. */
    static final int FINEST_DECIMALS = 6;

    /** Digits of a {@code double} that a conversion there and back leaves alone: 12.45 ft stays 12.45, not 12.4499…. */
    private static final MathContext SOUND_DIGITS = new MathContext(14, RoundingMode.HALF_UP);

    private static final BigDecimal LEAST_FOR_ONE_DIGIT = new BigDecimal("3.55");

    private Formatting() {}

    /** With the digits that suit the measure: {@code 7,410 ft²}, {@code 12.5 ft}, {@code 0.75 in}. */
    public static Formatted format(Measure measure, double stored, UnitSystem system) {
        Shown shown = UnitTable.of(measure).shown(system);
        BigDecimal number = inUnit(stored, shown.unit());
        return new Formatted(
                grouped(number, usualDecimals(number, shown)), shown.unit().symbol());
    }

    /** With a number of decimals, 0 or more. */
    public static Formatted format(Measure measure, double stored, UnitSystem system, int decimals) {
        if (decimals < 0) {
            throw new IllegalArgumentException("decimals must be 0 or more, not " + decimals);
        }
        Unit unit = UnitTable.of(measure).shown(system).unit();
        return new Formatted(grouped(inUnit(stored, unit), decimals), unit.symbol());
    }

    /**
     * With {@value #EDITABLE_DIGITS} significant digits and no idle zeros or thousands marks, for a field that is edited
     * and read back: {@code 12.5 ft}, {@code 7410 ft²}.
     */
    public static Formatted editable(Measure measure, double stored, UnitSystem system) {
        return shortest(measure, stored, system, new MathContext(EDITABLE_DIGITS, RoundingMode.HALF_UP));
    }

    /**
     * As {@link #editable}, with {@value #CONCISE_DIGITS} digits: for a field that is read more often than it is edited,
     * and whose text is read back only once somebody has changed it.
     */
    public static Formatted concise(Measure measure, double stored, UnitSystem system) {
        return shortest(measure, stored, system, new MathContext(CONCISE_DIGITS, RoundingMode.HALF_UP));
    }

    /**
     * With its standard error, both to the last digit that the error leaves meaning: {@code 7,410 ± 90 ft²}. The error
     * keeps two digits if its first three are 100 to 354, else one, so that 0.95 becomes 1.0 (Particle Data Group, Review
     * of Particle Physics, Introduction, section 5.3 "Rounding"). An error that rounds to zero in the sixth decimal is
     * shown as 0, beside the value with its usual digits.
     *
     * @param standardError in the stored unit, 0 or more
     */
    public static Formatted withStandardError(Measure measure, double stored, double standardError, UnitSystem system) {
        if (standardError < 0) {
            throw new IllegalArgumentException("standardError must be 0 or more, not " + standardError);
        }
        Shown shown = UnitTable.of(measure).shown(system);
        BigDecimal number = inUnit(stored, shown.unit());
        BigDecimal error = inUnit(standardError, shown.unit());
        String text = rounded(error, FINEST_DECIMALS).signum() == 0
                ? grouped(number, usualDecimals(number, shown)) + " ± 0"
                : grouped(number, decimalsOf(error)) + " ± " + grouped(error, decimalsOf(error));
        return new Formatted(text, shown.unit().symbol());
    }

    /** Rounded to significant digits, without idle zeros or thousands marks. */
    static Formatted shortest(Measure measure, double stored, UnitSystem system, MathContext digits) {
        Unit unit = UnitTable.of(measure).shown(system).unit();
        BigDecimal number = inUnit(stored, unit).round(digits).stripTrailingZeros();
        return new Formatted(number.toPlainString(), unit.symbol());
    }

    /** The decimals that a positive standard error leaves; negative where it rounds to tens or more. */
    private static int decimalsOf(BigDecimal error) {
        int exponent = error.precision() - error.scale() - 1;
        boolean twoDigits = error.movePointLeft(exponent).compareTo(LEAST_FOR_ONE_DIGIT) < 0;
        return Math.min(twoDigits ? 1 - exponent : -exponent, FINEST_DECIMALS);
    }

    private static int usualDecimals(BigDecimal number, Shown shown) {
        if (roundsBelow(10, number, shown.below10())) {
            return shown.below10();
        }
        return roundsBelow(100, number, shown.below100()) ? shown.below100() : 0;
    }

    private static boolean roundsBelow(int limit, BigDecimal number, int decimals) {
        return rounded(number, decimals).abs().compareTo(BigDecimal.valueOf(limit)) < 0;
    }

    private static String grouped(BigDecimal number, int decimals) {
        return String.format(Locale.ROOT, "%,." + Math.max(0, decimals) + "f", rounded(number, decimals));
    }

    private static BigDecimal rounded(BigDecimal number, int decimals) {
        return number.setScale(decimals, RoundingMode.HALF_UP);
    }

    private static BigDecimal inUnit(double stored, Unit unit) {
        double number = stored / unit.size();
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("value must be finite, not " + stored);
        }
        return new BigDecimal(number, SOUND_DIGITS);
    }
}
