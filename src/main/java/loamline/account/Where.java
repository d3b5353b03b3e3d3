package loamline.account;

import java.util.OptionalInt;

/**
 * A place in an input: a line of a table, a JSON pointer (RFC 6901), or neither for the input as a whole.
 *
 * @param line line in the file, counted from 1
 * @param pointer JSON pointer, or empty
 */
public record Where(OptionalInt line, String pointer) {
    private static final String FEATURES = "/features/";

    /** The input as a whole. */
    public static final Where WHOLE = new Where(OptionalInt.empty(), "");

    public static Where line(int line) {
        return new Where(OptionalInt.of(line), "");
    }

    public static Where pointer(String pointer) {
        return new Where(OptionalInt.empty(), pointer);
    }

    /** The feature at a position of a yard's list; files write features in that order. */
    public static Where feature(int index) {
        return pointer(FEATURES + index);
    }

    /** The position of the feature that {@link #feature} named; empty for any other place. */
    public OptionalInt featureIndex() {
        String index = pointer.startsWith(FEATURES) ? pointer.substring(FEATURES.length()) : "";
        return index.matches("\\d{1,9}") ? OptionalInt.of(Integer.parseInt(index)) : OptionalInt.empty();
    }

    /** {@code :12}, {@code :/features/3} or nothing: what follows a file's name in a report. */
    public String suffix() {
        if (line.isPresent()) {
            return ":" + line.getAsInt();
        }
        return pointer.isEmpty() ? "" : ":" + pointer;
    }
}
