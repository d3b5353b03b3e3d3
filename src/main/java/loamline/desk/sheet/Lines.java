package loamline.desk.sheet;

import java.util.List;
import loamline.account.Problem;
import loamline.desk.session.Results;
import loamline.desk.sheet.Step.Line;
import loamline.sampling.CorePlan;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Zone;

/** What each step has come to, in a line. */
public final class Lines {
    private Lines() {}

    public static Line trace(Results results, UnitSystem units) {
        List<Zone> zones = results.zones();
        return new Line(turf(zones, units), zones.isEmpty() ? State.NEEDS_YOU : State.DONE);
    }

    public static Line zones(Results results, UnitSystem units) {
        String bags = results.plan()
                .filter(plan -> !plan.composites().isEmpty())
                .map(plan -> ", " + counted(plan.composites().size(), "bag"))
                .orElse("");
        int zones = results.zones().size();
        return new Line(
                zones == 0 ? "Waits for turf" : counted(zones, "zone") + bags,
                zones == 0 ? State.NOT_STARTED : State.DONE);
    }

    public static Line cores(Results results, UnitSystem units) {
        if (results.zones().isEmpty()) {
            return new Line("Waits for turf", State.NOT_STARTED);
        }
        return results.plan()
                .map(plan -> new Line(cores(plan, units), coresState(plan)))
                .orElse(new Line("Being planned", State.UNDER_WAY));
    }

    public static Line print(Results results, UnitSystem units) {
        boolean walked = results.plan().filter(p -> !p.walks().isEmpty()).isPresent();
        return walked ? new Line("Walk plan ready", State.DONE) : new Line("Waits for cores", State.NOT_STARTED);
    }

    private static State coresState(CorePlan plan) {
        if (plan.problems().stream().anyMatch(Problem::isError)) {
            return State.NEEDS_YOU;
        }
        return plan.walks().isEmpty() ? State.NOT_STARTED : State.DONE;
    }

    private static String turf(List<Zone> zones, UnitSystem units) {
        if (zones.isEmpty()) {
            return "No turf yet";
        }
        double netM2 = zones.stream().mapToDouble(Zone::netAreaM2).sum();
        double seM2 = Math.sqrt(zones.stream()
                .mapToDouble(zone -> zone.areaSeM2() * zone.areaSeM2())
                .sum());
        String area =
                Formatting.withStandardError(Measure.AREA, netM2, seM2, units).text();
        return area + " turf in " + counted(zones.size(), "part");
    }

    private static String cores(CorePlan plan, UnitSystem units) {
        if (plan.walks().isEmpty()) {
            return "No cores yet";
        }
        String walk =
                Formatting.format(Measure.LENGTH, plan.totalWalkM(), units, 0).text();
        boolean proven = plan.walks().stream().allMatch(CorePlan.Walk::proven);
        return counted(plan.mainCores().size(), "core") + ", " + walk + " walk" + (proven ? ", shortest possible" : "");
    }

    private static String counted(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }
}
