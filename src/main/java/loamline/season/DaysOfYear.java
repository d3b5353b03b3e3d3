package loamline.season;

import java.time.LocalDate;
import java.time.MonthDay;

/** Days that come back every year, with both border days; they may reach over the new year. */
record DaysOfYear(MonthDay from, MonthDay to) {
    /** As tables have them, such as {@code 12-01}. */
    static DaysOfYear of(String from, String to) {
        return new DaysOfYear(MonthDay.parse("--" + from), MonthDay.parse("--" + to));
    }

    boolean holds(LocalDate day) {
        MonthDay on = MonthDay.from(day);
        boolean begun = !on.isBefore(from);
        boolean open = !on.isAfter(to);
        return from.isAfter(to) ? begun || open : begun && open;
    }
}
