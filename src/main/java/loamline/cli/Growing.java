package loamline.cli;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.place.LonLat;
import loamline.sun.SunRequest;
import loamline.sun.SunStudy;
import loamline.sun.ZoneSun;
import loamline.yard.Yard;

/** Sun in the growing season, to set cores beside. */
final class Growing {
    /** Any year: the sun's path hardly changes. */
    private static final int YEAR = 2027;

    private static final int DAY = 21;
    private static final List<Integer> MONTHS_NORTH = List.of(5, 7, 9);
    private static final List<Integer> MONTHS_SOUTH = List.of(11, 1, 3);
    private static final Duration STEP = Duration.ofMinutes(20);

    private Growing() {}

    /** Direct sun of each zone, hours a day; none for a yard that allows no answer. */
    static Map<String, Double> hours(Yard yard) {
        return sun(yard).map(SunStudy::zones).orElse(List.of()).stream()
                .collect(Collectors.toMap(ZoneSun::name, ZoneSun::meanHours));
    }

    /** The mean of three days of the growing season; empty for a yard that allows no answer. */
    static Optional<SunStudy> sun(Yard yard) {
        List<Integer> months = yard.frame().origin().map(LonLat::latDeg).orElse(0.0) < 0 ? MONTHS_SOUTH : MONTHS_NORTH;
        List<LocalDate> dates =
                months.stream().map(month -> LocalDate.of(YEAR, month, DAY)).toList();
        return SunStudy.of(yard, new SunRequest(dates, STEP, SunRequest.USUAL_CELL_M))
                .study();
    }
}
