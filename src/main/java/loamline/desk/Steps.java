package loamline.desk;

import java.util.List;
import loamline.sampling.CorePlan;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Zone;

/** The sheet's lines: one result a step. */
final class Steps {
    /** How far a step is, told by a sign's shape and by this word. */
    enum State {
        NOT_STARTED("not started"),
        NEEDS_YOU("needs you"),
        DONE("done");

        private final String word;

        State(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** A step's name, its result in a line, and how far it is. */
    record Line(String title, String result, State state) {}

    private Steps() {}

    static List<Line> of(Results results, UnitSystem units) {
        List<Zone> zones = results.zones();
        CorePlan plan = results.plan();
        boolean turf = !zones.isEmpty();
        boolean reached = plan.problems().stream().noneMatch(p -> p.isError());
        return List.of(
                new Line("Trace", trace(zones, units), turf ? State.DONE : State.NEEDS_YOU),
                new Line(
                        "Zones",
                        counted(zones.size(), "zone") + ", "
                                + counted(plan.composites().size(), "bag"),
                        turf ? State.DONE : State.NOT_STARTED),
                new Line("Cores", cores(plan, units), coresState(plan, reached)),
                new Line(
                        "Print",
                        plan.walks().isEmpty() ? "Waits for cores" : "Walk plan ready",
                        plan.walks().isEmpty() ? State.NOT_STARTED : State.DONE));
    }

    private static State coresState(CorePlan plan, boolean reached) {
        if (!reached) {
            return State.NEEDS_YOU;
        }
        return plan.walks().isEmpty() ? State.NOT_STARTED : State.DONE;
    }

    private static String trace(List<Zone> zones, UnitSystem units) {
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
