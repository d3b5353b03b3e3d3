package loamline.desk.sun;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The days that hours of sun are told for. */
enum Season {
    MIDSUMMER("Midsummer, 21 June"),
    EQUINOX("Spring and fall, 21 March and September"),
    GROWING("Growing season, April to October"),
    MIDWINTER("Midwinter, 21 December");

    private final String title;

    Season(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    List<LocalDate> in(int year) {
        return days().map(day -> day.atYear(year)).toList();
    }

    private Stream<MonthDay> days() {
        return switch (this) {
            case MIDSUMMER -> Stream.of(MonthDay.of(6, 21));
            case EQUINOX -> Stream.of(MonthDay.of(3, 21), MonthDay.of(9, 21));
            case GROWING -> IntStream.rangeClosed(4, 10).mapToObj(month -> MonthDay.of(month, 15));
            case MIDWINTER -> Stream.of(MonthDay.of(12, 21));
        };
    }
}
