package loamline.files;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A column that a table may have: the key to its values in a {@link CsvRow}. Immutable.
 *
 * @param <T> what its cells hold
 */
public final class CsvColumn<T> {
    /** From the text of a cell, stripped and not empty, to its value; empty if it is not what it should be. */
    @FunctionalInterface
    interface CellReader<T> {
        Optional<T> read(String text, NumberStyle style);
    }

    private enum LengthUnit {
        MM(0.001),
        CM(0.01),
        M(1),
        IN(0.0254),
        FT(0.3048);

        private final double metres;

        LengthUnit(double metres) {
            this.metres = metres;
        }

        private String suffix() {
            return "_" + name().toLowerCase(Locale.ROOT);
        }
    }

    private final String name;
    private final String expects;
    private final boolean required;
    private final Map<String, CellReader<T>> readers;

    private CsvColumn(String name, String expects, boolean required, Map<String, CellReader<T>> readers) {
        this.name = name;
        this.expects = expects;
        this.required = required;
        this.readers = readers;
    }

    private static <T> CsvColumn<T> single(String name, String expects, CellReader<T> reader) {
        Map<String, CellReader<T>> readers = new LinkedHashMap<>();
        readers.put(inHeader(name), reader);
        return new CsvColumn<>(name, expects, false, readers);
    }

    /** Words, as they stand. */
    public static CsvColumn<String> text(String name) {
        return single(name, "a text", (text, style) -> Optional.of(text));
    }

    /** Words that mean something of their own. */
    public static <T> CsvColumn<T> of(String name, String expects, Function<String, Optional<T>> reader) {
        return single(name, expects, (text, style) -> reader.apply(text));
    }

    /** A date, {@code 2027-06-21}; other orders of day and month are refused, since they cannot be told apart. */
    public static CsvColumn<LocalDate> date(String name) {
        return of(name, "a date such as 2027-06-21", text -> {
            try {
                return Optional.of(LocalDate.parse(text));
            } catch (DateTimeException e) {
                return Optional.empty();
            }
        });
    }

    /** A finite number. */
    public static CsvColumn<Double> number(String name) {
        return number(name, "a number", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** A number of 0 or more. */
    public static CsvColumn<Double> amount(String name) {
        return number(name, "a number of 0 or more", 0, Double.POSITIVE_INFINITY);
    }

    /** A number between two bounds, both allowed. */
    public static CsvColumn<Double> number(String name, double least, double most) {
        return number(name, "a number from " + plain(least) + " to " + plain(most), least, most);
    }

    private static String plain(double bound) {
        return bound == Math.rint(bound) ? Long.toString((long) bound) : JsonText.number(bound);
    }

    private static CsvColumn<Double> number(String name, String expects, double least, double most) {
        return single(name, expects, (text, style) -> inRange(style.read(text), 1, least, most));
    }

    /**
     * A length of 0 or more, in metres, whichever unit the header names: {@code depth_cm} and {@code depth_in} are
     * both the length {@code depth}, as are {@code _mm}, {@code _m} and {@code _ft}.
     */
    public static CsvColumn<Double> length(String name) {
        Map<String, CellReader<Double>> readers = new LinkedHashMap<>();
        for (LengthUnit unit : LengthUnit.values()) {
            readers.put(
                    inHeader(name) + unit.suffix(),
                    (text, style) -> inRange(style.read(text), unit.metres, 0, Double.POSITIVE_INFINITY));
        }
        return new CsvColumn<>(name, "a number of 0 or more", false, readers);
    }

    private static Optional<Double> inRange(OptionalDouble number, double factor, double least, double most) {
        return number.stream()
                .map(value -> value * factor)
                .filter(value -> value >= least && value <= most)
                .boxed()
                .findFirst();
    }

    /** The same column, without which a row is of no use. */
    public CsvColumn<T> required() {
        return new CsvColumn<>(name, expects, true, readers);
    }

    /** A name as headers are compared: in small letters, with underscores for blanks. */
    static String inHeader(String name) {
        return name.toLowerCase(Locale.ROOT).replace(' ', '_');
    }

    public String name() {
        return name;
    }

    boolean isRequired() {
        return required;
    }

    /** What a cell should be, such as {@code a number}. */
    String expects() {
        return expects;
    }

    /** The names it may have in a header, as {@link #inHeader} has them; several are one quantity in several units. */
    List<String> headers() {
        return new ArrayList<>(readers.keySet());
    }

    /** The value of a cell under one of the {@link #headers}. */
    Optional<T> read(String header, String text, NumberStyle style) {
        CellReader<T> reader = readers.get(header);
        return reader == null ? Optional.empty() : reader.read(text, style);
    }
}
