package loamline.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import loamline.account.Source;

/**
 * How much one core differs from the next.
 *
 * @param element what is measured, as labs name it
 * @param cvPct standard deviation between cores over their mean, per cent
 */
public record Variability(String element, double cvPct, Source source) {
    private static final String TABLE = "variability.csv";

    /** The published rows, in the table's order. */
    public static List<Variability> published() {
        try (InputStream in = Optional.ofNullable(Variability.class.getResourceAsStream("/loamline/reference/" + TABLE))
                        .orElseThrow(() -> new IllegalStateException(TABLE + " is not in the program"));
                BufferedReader rows = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return rows.lines().skip(1).map(Variability::row).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(TABLE, e);
        }
    }

    /** Element, number, source id, then the citation in quotation marks to the end of the line. */
    private static Variability row(String line) {
        int a = line.indexOf(',');
        int b = line.indexOf(',', a + 1);
        int c = line.indexOf(',', b + 1);
        Source source = new Source(line.substring(b + 1, c), line.substring(c + 2, line.length() - 1));
        return new Variability(line.substring(0, a), Double.parseDouble(line.substring(a + 1, b)), source);
    }
}
