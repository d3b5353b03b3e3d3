package loamline.findings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rows of one visit.
 *
 * @param from its first day; empty if no row has one
 * @param to its last day
 * @param rows in the order of the log
 */
public record Visit(Optional<LocalDate> from, Optional<LocalDate> to, List<LogRow> rows) {
    /** Days without a row after which a new visit begins. Common practice, no source: a return within weeks. */
    static final int GAP_DAYS = 45;

    public Visit {
        rows = List.copyOf(rows);
    }

    /** The visits of a log, the oldest first, at least one. Rows without a day belong to the newest. */
    public static List<Visit> of(List<LogRow> rows) {
        List<LocalDate> days = rows.stream()
                .flatMap(row -> row.day().stream())
                .sorted()
                .distinct()
                .toList();
        List<Visit> visits = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= days.size(); i++) {
            if (i == days.size() || ChronoUnit.DAYS.between(days.get(i - 1), days.get(i)) > GAP_DAYS) {
                visits.add(between(rows, days.get(first), days.get(i - 1), i == days.size()));
                first = i;
            }
        }
        return visits.isEmpty() ? List.of(new Visit(Optional.empty(), Optional.empty(), rows)) : List.copyOf(visits);
    }

    private static Visit between(List<LogRow> rows, LocalDate from, LocalDate to, boolean newest) {
        return new Visit(
                Optional.of(from),
                Optional.of(to),
                rows.stream()
                        .filter(row -> row.day()
                                .map(day -> !day.isBefore(from) && !day.isAfter(to))
                                .orElse(newest))
                        .toList());
    }
}
