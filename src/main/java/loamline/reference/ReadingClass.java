package loamline.reference;

import java.util.List;
import java.util.Optional;
import loamline.account.Source;

/**
 * What a reading of a core means.
 *
 * @param reading its key in a log, such as {@code thatchM}
 * @param bound where the class begins, in the unit of the key, 0 or more
 * @param atBound whether the bound itself belongs to the class
 * @param name in a few words
 * @param action what to do; empty for nothing
 */
public record ReadingClass(
        String reading, double bound, boolean atBound, String name, String action, String status, Source source) {
    private static final class Published {
        private static final List<ReadingClass> ALL = PublishedTable.rows("reading-classes.csv").stream()
                .map(row -> new ReadingClass(
                        row.text("reading"),
                        row.number("bound"),
                        row.text("at_bound").equals("yes"),
                        row.text("class"),
                        row.text("action"),
                        row.text("status"),
                        row.source()))
                .toList();
    }

    /** All published classes, those of a reading from the least to the greatest. */
    public static List<ReadingClass> published() {
        return Published.ALL;
    }

    /** The class of a value; empty if none is held for its reading, or it is below 0 or NaN. */
    public static Optional<ReadingClass> of(String reading, double value) {
        return Published.ALL.stream()
                .filter(c -> c.reading.equals(reading))
                .filter(c -> c.atBound ? value >= c.bound : value > c.bound)
                .reduce((lower, higher) -> higher);
    }
}
