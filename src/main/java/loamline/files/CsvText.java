package loamline.files;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Rows as comma-separated text (RFC 4180, with line feeds): numbers in full, words quoted where they must be. */
final class CsvText {
    private final StringBuilder out = new StringBuilder();

    /** Adds a row; null is an empty cell. */
    CsvText row(List<? extends @Nullable Object> cells) {
        out.append(cells.stream().map(CsvText::cell).collect(Collectors.joining(",")))
                .append('\n');
        return this;
    }

    private static String cell(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        String text = value instanceof Number number ? JsonText.number(number) : value.toString();
        boolean quoted = text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
