package loamline.sun;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;

/**
 * What to find out about the sun.
 *
 * @param dates one or more, each counted once
 * @param step time between two positions of the sun, from {@link SunPath#SHORTEST_STEP} to {@link SunPath#LONGEST_STEP}
 * @param cellM side of a cell, m, above 0
 */
public record SunRequest(List<LocalDate> dates, Duration step, double cellM) {
    /** A shadow's edge is then off by ten minutes at most, usually by five. */
    public static final Duration USUAL_STEP = Duration.ofMinutes(10);

    /** A quarter of a metre. */
    public static final double USUAL_CELL_M = 0.25;

    public SunRequest {
        dates = dates.stream().distinct().toList();
        if (dates.isEmpty()) {
            throw new IllegalArgumentException("dates must hold one date at least");
        }
        if (!(cellM > 0)) {
            throw new IllegalArgumentException("cellM = " + cellM + " must be above 0");
        }
    }
}
