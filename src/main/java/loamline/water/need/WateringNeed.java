package loamline.water.need;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.account.Account;
import loamline.account.Problem;
import loamline.reference.TurfCoefficients;

/**
 * What turf needs beyond rain, month by month.
 *
 * @param months in the order of the year; those that cannot be worked out are missing
 * @param problems what is missing or doubtful
 */
public record WateringNeed(List<MonthNeed> months, List<Problem> problems) {
    public WateringNeed {
        months = List.copyOf(months);
        problems = List.copyOf(problems);
    }

    /**
     * Need = ETo · Kc · days − effective rain, not below 0.
     *
     * @param climate in any order; of a month given twice the first counts
     * @param site where; without it only typed evapotranspiration can be used
     * @param rule how much of a month's rain the roots get; rain that is not known counts as none
     */
    public static WateringNeed of(
            List<MonthClimate> climate, Optional<Site> site, TurfCoefficients turf, EffectiveRain rule) {
        Map<Month, MonthClimate> year = new EnumMap<>(Month.class);
        climate.forEach(month -> year.putIfAbsent(month.month(), month));
        List<MonthClimate> known = List.copyOf(year.values());
        List<MonthNeed> needs = new ArrayList<>();
        for (MonthClimate month : known) {
            ReferenceEt.of(month, known, site).ifPresent(eto -> needs.add(need(eto, month, turf, rule)));
        }
        return new WateringNeed(needs, NeedDoubts.of(known, needs, site));
    }

    private static MonthNeed need(ReferenceEt eto, MonthClimate climate, TurfCoefficients turf, EffectiveRain rule) {
        double factor = turf.of(climate.month());
        double turfMmDay = eto.mmDay() * factor;
        double rainMm = climate.rainMm().orElse(0);
        double effective = rule.ofMonthMm(rainMm);
        int days = MonthClimate.days(climate.month());
        Account account = Account.of(
                        "need = ETo · Kc · days − Pe, not below 0",
                        "For the whole month, over what the roots get of its rain; a dry or a cool month needs other"
                                + " amounts than the usual one.",
                        turf.source(),
                        rule.source())
                .with("eto_mm_day", eto.mmDay())
                .with("kc", factor)
                .with("days", days)
                .with("rain_mm", rainMm)
                .with("pe_mm", effective);
        return new MonthNeed(eto, turfMmDay, effective, Math.max(0, turfMmDay * days - effective), account);
    }
}
