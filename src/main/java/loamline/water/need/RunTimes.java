package loamline.water.need;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.account.Problem;
import loamline.account.Source;
import loamline.account.Where;

/**
 * How long a valve runs, month by month.
 *
 * @param months in the order of the needs; empty if the valve brings no water
 * @param problems what is wrong or doubtful
 */
public record RunTimes(List<MonthRunTime> months, List<Problem> problems) {
    private static final Source ARITHMETIC = new Source("depth-over-rate", "Depth over rate is time");

    private static final Source CYCLES = new Source(
            "ia-2005-cycles",
            "From memory of Irrigation Association, Landscape Irrigation Scheduling and Water Management, 2005: longest"
                    + " run 60 ASA / (PR − IR)");

    /** A slower valve than any made: it has a fault. Common practice, no source. */
    static final double LEAST_RATE_MM_H = 0.1;

    /** A whole number of cycles stays whole in spite of rounding in the last digits. */
    private static final double CYCLE_ROUNDING = 1e-9;

    public RunTimes {
        months = List.copyOf(months);
        problems = List.copyOf(problems);
    }

    /**
     * Run times that bring a need: as seldom as the soil allows, as long as its unevenness asks, in cycles that its
     * surface takes in.
     *
     * @param rateMmH net application rate, mm/h, as cups measure it; next to none gives no run times and a problem
     */
    public static RunTimes of(WateringNeed need, double rateMmH, RunTimeMultiplier multiplier, LawnSoil soil) {
        if (!(rateMmH >= LEAST_RATE_MM_H && Double.isFinite(rateMmH))) {
            return new RunTimes(
                    List.of(),
                    List.of(Problem.error(
                            "RUN_TIME_NO_RATE",
                            Where.WHOLE,
                            "next to no water reached the cups, so no run time brings the need: mend the valve and"
                                    + " test again")));
        }
        List<MonthRunTime> months = need.months().stream()
                .map(month -> month(month, rateMmH, multiplier, soil))
                .toList();
        return new RunTimes(months, doubts(need, multiplier, soil));
    }

    private static MonthRunTime month(MonthNeed need, double rateMmH, RunTimeMultiplier multiplier, LawnSoil soil) {
        int interval = Math.max(1, Math.min(need.days(), soil.days(need.turfMmDay())));
        int waterings = need.needMm() > 0 ? (need.days() + interval - 1) / interval : 0;
        double eachMm = waterings > 0 ? need.needMm() / waterings : 0;
        double even = 60 * eachMm / rateMmH;
        double minutes = even * multiplier.factor();
        OptionalDouble longest = soil.longestRunMin(rateMmH);
        int cycles = cycles(minutes, longest);
        double soak = cycles > 1 ? soil.soakMin(rateMmH, minutes / cycles) : 0;
        Account account = account(need, rateMmH, multiplier, soil)
                .with("interval_days", interval)
                .with("waterings", waterings)
                .with("need_mm", eachMm);
        return new MonthRunTime(
                need.month(), need.eto().mmDay(), eachMm, minutes, even, cycles, soak, interval, waterings, account);
    }

    private static int cycles(double minutes, OptionalDouble longestMin) {
        if (minutes <= 0) {
            return 0;
        }
        return longestMin.isEmpty()
                ? 1
                : Math.max(1, (int) Math.ceil(minutes / longestMin.getAsDouble() - CYCLE_ROUNDING));
    }

    private static Account account(MonthNeed need, double rateMmH, RunTimeMultiplier multiplier, LawnSoil soil) {
        Account account = Account.of(
                        "interval = ⌊AD / ETc⌋; minutes = 60 · need / rate · M; cycles = ⌈minutes / longest⌉;"
                                + " soak = (rate − IR) · minutes / cycles / IR",
                        "Of one watering. Deeper roots or a finer soil make it rarer and longer; a more even valve"
                                + " makes it shorter; minutes seen until water runs off overrule the longest cycle.",
                        ARITHMETIC,
                        CYCLES,
                        soil.water().source())
                .with("etc_mm_day", need.turfMmDay())
                .with("month_need_mm", need.needMm())
                .with("ad_mm", soil.allowedMm())
                .with("rate_mm_h", rateMmH)
                .with("M", multiplier.factor())
                .with("ir_mm_h", soil.water().intakeMmH());
        OptionalDouble longest = soil.longestRunMin(rateMmH);
        return longest.isPresent() ? account.with("longest_min", longest.getAsDouble()) : account;
    }

    private static List<Problem> doubts(WateringNeed need, RunTimeMultiplier multiplier, LawnSoil soil) {
        List<Problem> problems = new ArrayList<>(need.problems());
        if (multiplier.isBeyondRunTime()) {
            problems.add(Problem.warning(
                    "RUN_TIME_UNEVEN",
                    Where.WHOLE,
                    "the valve waters too unevenly for run time to make up for it: minutes are held at "
                            + "1/0.64 of an even valve's; mend the coverage first"));
        }
        if (need.months().stream().anyMatch(month -> month.needMm() > 0 && soil.days(month.turfMmDay()) < 1)) {
            problems.add(Problem.warning(
                    "RUN_TIME_SHALLOW",
                    Where.WHOLE,
                    "in some months the roots reach less water than a day takes: water daily, and look for what keeps"
                            + " roots shallow"));
        }
        return problems;
    }
}
