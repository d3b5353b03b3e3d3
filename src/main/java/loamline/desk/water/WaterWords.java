package loamline.desk.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.desk.facts.Row;
import loamline.desk.sheet.State;
import loamline.desk.sheet.Step.Line;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.water.Coverage;
import loamline.water.Gap;
import loamline.water.HeadToHead;
import loamline.water.Uniformity;
import loamline.water.ValveWater;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupTest;
import loamline.water.need.MonthRunTime;

/** What is known of the water, in words and rows. */
final class WaterWords {
    private WaterWords() {}

    /** What the step has come to. */
    static Line line(Optional<WaterView> known, boolean hasHeads, UnitSystem units) {
        if (!hasHeads) {
            return new Line("No heads yet", State.NOT_STARTED);
        }
        return known.map(view -> line(view, units)).orElse(new Line("Being worked out", State.UNDER_WAY));
    }

    private static Line line(WaterView view, UnitSystem units) {
        List<Gap> gaps = view.water().gaps();
        double holesM2 = gaps.stream().mapToDouble(Gap::areaM2).sum();
        String holes = gaps.isEmpty()
                ? "No holes"
                : counted(gaps.size(), "hole") + ", "
                        + Formatting.format(Measure.AREA, holesM2, units).text();
        List<String> due = view.worthwhile().stream()
                .map(CupPlan::valve)
                .filter(valve -> view.tested().stream()
                        .noneMatch(tested -> tested.table().about().equals(valve)))
                .toList();
        String tests = due.isEmpty()
                ? ""
                : "; cup test due on valve" + (due.size() == 1 ? " " : "s ") + String.join(", ", due);
        return new Line(holes + tests, gaps.isEmpty() && due.isEmpty() ? State.DONE : State.NEEDS_YOU);
    }

