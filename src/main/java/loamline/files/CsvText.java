package loamline.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Rows as comma-separated text (RFC 4180, with line feeds): numbers in full, words quoted where they must be. */
final class CsvText {
    private final StringWriter out = new StringWriter();
    private final CsvWriter csv =
            CsvWriter.builder().lineDelimiter(LineDelimiter.LF).bufferSize(0).build(out);

    /** Adds a row; null is an empty cell. */
    CsvText row(List<? extends @Nullable Object> cells) {
        csv.writeRecord(cells.stream().map(CsvText::cell).toList());
        return this;
    }

    private static String cell(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        return value instanceof Number number ? JsonText.number(number) : value.toString();
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
