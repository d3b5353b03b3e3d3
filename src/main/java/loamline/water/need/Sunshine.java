package loamline.water.need;

/** What is known about the sun's radiation on the ground. */
public sealed interface Sunshine {
    /**
     * Solar radiation, MJ/m² a day.
     *
     * @param daylightH longest possible sunshine, h
     * @param extraterrestrial radiation outside the atmosphere, MJ/m² a day
     */
    double solar(double daylightH, double extraterrestrial);

    /** @param hours of bright sunshine a day, 0 to 24 */
    record Hours(double hours) implements Sunshine {
        public static final double MOST = 24;

        public Hours {
            require("hours", hours, MOST);
        }

        @Override
        public double solar(double daylightH, double extraterrestrial) {
            return Fao56.solarFromSunshine(hours, daylightH, extraterrestrial);
        }
    }

    /** @param mjM2 solar radiation, MJ/m² a day, 0 to 50 */
    record Measured(double mjM2) implements Sunshine {
        /** More than reaches the air anywhere. */
        public static final double MOST_MJ_M2 = 50;

        public Measured {
            require("mjM2", mjM2, MOST_MJ_M2);
        }

        @Override
        public double solar(double daylightH, double extraterrestrial) {
            return mjM2;
        }
    }

    /** Nothing: estimated from the difference of two temperatures, °C, inland. */
    record FromTemperature(double tMinC, double tMaxC) implements Sunshine {
        @Override
        public double solar(double daylightH, double extraterrestrial) {
            return Fao56.solarFromTemperature(tMinC, tMaxC, extraterrestrial);
        }
    }

    private static void require(String name, double value, double most) {
        if (!(value >= 0 && value <= most)) {
            throw new IllegalArgumentException(name + " = " + value + " must be 0 to " + most);
        }
    }
}
