package loamline.files;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A tree of maps, lists and plain values as JSON text (RFC 8259), always the same for the same tree.
 *
 * <p>What fits into a line of {@value #WIDTH} characters stands on one line, what does not is broken into one
 * member a line. Numbers are the shortest decimals that give the same double; half a surrogate pair is
 * escaped, so that every string survives. {@link JsonTree} reads the same tree back.
 */
final class JsonText {
    private static final int WIDTH = 120;

    private final StringBuilder out = new StringBuilder();
    private int lineStart;

    private JsonText() {}

    /**
     * The text, ending in a line feed.
     *
     * @throws IllegalArgumentException for NaN, infinite numbers and objects of any other class
     */
    static String of(@Nullable Object tree) {
        JsonText text = new JsonText();
        text.value(tree, 0);
        return text.out.append('\n').toString();
    }

    /** A value on one line, cut short with an ellipsis after some characters; for messages. */
    static String excerpt(@Nullable Object value, int length) {
        JsonText text = new JsonText();
        text.compact(value, length);
        return text.out.length() <= length ? text.out.toString() : text.out.substring(0, length) + "…";
    }

    private void value(@Nullable Object value, int indent) {
        int start = out.length();
        if (!compact(value, lineStart + WIDTH) && isNested(value)) {
            out.setLength(start);
            broken(value, indent);
        }
    }

    /** Appends a list or an object, each part on a line of its own. */
    private void broken(@Nullable Object nested, int indent) {
        out.append(nested instanceof Map ? '{' : '[');
        String separator = "";
        for (Object part : parts(nested)) {
            out.append(separator);
            newLine(indent + 1);
            value(named(part), indent + 1);
            separator = ",";
        }
        newLine(indent);
        out.append(nested instanceof Map ? '}' : ']');
    }

    private void newLine(int indent) {
        out.append('\n');
        lineStart = out.length();
        out.append(" ".repeat(indent));
    }

    /** Appends a value on one line; false, with part of it appended, as soon as it passes a position. */
    private boolean compact(@Nullable Object value, int limit) {
        if (!isNested(value)) {
            plain(value);
            return out.length() <= limit;
        }
        out.append(value instanceof Map ? '{' : '[');
        String separator = "";
        for (Object part : parts(value)) {
            out.append(separator);
            if (!compact(named(part), limit)) {
                return false;
            }
            separator = ", ";
        }
        out.append(value instanceof Map ? '}' : ']');
        return out.length() <= limit;
    }

    private static boolean isNested(@Nullable Object value) {
        return value instanceof Map || value instanceof List;
    }

    private static Collection<?> parts(@Nullable Object nested) {
        if (nested instanceof Map<?, ?> members) {
            return members.entrySet();
        }
        return nested instanceof List<?> list ? list : List.of();
    }

    /** The value of a part; of a member, after appending its name. */
    private @Nullable Object named(@Nullable Object part) {
        if (part instanceof Map.Entry<?, ?> member) {
            string(String.valueOf(member.getKey()));
            out.append(": ");
            return member.getValue();
        }
        return part;
    }

    private void plain(@Nullable Object value) {
        if (value == null || value instanceof Boolean) {
            out.append(value);
        } else if (value instanceof String text) {
            string(text);
        } else if (value instanceof Number number) {
            out.append(number(number));
        } else {
            throw new IllegalArgumentException("JSON has no " + value.getClass().getName());
        }
    }

    /**
     * A number in its shortest form.
     *
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    static String number(Number number) {
        if (!(number instanceof Double || number instanceof Float)) {
            return number.toString();
        }
        double value = number.doubleValue();
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("JSON has no " + value);
        }
        return NumberOutput.toString(value, true);
    }

    private void string(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                out.append(c).append(text.charAt(++i));
            } else if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c == '\n') {
                out.append("\\n");
            } else if (c < ' ' || Character.isSurrogate(c)) {
                out.append("\\u").append(HexFormat.of().toHexDigits(c));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
