package loamline.desk.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loamline.desk.facts.Row;
import loamline.desk.facts.Rows;
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
        String coefficient = valve.sc5().isPresent()
                ? String.format(Locale.ROOT, "%.1f", valve.sc5().getAsDouble())
                : "none: a dry window";
        Rows rows = new Rows(view.water().accounts(), "/valves/" + place + "/", units)
                .amount("Flow", Measure.FLOW, OptionalDouble.of(valve.flowLpm()), "flowLpm")
                .amount("Gross rate", Measure.DEPTH_RATE, valve.grossMmH(), "grossMmH")
                .amount("Net rate", Measure.DEPTH_RATE, valve.meanMmH(), "meanMmH");
        return evenness(rows, valve.uniformity())
                .add("Scheduling coefficient", new Formatted(coefficient, ""), "sc5")
                .list();
    }

    private static Rows evenness(Rows rows, Optional<Uniformity> uniformity) {
        return rows.share("Lowest quarter", uniformity.map(Uniformity::duLq), "duLq")
                .share("Lower half", uniformity.map(Uniformity::duLh), "duLh")
                .share("Christiansen", uniformity.map(Uniformity::cu), "cu");
    }

    /** How often the turf is reached, and where the rest of the water goes. */
    static List<Row> coverage(WaterView view, UnitSystem units) {
        Coverage coverage = view.water().coverage();
        Rows rows = new Rows(view.water().accounts(), "/coverage/", units);
        String[] names = {"No head", "One head", "Two heads", "Three or more"};
        String[] keys = {"reachedBy0M2", "reachedBy1M2", "reachedBy2M2", "reachedBy3plusM2"};
        for (int i = 0; i < names.length; i++) {
            rows.add(
                    names[i],
                    Formatting.format(Measure.AREA, coverage.reachedBy().get(i).areaM2(), units),
                    keys[i]);
        }
        double wastedL = coverage.destinations().stream()
                .filter(where -> !where.ground().equals("turf"))
                .mapToDouble(Coverage.Destination::litresAYear)
                .sum();
        return rows.share("Off the turf", Optional.of(coverage.offTurfShare()), "offTurfShare")
                .amount(
                        "That is a year",
                        Measure.VOLUME_LIQUID,
                        OptionalDouble.of(wastedL),
                        "destinations/0/litresAYear")
                .list();
    }

    static String hole(Gap gap, UnitSystem units) {
        return Formatting.format(Measure.AREA, gap.areaM2(), units).text() + ", " + gap.zone();
    }

    /** Heads whose throw does not get to the next head, as one sentence; empty if all do. */
    static String shortThrows(List<HeadToHead> heads) {
        List<String> small =
                heads.stream().filter(head -> !head.ok()).map(HeadToHead::head).toList();
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
        Rows rows =
                new Rows(test.accounts(), "/", units).amount("Net rate", Measure.DEPTH_RATE, test.meanMmH(), "meanMmH");
        return evenness(rows, test.uniformity()).list();
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
                name, new Formatted(String.valueOf(Math.round(month.minutes())), cycles), Optional.of(month.account()));
    }
}
