package loamline.water.need;

import loamline.account.Account;
import loamline.water.need.MonthClimate.Temperature;

/**
 * Reference evapotranspiration of a day after FAO-56 with everything on the way to it.
 *
 * @param pressureKPa of the air
 * @param gamma psychrometric constant, kPa/°C
 * @param slope of the saturation vapour pressure, kPa/°C
 * @param saturationKPa mean saturation vapour pressure
 * @param vapourKPa actual vapour pressure
 * @param extraterrestrial radiation outside the atmosphere, MJ/m² a day, as all radiation here
 * @param daylightH longest possible sunshine, h
 * @param solar radiation that arrives
 * @param clearSky the same without clouds
 * @param netShortwave what the grass keeps of it
 * @param netLongwave what it gives off
 * @param netRadiation the one less the other
 * @param groundHeat what goes into the ground
 * @param etoMmDay reference evapotranspiration, mm a day, 0 or more
 */
record PenmanMonteith(
        double pressureKPa,
        double gamma,
        double slope,
        double saturationKPa,
        double vapourKPa,
        double extraterrestrial,
        double daylightH,
        double solar,
        double clearSky,
        double netShortwave,
        double netLongwave,
        double netRadiation,
        double groundHeat,
        double etoMmDay) {
    private static final double DAILY = 900;

    /**
     * A day's air and sky.
     *
     * @param vapourKPa actual vapour pressure
     * @param windMS at 2 m, m/s
     * @param groundHeat what goes into the ground, MJ/m² a day
     */
    record Day(
            int dayOfYear,
            Temperature temperature,
            double vapourKPa,
            double windMS,
            Sunshine sunshine,
            double groundHeat) {}

    static PenmanMonteith of(Site site, Day day) {
        Temperature t = day.temperature;
        double pressure = Fao56.pressureKPa(site.elevationM());
        double gamma = Fao56.psychrometricKPaC(pressure);
        double slope = Fao56.slopeKPaC(t.meanC());
        double saturation = Fao56.meanSaturationKPa(t.minC(), t.maxC());
        double outside = Fao56.extraterrestrial(site.latitudeRad(), day.dayOfYear);
        double daylight = Fao56.daylightH(Fao56.sunsetAngle(site.latitudeRad(), Fao56.declination(day.dayOfYear)));
        double solar = day.sunshine.solar(daylight, outside);
        double clear = Fao56.clearSky(site.elevationM(), outside);
        double in = Fao56.netShortwave(solar);
        double out = Fao56.netLongwave(t, day.vapourKPa, solar, clear);
        double eto = Fao56.combination(
                slope, gamma, in - out - day.groundHeat, t.meanC(), day.windMS, saturation - day.vapourKPa, DAILY);
        return new PenmanMonteith(
                pressure,
                gamma,
                slope,
                saturation,
                day.vapourKPa,
                outside,
                daylight,
                solar,
                clear,
                in,
                out,
                in - out,
                day.groundHeat,
                Math.max(0, eto));
    }

    /** How it came about. */
    Account account(Day day, String note) {
        return Account.of(
                        "ETo = (0.408 Δ (Rn − G) + γ 900/(T + 273) u2 (es − ea)) / (Δ + γ (1 + 0.34 u2))",
                        note,
                        Fao56.SOURCE)
                .with("T_c", day.temperature.meanC())
                .with("u2_m_s", day.windMS)
                .with("delta_kpa_c", slope)
                .with("gamma_kpa_c", gamma)
                .with("es_kpa", saturationKPa)
                .with("ea_kpa", vapourKPa)
                .with("ra_mj_m2", extraterrestrial)
                .with("rs_mj_m2", solar)
                .with("rn_mj_m2", netRadiation)
                .with("g_mj_m2", groundHeat);
    }
}
