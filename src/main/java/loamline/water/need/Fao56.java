package loamline.water.need;

import loamline.account.Source;
import loamline.water.need.MonthClimate.Temperature;

/**
 * The equations of FAO Irrigation and Drainage Paper 56, chapters 3 and 4, one a method.
 *
 * <p>Temperatures in °C, pressures in kPa, radiation in MJ/m² a day, angles in radians, wind in m/s. Finite arguments
 * in range give finite results, in polar day and night too.
 */
final class Fao56 {
    static final Source SOURCE = new Source(
            "fao-56",
            "Allen, Pereira, Raes & Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56,"
                    + " chapters 3 and 4");

    /** Solar constant, MJ/m² a minute. */
    private static final double SOLAR_CONSTANT = 0.0820;

    /** Stefan-Boltzmann constant, MJ/(K⁴ m² day). */
    private static final double STEFAN_BOLTZMANN = 4.903e-9;

    private static final double KELVIN = 273.16;

    /** What the grass does not throw back of the sun's radiation: albedo 0.23. */
    private static final double ABSORBED = 0.77;

    /**
     * The least ratio of solar to clear-sky radiation in the cloudiness term. Sunshine hours never give less than 1/3;
     * the bound keeps odd measurements, and days without sun, from turning the term's sign (ASCE-EWRI 2005, The ASCE
     * Standardized Reference Evapotranspiration Equation, eq. 18; from memory).
     */
    private static final double LEAST_RELATIVE_RADIATION = 0.3;

    private Fao56() {}

    /** Pressure of the air at a height above the sea, m. */
    static double pressureKPa(double elevationM) {
        return 101.3 * Math.pow((293 - 0.0065 * elevationM) / 293, 5.26);
    }

    /** Psychrometric constant, kPa/°C. */
    static double psychrometricKPaC(double pressureKPa) {
        return 0.000665 * pressureKPa;
    }

    /** Saturation vapour pressure. */
    static double saturationKPa(double tC) {
        return 0.6108 * Math.exp(17.27 * tC / (tC + 237.3));
    }

    /** Mean of the saturation vapour pressures at two temperatures. */
    static double meanSaturationKPa(double tMinC, double tMaxC) {
        return (saturationKPa(tMaxC) + saturationKPa(tMinC)) / 2;
    }

    /** Slope of the saturation vapour pressure, kPa/°C. */
    static double slopeKPaC(double tC) {
        return 4098 * saturationKPa(tC) / ((tC + 237.3) * (tC + 237.3));
    }

    /** Wind at 2 m from wind at another height above the ground, m; at 2 m it is given back as it is. */
    static double windAt2m(double windMS, double heightM) {
        return heightM == 2 ? windMS : windMS * 4.87 / Math.log(67.8 * heightM - 5.42);
    }

    /** Inverse relative distance from the earth to the sun on a day of the year. */
    static double inverseDistance(int dayOfYear) {
        return 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365);
    }

    static double declination(int dayOfYear) {
        return 0.409 * Math.sin(2 * Math.PI * dayOfYear / 365 - 1.39);
    }

    /** Hour angle of sunset: 0 where the sun does not rise, π where it does not set. */
    static double sunsetAngle(double latitude, double declination) {
        double cosine = -Math.tan(latitude) * Math.tan(declination);
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** Radiation outside the atmosphere. */
    static double extraterrestrial(double latitude, int dayOfYear) {
        double declination = declination(dayOfYear);
        double sunset = sunsetAngle(latitude, declination);
        double height = sunset * Math.sin(latitude) * Math.sin(declination)
                + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
        return Math.max(0, 24 * 60 / Math.PI * SOLAR_CONSTANT * inverseDistance(dayOfYear) * height);
    }

    /** Longest possible sunshine, h. */
    static double daylightH(double sunsetAngle) {
        return 24 * sunsetAngle / Math.PI;
    }

    /** Solar radiation from hours of sunshine; more hours than there can be count as all of them. */
    static double solarFromSunshine(double sunH, double daylightH, double extraterrestrial) {
        double relative = daylightH > 0 ? Math.min(1, sunH / daylightH) : 0;
        return (0.25 + 0.50 * relative) * extraterrestrial;
    }

    /** Solar radiation from the difference of two temperatures, inland. */
    static double solarFromTemperature(double tMinC, double tMaxC, double extraterrestrial) {
        return 0.16 * Math.sqrt(tMaxC - tMinC) * extraterrestrial;
    }

    static double clearSky(double elevationM, double extraterrestrial) {
        return (0.75 + 2e-5 * elevationM) * extraterrestrial;
    }

    static double netShortwave(double solar) {
        return ABSORBED * solar;
    }

    /**
     * Net outgoing longwave radiation.
     *
     * @param vapourKPa actual vapour pressure
     * @param solar radiation that arrives
     * @param clearSky the same without clouds
     */
    static double netLongwave(Temperature t, double vapourKPa, double solar, double clearSky) {
        double relative = clearSky > 0 ? solar / clearSky : 0;
        double cloudiness = 1.35 * Math.max(LEAST_RELATIVE_RADIATION, Math.min(1, relative)) - 0.35;
        double emitted = STEFAN_BOLTZMANN * (Math.pow(t.maxC() + KELVIN, 4) + Math.pow(t.minC() + KELVIN, 4)) / 2;
        return emitted * (0.34 - 0.14 * Math.sqrt(vapourKPa)) * cloudiness;
    }

    /**
     * Penman-Monteith: evapotranspiration of the reference grass from its radiation, the air's thirst and the wind.
     *
     * @param slope of the saturation vapour pressure, kPa/°C
     * @param gamma psychrometric constant, kPa/°C
     * @param energy net radiation less the ground's heat, MJ/m² in the time step
     * @param deficitKPa saturation less actual vapour pressure
     * @param numerator 900 for a day, 37 for an hour
     * @return mm in the time step
     */
    static double combination(
            double slope, double gamma, double energy, double tC, double windMS, double deficitKPa, double numerator) {
        double air = gamma * numerator / (tC + 273) * windMS * deficitKPa;
        return (0.408 * slope * energy + air) / (slope + gamma * (1 + 0.34 * windMS));
    }

    /** Hargreaves' evapotranspiration, mm a day. */
    static double hargreaves(double tMinC, double tMaxC, double extraterrestrial) {
        double mean = (tMinC + tMaxC) / 2;
        return Math.max(0, 0.0023 * (mean + 17.8) * Math.sqrt(tMaxC - tMinC) * extraterrestrial * 0.408);
    }
}