    private static String counted(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    /** The figures of a valve as mapped. */
    static List<Row> valve(WaterView view, int place, UnitSystem units) {
        ValveWater valve = view.water().valves().get(place);
        Map<String, Account> accounts = view.water().accounts();
        String at = "/valves/" + place + "/";
        List<Row> rows = new ArrayList<>();
        rows.add(row("Flow", Measure.FLOW, OptionalDouble.of(valve.flowLpm()), units, accounts.get(at + "flowLpm")));
        rows.add(row("Gross rate", Measure.DEPTH_RATE, valve.grossMmH(), units, accounts.get(at + "grossMmH")));
        rows.add(row("Net rate", Measure.DEPTH_RATE, valve.meanMmH(), units, accounts.get(at + "meanMmH")));
        rows.add(share("Lowest quarter", valve.uniformity().map(Uniformity::duLq), accounts.get(at + "duLq")));
        rows.add(share("Lower half", valve.uniformity().map(Uniformity::duLh), accounts.get(at + "duLh")));
        rows.add(share("Christiansen", valve.uniformity().map(Uniformity::cu), accounts.get(at + "cu")));
        String coefficient = valve.sc5().isPresent()
                ? String.format(Locale.ROOT, "%.1f", valve.sc5().getAsDouble())
                : "none: a dry window";
        rows.add(Row.of(
                "Scheduling coefficient",
                new Formatted(coefficient, ""),
                Optional.ofNullable(accounts.get(at + "sc5"))));
        return rows;
    }

    private static Row row(String name, Measure measure, OptionalDouble stored, UnitSystem units, Account why) {
        Formatted shown = stored.isPresent()
                ? Formatting.concise(measure, stored.getAsDouble(), units)
                : new Formatted("none", "");
        return Row.of(name, shown, Optional.ofNullable(why));
    }

    private static Row share(String name, Optional<Double> share, Account why) {
        Formatted shown = share.map(value -> new Formatted(String.valueOf(Math.round(100 * value)), "%"))
                .orElse(new Formatted("none", ""));
        return Row.of(name, shown, Optional.ofNullable(why));
    }

    /** How often the turf is reached, and where the rest of the water goes. */
    static List<Row> coverage(WaterView view, UnitSystem units) {
        Coverage coverage = view.water().coverage();
        Map<String, Account> accounts = view.water().accounts();
        List<Row> rows = new ArrayList<>();
        String[] names = {"No head", "One head", "Two heads", "Three or more"};
        String[] keys = {"reachedBy0M2", "reachedBy1M2", "reachedBy2M2", "reachedBy3plusM2"};
        for (int i = 0; i < names.length; i++) {
            rows.add(Row.of(
                    names[i],
                    Formatting.format(Measure.AREA, coverage.reachedBy().get(i).areaM2(), units),
                    Optional.ofNullable(accounts.get("/coverage/" + keys[i]))));
        }
        rows.add(share("Off the turf", Optional.of(coverage.offTurfShare()), accounts.get("/coverage/offTurfShare")));
        double wastedL = coverage.destinations().stream()
                .filter(where -> !where.ground().equals("turf"))
                .mapToDouble(Coverage.Destination::litresAYear)
                .sum();
        rows.add(Row.of(
                "That is a year",
                Formatting.concise(Measure.VOLUME_LIQUID, wastedL, units),
                Optional.ofNullable(accounts.get("/coverage/destinations/0/litresAYear"))));
        return rows;
    }

    static String hole(Gap gap, UnitSystem units) {
        return Formatting.format(Measure.AREA, gap.areaM2(), units).text() + ", " + gap.zone();
    }

    /** Heads whose throw does not get to the next head, as one sentence; empty if all do. */
    static String shortThrows(List<HeadToHead> heads) {
        List<String> small = heads.stream()
                .filter(head -> !head.ok())
                .map(HeadToHead::head)
                .toList();
        if (small.isEmpty()) {
            return "";
        }
        return counted(small.size(), "head") + " of " + heads.size() + " do not throw as far as the next head: "
                + String.join(", ", small) + ".";
    }

    static String due(CupPlan plan) {
        return "Valve " + plan.valve() + ": " + counted(plan.cups().size(), "cup") + ", " + plan.minutes()
                + " minutes. Because of " + String.join(", ", plan.reasons()) + ".";
    }

    /** What the cups measured. */
    static List<Row> measured(CupTest test, UnitSystem units) {
        Map<String, Account> accounts = test.accounts();
        List<Row> rows = new ArrayList<>();
        rows.add(row("Net rate", Measure.DEPTH_RATE, test.meanMmH(), units, accounts.get("/meanMmH")));
        rows.add(share("Lowest quarter", test.uniformity().map(Uniformity::duLq), accounts.get("/duLq")));
        rows.add(share("Lower half", test.uniformity().map(Uniformity::duLh), accounts.get("/duLh")));
        rows.add(share("Christiansen", test.uniformity().map(Uniformity::cu), accounts.get("/cu")));
        return rows;
    }

    /** Heads that the cups speak against, worst first; else that none stands out. */
    static List<String> heads(CupTest test) {
        List<String> faults = test.findings().faults().stream()
                .map(head -> "Head " + head.head() + " (" + Math.round(100 * head.sure()) + " % sure): " + head.words())
                .collect(Collectors.toCollection(ArrayList::new));
        return faults.isEmpty() ? List.of("No head stands out, as far as these cups can tell.") : faults;
    }

    /** Run times of the months that need water. */
    static List<Row> runTimes(CupTest test, UnitSystem units) {
        return test.runTimes().stream()
                .filter(month -> month.minutes() > 0)
                .map(WaterWords::runTime)
                .toList();
    }

    private static Row runTime(MonthRunTime month) {
        String name = month.month().getDisplayName(java.time.format.TextStyle.FULL, Locale.ENGLISH);
        String cycles = month.cycles() > 1
                ? "min in " + month.cycles() + ", soak " + Math.round(month.soakMin()) + ", every "
                        + month.intervalDays() + " d"
                : "min every " + month.intervalDays() + " d";
        return Row.of(
                name,
                new Formatted(String.valueOf(Math.round(month.minutes())), cycles),
                Optional.of(month.account()));
    }
}
