package loamline.water.need;

import java.time.Month;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The usual weather of a month: means over its days, rain as its sum. Only the month must be known.
 *
 * @param temperature of the air
 * @param windMS wind at 2 m above the ground, m/s
 * @param rainMm rain of the whole month, mm
 * @param etoMmDay reference evapotranspiration as somebody published it for the place, mm a day
 */
public record MonthClimate(
        Month month,
        Optional<Temperature> temperature,
        Optional<Humidity> humidity,
        OptionalDouble windMS,
        Optional<Sunshine> sunshine,
        OptionalDouble rainMm,
        OptionalDouble etoMmDay) {
    /** Days of a month in a year that is no leap year, as the mean year of a climate. */
    static int days(Month month) {
        return month.length(false);
    }

    /** The 15th as a day of the year. */
    static int middleDay(Month month) {
        return month.firstDayOfYear(false) + 14;
    }

    public MonthClimate {
        requireNotNegative("windMS", windMS);
        requireNotNegative("rainMm", rainMm);
        requireNotNegative("etoMmDay", etoMmDay);
    }

    private static void requireNotNegative(String name, OptionalDouble value) {
        value.ifPresent(v -> {
            if (!(v >= 0 && Double.isFinite(v))) {
                throw new IllegalArgumentException(name + " = " + v + " must be 0 or more");
            }
        });
    }

    /**
     * Wind at 2 m above the ground, m/s, from wind measured at another height.
     *
     * @param heightM of the gauge, 1 or more
     */
    public static double windAt2m(double windMS, double heightM) {
        if (!(heightM >= 1)) {
            throw new IllegalArgumentException("heightM = " + heightM + " must be 1 or more");
        }
        return Fao56.windAt2m(windMS, heightM);
    }

    /** Of a month whose evapotranspiration and rain are known. */
    public static MonthClimate typed(Month month, double etoMmDay, double rainMm) {
        return new MonthClimate(
                month,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.of(rainMm),
                OptionalDouble.of(etoMmDay));
    }

    /**
     * Mean daily extremes.
     *
     * @param minC °C, -60 to 60
     * @param maxC °C, at least minC, at most 60
     */
    public record Temperature(double minC, double maxC) {
        /** Colder or hotter months there are none. */
        public static final double LEAST_C = -60;

        public static final double MOST_C = 60;

        public Temperature {
            if (!(minC >= LEAST_C && minC <= maxC && maxC <= MOST_C)) {
                throw new IllegalArgumentException(
                        "temperatures " + minC + " and " + maxC + " must be -60 to 60 °C, the first the lower");
            }
        }

        double meanC() {
            return (minC + maxC) / 2;
        }
    }
}
