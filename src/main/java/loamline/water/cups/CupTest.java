package loamline.water.cups;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.account.Problem;
import loamline.geometry.Region;
import loamline.water.Uniformity;
import loamline.water.need.MonthRunTime;
import loamline.water.need.RunTimeMultiplier;
import loamline.water.need.RunTimes;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * What a cup test of one valve shows.
 *
 * @param valve its name
 * @param cups every reading, in the order of the list; odd ones are flagged among the problems, none is left out
 * @param meanMl empty without cups
 * @param meanMmH empty without cups
 * @param uniformity of the rates; empty with fewer than four cups, or where all are dry
 * @param findings what the cups say of the heads
 * @param measured the rate between the cups
 * @param runTimes by month; empty without a climate, or where uniformity is
 * @param problems with the readings
 * @param yardProblems with the heads of the yard
 * @param accounts how the numbers came about, by JSON pointer into {@code cups.json}
 */
public record CupTest(
        String valve,
        List<Cup> cups,
        OptionalDouble meanMl,
        OptionalDouble meanMmH,
        Optional<Uniformity> uniformity,
        HeadFindings findings,
        Optional<MeasuredRates> measured,
        List<MonthRunTime> runTimes,
        List<Problem> problems,
        List<Problem> yardProblems,
        Map<String, Account> accounts) {
    public CupTest {
        cups = List.copyOf(cups);
        runTimes = List.copyOf(runTimes);
        problems = List.copyOf(problems);
        yardProblems = List.copyOf(yardProblems);
        accounts = Collections.unmodifiableMap(new LinkedHashMap<>(accounts));
    }

    /** The valves of a yard, in the order in which their heads stand. */
    public static List<String> valves(Yard yard) {
        return ValveHeads.valves(yard);
    }

    /**
     * Reads a test.
     *
     * @param valve one of {@link #valves}
     * @param cups readings of that valve alone
     * @param watering what run times rest on; without it there are none
     */
    public static CupTest of(Yard yard, String valve, List<Cup> cups, Optional<Watering> watering) {
        ValveHeads heads = ValveHeads.of(yard, valve);
        HeadFindings findings = HeadFindings.of(heads.byId(), cups);
        Optional<Uniformity> uniformity = cups.size() < CupDoubts.LEAST_CUPS
                ? Optional.empty()
                : Uniformity.of(cups.stream().mapToDouble(Cup::rateMmH).toArray());
        RunTimes runTimes = uniformity
                .flatMap(even -> watering.map(given -> runTimes(even, given)))
                .orElse(new RunTimes(List.of(), List.of()));
        Region turf = Region.union(Zones.of(yard).stream().map(Zone::net).toList());
        List<Problem> problems = new ArrayList<>(CupDoubts.of(cups, heads.byId(), findings));
        watering.ifPresent(given -> problems.addAll(given.need().problems()));
        problems.addAll(runTimes.problems());
        return new CupTest(
                valve,
                cups,
                cups.stream().mapToDouble(Cup::ml).average(),
                cups.stream().mapToDouble(Cup::rateMmH).average(),
                uniformity,
                findings,
                MeasuredRates.of(cups, findings.found(), turf),
                runTimes.months(),
                problems,
                heads.problems(),
                CupAccounts.of(cups, uniformity, findings, runTimes.months()));
    }

    private static RunTimes runTimes(Uniformity even, Watering watering) {
        return RunTimes.of(watering.need(), even.mean(), RunTimeMultiplier.ofLowHalf(even.duLh()), watering.soil());
    }

    /** The scheduling coefficient in words: a number, or why there is none. */
    public String schedulingWords() {
        if (uniformity.isEmpty()) {
            boolean dry = !cups.isEmpty() && cups.stream().allMatch(cup -> cup.ml() == 0);
            return dry ? "infinite (every cup is dry)" : "none (too few cups)";
        }
        OptionalDouble coefficient = uniformity.get().schedulingCoefficient();
        return coefficient.isPresent()
                ? String.format(Locale.ROOT, "%.2f", coefficient.getAsDouble())
                : "infinite (a dry hole)";
    }
}
