package loamline.units;

import java.util.Map;

/**
 * A typed text reduced to what the grammar needs: lower case, one plain blank between words and none around them, ASCII
 * signs, {@code ^2} for raised digits, {@code 1/2} for fraction characters, no point after an abbreviation. It
 * remembers where each character came from.
 */
final class PlainText {
    private static final Map<Character, String> WRITTEN_PLAINLY = Map.ofEntries(
            Map.entry('\u2212', "-"), // minus sign
            Map.entry('\u2010', "-"), // hyphen
            Map.entry('\u2011', "-"), // non-breaking hyphen
            Map.entry('\u2013', "-"), // en dash
            Map.entry('\u2032', "'"), // prime
            Map.entry('\u2018', "'"), // quotation marks, as word processors set them
            Map.entry('\u2019', "'"),
            Map.entry('\u2033', "\""), // double prime
            Map.entry('\u201c', "\""),
            Map.entry('\u201d', "\""),
            Map.entry('\u00ba', "°"), // ordinal indicator, typed for a degree sign
            Map.entry('²', "^2"),
            Map.entry('³', "^3"),
            Map.entry('\u2044', "/"), // fraction slash
            Map.entry('½', " 1/2"),
            Map.entry('⅓', " 1/3"),
            Map.entry('⅔', " 2/3"),
            Map.entry('¼', " 1/4"),
            Map.entry('¾', " 3/4"),
            Map.entry('⅛', " 1/8"),
            Map.entry('⅜', " 3/8"),
            Map.entry('⅝', " 5/8"),
            Map.entry('⅞', " 7/8"));
    private static final int LONGEST_REPLACEMENT = 4;

    private final StringBuilder text = new StringBuilder();
    private final int[] origin;

    PlainText(String typed) {
        origin = new int[typed.length() * LONGEST_REPLACEMENT + 1];
        for (int i = 0; i < typed.length(); i++) {
            int from = i;
            plain(typed.charAt(i)).chars().forEach(c -> append((char) c, from));
        }
        if (endsWith(' ')) {
            text.setLength(text.length() - 1);
        }
        origin[text.length()] = text.isEmpty() ? 0 : origin[text.length() - 1] + 1;
    }

    /** The reduced text. */
    String text() {
        return text.toString();
    }

    /** Where in the typed text the character at a position of the reduced text, or its end, came from. */
    int origin(int position) {
        return origin[position];
    }

    private static String plain(char typed) {
        if (Character.isWhitespace(typed) || Character.isSpaceChar(typed)) {
            return " ";
        }
        return WRITTEN_PLAINLY.getOrDefault(typed, String.valueOf(Character.toLowerCase(typed)));
    }

    private void append(char c, int from) {
        boolean blankTwice = c == ' ' && (text.isEmpty() || endsWith(' '));
        boolean abbreviation = c == '.' && !text.isEmpty() && Character.isLetter(text.charAt(text.length() - 1));
        if (!blankTwice && !abbreviation) {
            origin[text.length()] = from;
            text.append(c);
        }
    }

    private boolean endsWith(char c) {
        return !text.isEmpty() && text.charAt(text.length() - 1) == c;
    }
}
