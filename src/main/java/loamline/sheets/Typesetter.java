package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import loamline.scene.TextMeasure;
import loamline.scene.Type;

/** Fits words into a width. */
final class Typesetter {
    private static final String ELLIPSIS = "…";
    private static final double STEP_PT = 0.5;
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    /** Where a line may end: at a blank, unless it stands between a number and its unit. */
    private static final Pattern BREAKS = Pattern.compile(
            "(?<!\\d) | (?!(?:%|(?:in|ft|mm|cm|m|h|s|min|psi|kPa|lb|kg|g|gal|L)" + "[²³]?(?![\\p{L}\\d])))");

    private Typesetter() {}

    /** Words in the type and the length that fit. */
    record Fitted(String words, Type type) {}

    /** On one line: smaller down to a least size, then cut off with an ellipsis. */
    static Fitted onOneLine(String words, Type type, double leastPt, double widthMm, TextMeasure text) {
        Type smaller = type;
        while (text.widthMm(words, smaller) > widthMm && smaller.sizePt() > leastPt) {
            smaller = smaller.sized(Math.max(leastPt, smaller.sizePt() - STEP_PT));
        }
        return new Fitted(cut(words, smaller, widthMm, text), smaller);
    }

    private static String cut(String words, Type type, double widthMm, TextMeasure text) {
        String kept = words;
        while (!kept.isEmpty() && text.widthMm(kept + (kept.equals(words) ? "" : ELLIPSIS), type) > widthMm) {
            kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)).stripTrailing();
        }
        return kept.equals(words) ? words : kept + ELLIPSIS;
    }

    /** On as many lines as it takes, broken at blanks, a number never from its unit; a word too long for a line is broken anywhere. */
    static List<String> onLines(String words, Type type, double widthMm, TextMeasure text) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : breakable(words)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (text.widthMm(longer, type) <= widthMm) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (text.widthMm(line, type) > widthMm && line.codePointCount(0, line.length()) > 1) {
                String head = longestHead(line, type, widthMm, text);
                lines.add(head);
                line = line.substring(head.length());
            }
        }
        lines.add(line);
        return lines;
    }

    /** What must not be broken at a blank. */
    private static List<String> breakable(String words) {
        return BREAKS.splitAsStream(BLANKS.matcher(words.strip()).replaceAll(" "))
                .toList();
    }

    /** As much of a word as fits, at least one character. */
    private static String longestHead(String word, Type type, double widthMm, TextMeasure text) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()
                && text.widthMm(word.substring(0, word.offsetByCodePoints(end, 1)), type) <= widthMm) {
            end = word.offsetByCodePoints(end, 1);
        }
        return word.substring(0, end);
    }
}
