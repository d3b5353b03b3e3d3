package loamline.sun;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import loamline.account.Source;
import loamline.place.LonLat;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * The sun's way over a place.
 *
 * <p>Accuracy: {@value #ACCURACY_DEG}° of azimuth times the cosine of the elevation, and of elevation, from the year
 * -2000 to 6000; that includes what clocks will drift from now on (ΔT is estimated).
 */
public final class SunPath {
    /** How far a position may be off, degrees. */
    static final double ACCURACY_DEG = 0.01;

    /** The positions. */
    public static final Source SOURCE = new Source(
            "reda-andreas-2004",
            "Reda & Andreas 2004, Solar position algorithm for solar radiation applications, Solar Energy 76:577-589;"
                    + " library solarpositioning 2.0.9");

    private static final Duration DAY = Duration.ofDays(1);

    /** Steps are told in whole minutes from here on. */
    public static final Duration SHORTEST_STEP = Duration.ofMinutes(1);

    /** With longer ones a shadow's edge is off by more than half an hour. */
    public static final Duration LONGEST_STEP = Duration.ofHours(1);

    private SunPath() {}

    /** The sun at a moment, seen from sea level: a mountain moves it by less than a millionth of a degree. */
    public static SunPosition at(LonLat place, Instant utc) {
        var time = utc.atZone(ZoneOffset.UTC);
        SolarPosition found = SPA.calculateSolarPosition(
                time, place.latDeg(), place.lonDeg(), 0, DeltaT.estimate(time.toLocalDate()));
        return new SunPosition(utc, found.azimuth(), 90 - found.zenithAngle());
    }

    /**
     * The sun over a day while it is up, every so often; each position stands for the time from half a step before to
     * half a step after it.
     *
     * @param date the day that begins and ends at the place's mean solar midnight
     * @param step from {@link #SHORTEST_STEP} to {@link #LONGEST_STEP}; moments are whole multiples of it from UTC midnight
     * @return in order of time; empty in polar night
     */
    public static List<SunPosition> day(LonLat place, LocalDate date, Duration step) {
        if (step.compareTo(SHORTEST_STEP) < 0 || step.compareTo(LONGEST_STEP) > 0) {
            throw new IllegalArgumentException("step = " + step + " must be " + SHORTEST_STEP + " to " + LONGEST_STEP);
        }
        Instant utcMidnight = date.atStartOfDay(ZoneOffset.UTC).toInstant();
        long stepS = step.toSeconds();
        long eastS = Math.round(place.lonDeg() / 360 * DAY.toSeconds());
        Instant first = utcMidnight.plusSeconds(Math.floorDiv(-eastS + stepS - 1, stepS) * stepS);
        Instant end = utcMidnight.plusSeconds(DAY.toSeconds() - eastS);
        return Stream.iterate(first, moment -> moment.isBefore(end), moment -> moment.plus(step))
                .map(moment -> at(place, moment))
                .filter(SunPosition::isUp)
                .toList();
    }
}
