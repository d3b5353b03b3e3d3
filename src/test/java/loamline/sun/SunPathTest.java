package loamline.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import loamline.place.LonLat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunPathTest {
    private static final LocalDate SOLSTICE = LocalDate.of(2027, 6, 21);
    private static final LonLat ILLINOIS = new LonLat(-89.05, 40.35);

    private static void check(SunPosition sun, double elevationDeg, double azimuthDeg) {
        assertThat(sun.elevationDeg()).isCloseTo(elevationDeg, within(SunPath.ACCURACY_DEG));
        double across = (sun.azimuthDeg() - azimuthDeg) * Math.cos(Math.toRadians(elevationDeg));
        assertThat(across).isCloseTo(0, within(SunPath.ACCURACY_DEG));
    }

    /** Reda & Andreas 2004, NREL/TP-560-34302, the worked example: zenith 50.11162 with refraction, here without. */
    @Test
    void theWorkedExampleOfTheAlgorithm() {
        check(
                SunPath.at(new LonLat(-105.1786, 39.742476), Instant.parse("2003-10-17T19:30:30Z")),
                39.87205,
                194.340241);
    }

    /** Computed with ephem 4.1.4, pressure 0. */
    @ParameterizedTest
    @CsvSource({
        "39.742476, -105.1786, 2003-10-17T19:30:30Z, 39.87205, 194.34023",
        "39.9612, -82.9988, 2024-06-20T17:30:00Z, 73.45733, 176.97763",
        "39.9612, -82.9988, 2024-12-21T17:30:00Z, 26.59856, 179.89724",
        "25.7617, -80.1918, 2024-06-21T17:20:00Z, 87.59218, 164.88376",
        "33.4484, -112.0740, 2025-09-22T14:00:00Z, 8.17973, 95.36513",
        "51.5074, -0.1278, 2025-05-01T17:00:00Z, 20.83503, 268.57181",
        "-0.1807, -78.4678, 2025-03-20T17:20:00Z, 89.56915, 42.55934",
        "61.2181, -149.9003, 2024-06-21T09:00:00Z, -4.43793, 345.87876"
    })
    void positionsOfAnotherProgram(double lat, double lon, Instant utc, double elevationDeg, double azimuthDeg) {
        check(SunPath.at(new LonLat(lon, lat), utc), elevationDeg, azimuthDeg);
    }

    /** Computed with ephem 4.1.4: the sun's centre 50′ below the horizon at rise and set, due south at transit. */
    @ParameterizedTest
    @CsvSource({
        "39.9612, -82.9988, 2024-06-20T10:03:23Z, 2024-06-20T17:33:45Z, 2024-06-21T01:04:07Z",
        "39.9612, -82.9988, 2024-12-21T12:50:27Z, 2024-12-21T17:30:24Z, 2024-12-21T22:10:20Z",
        "51.5074, -0.1278, 2025-05-01T04:32:05Z, 2025-05-01T11:57:33Z, 2025-05-01T19:24:07Z"
    })
    void riseTransitAndSetOfAnotherProgram(double lat, double lon, Instant rise, Instant transit, Instant set) {
        LonLat place = new LonLat(lon, lat);
        for (Instant edge : List.of(rise, set)) {
            assertThat(SunPath.at(place, edge).elevationDeg()).isCloseTo(-50 / 60.0, within(SunPath.ACCURACY_DEG));
        }
        assertThat(SunPath.at(place, transit).azimuthDeg()).isCloseTo(180, within(0.02));
    }

    @Test
    void aDayRunsFromSolarMidnightToSolarMidnightInWholeSteps() {
        List<SunPosition> day = SunPath.day(ILLINOIS, SOLSTICE, Duration.ofMinutes(10));
        // Day length by acos(−tan φ tan δ) / 15, φ 40.35°, δ 23.436°: 14.88 h.
        assertThat(day).hasSizeBetween(88, 90);
        assertThat(day).allMatch(SunPosition::isUp);
        assertThat(day).allMatch(sun -> sun.utc().getEpochSecond() % 600 == 0);
        assertThat(day.get(0).isMorning()).isTrue();
        assertThat(day.get(day.size() - 1).isMorning()).isFalse();
        assertThat(day.get(day.size() - 1).utc()).isAfter(Instant.parse("2027-06-22T00:00:00Z"));
        long mornings = day.stream().filter(SunPosition::isMorning).count();
        assertThat(mornings).isBetween(44L, 45L);
    }

    @ParameterizedTest
    @CsvSource({"-180", "-89", "0", "13.7", "179.9", "180"})
    void everyPlaceHasAWholeDayOfMoments(double lon) {
        for (int minutes : new int[] {1, 7, 10, 60}) {
            Duration step = Duration.ofMinutes(minutes);
            List<SunPosition> polarDay = SunPath.day(new LonLat(lon, 85), SOLSTICE, step);
            assertThat((double) polarDay.size()).isCloseTo(1440.0 / minutes, within(1.0));
        }
    }

    @Test
    void inPolarNightThereIsNoSun() {
        assertThat(SunPath.day(new LonLat(20, 80), LocalDate.of(2027, 12, 21), Duration.ofMinutes(10)))
                .isEmpty();
    }

    @Test
    void stepsOutOfRangeAreRefused() {
        for (Duration step : List.of(Duration.ZERO, Duration.ofSeconds(59), Duration.ofMinutes(61))) {
            assertThatIllegalArgumentException().isThrownBy(() -> SunPath.day(ILLINOIS, SOLSTICE, step));
        }
    }
}
