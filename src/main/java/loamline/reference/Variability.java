package loamline.reference;

import java.util.List;
import loamline.account.Source;

/**
 * How much one core differs from the next.
 *
 * @param element what is measured, as labs name it
 * @param cvPct standard deviation between cores over their mean, per cent
 */
public record Variability(String element, double cvPct, Source source) {
    /** The published rows, in the table's order. */
    public static List<Variability> published() {
        return PublishedTable.rows("variability.csv").stream()
                .map(row -> new Variability(row.text("element"), row.number("cv_pct"), row.source()))
                .toList();
    }
}
