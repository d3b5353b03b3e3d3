package loamline.desk.sun;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.IntStream;

/** The days that hours of sun are told for. */
enum Season {
    MIDSUMMER("Midsummer, 21 June", List.of(MonthDay.of(6, 21))),
    EQUINOX("Spring and fall, 21 March and September", List.of(MonthDay.of(3, 21), MonthDay.of(9, 21))),
    GROWING(
            "Growing season, April to October",
            IntStream.rangeClosed(4, 10)
                    .mapToObj(month -> MonthDay.of(month, 15))
                    .toList()),
    MIDWINTER("Midwinter, 21 December", List.of(MonthDay.of(12, 21)));

    private final String title;
    private final List<MonthDay> days;

    Season(String title, List<MonthDay> days) {
        this.title = title;
        this.days = days;
    }

    String title() {
        return title;
    }

    List<LocalDate> in(int year) {
        return days.stream().map(day -> day.atYear(year)).toList();
    }
}
