package loamline.water.need;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.account.Source;
import loamline.water.need.MonthClimate.Temperature;

/**
 * Reference evapotranspiration of a month: what short, well-watered grass gives off.
 *
 * @param mmDay mean over the month, mm a day, 0 or more
 */
public record ReferenceEt(Month month, double mmDay, Method method, Account account) {
    /** How it was found, best first. */
    public enum Method {
        /** As somebody published it for the place. */
        TYPED,
        /** FAO-56 Penman-Monteith: temperature, humidity and wind are known; sunshine where it is, too. */
        PENMAN_MONTEITH,
        /** Hargreaves: only temperatures are known. */
        HARGREAVES
    }

    private static final Source TYPED = new Source("typed", "As given for the place; no source of the program's own");

    /** Heat into the ground over half a month's change, MJ/(m² day °C): FAO-56, eq. 43. */
    private static final double HEAT_BOTH_SIDES = 0.07;

    /** The same where only the month before is known: FAO-56, eq. 44. */
    private static final double HEAT_ONE_SIDE = 0.14;

    /**
     * That of a month of a year.
     *
     * @param year months that are known, this one among them; neighbours give the heat that goes into the ground
     * @param site where; needed unless the value is typed
     * @return empty if the climate has neither a typed value nor a site with temperatures
     */
    static Optional<ReferenceEt> of(MonthClimate climate, List<MonthClimate> year, Optional<Site> site) {
        if (climate.etoMmDay().isPresent()) {
            double typed = climate.etoMmDay().getAsDouble();
            Account account = Account.of("ETo as given", "", TYPED).with("eto_mm_day", typed);
            return Optional.of(new ReferenceEt(climate.month(), typed, Method.TYPED, account));
        }
        if (site.isEmpty() || climate.temperature().isEmpty()) {
            return Optional.empty();
        }
        Temperature temperature = climate.temperature().get();
        return Optional.of(
                climate.humidity().isPresent() && climate.windMS().isPresent()
                        ? penmanMonteith(climate, temperature, year, site.get())
                        : hargreaves(climate, temperature, site.get()));
    }

    private static ReferenceEt penmanMonteith(MonthClimate climate, Temperature t, List<MonthClimate> year, Site site) {
        PenmanMonteith.Day day = new PenmanMonteith.Day(
                MonthClimate.middleDay(climate.month()),
                t,
                Math.min(
                        climate.humidity().orElseThrow().vapourKPa(t.minC(), t.maxC()),
                        Fao56.meanSaturationKPa(t.minC(), t.maxC())),
                climate.windMS().orElseThrow(),
                climate.sunshine().orElse(new Sunshine.FromTemperature(t.minC(), t.maxC())),
                groundHeat(climate.month(), t, year));
        PenmanMonteith result = PenmanMonteith.of(site, day);
        String note = climate.sunshine().isPresent()
                ? "Radiation from what is known about sunshine."
                : "Sunshine is not known: radiation is estimated from the temperatures, as inland.";
        return new ReferenceEt(climate.month(), result.etoMmDay(), Method.PENMAN_MONTEITH, result.account(day, note));
    }

    private static ReferenceEt hargreaves(MonthClimate climate, Temperature t, Site site) {
        double outside = Fao56.extraterrestrial(site.latitudeRad(), MonthClimate.middleDay(climate.month()));
        Account account = Account.of(
                        "ETo = 0.0023 (T + 17.8) √(Tmax − Tmin) · 0.408 Ra",
                        "Hargreaves, since humidity or wind is not known; with both, Penman-Monteith is used.",
                        Fao56.SOURCE)
                .with("T_c", t.meanC())
                .with("tmin_c", t.minC())
                .with("tmax_c", t.maxC())
                .with("ra_mj_m2", outside);
        return new ReferenceEt(
                climate.month(), Fao56.hargreaves(t.minC(), t.maxC(), outside), Method.HARGREAVES, account);
    }

    /** Heat that goes into the ground while a month warms, MJ/m² a day; 0 where no neighbour is known. */
    static double groundHeat(Month month, Temperature t, List<MonthClimate> year) {
        OptionalDouble before = meanC(month.minus(1), year);
        OptionalDouble after = meanC(month.plus(1), year);
        if (before.isEmpty()) {
            return 0;
        }
        return after.isPresent()
                ? HEAT_BOTH_SIDES * (after.getAsDouble() - before.getAsDouble())
                : HEAT_ONE_SIDE * (t.meanC() - before.getAsDouble());
    }

    private static OptionalDouble meanC(Month month, List<MonthClimate> year) {
        return year.stream()
                .filter(other -> other.month() == month)
                .flatMap(other -> other.temperature().stream())
                .mapToDouble(Temperature::meanC)
                .findFirst();
    }
}
