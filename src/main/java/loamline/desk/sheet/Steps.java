package loamline.desk.sheet;

import java.util.List;
import java.util.Optional;
import loamline.desk.session.Results;
import loamline.sampling.CorePlan;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Zone;

/** The sheet's lines: one result a step. */
public final class Steps {
    /** How far a step is, told by a sign's shape and by this word. */
    public enum State {
        NOT_STARTED("not started"),
        NEEDS_YOU("needs you"),
        DONE("done");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** A step's name, its result in a line, and how far it is. */
    public record Line(String title, String result, State state) {}

    private Steps() {}

    public static List<Line> of(Results results, UnitSystem units) {
        List<Zone> zones = results.zones();
        boolean turf = !zones.isEmpty();
        Optional<CorePlan> plan = results.plan();
        boolean walked = plan.filter(p -> !p.walks().isEmpty()).isPresent();
        return List.of(
                new Line("Trace", trace(zones, units), turf ? State.DONE : State.NEEDS_YOU),
                new Line("Zones", zones(zones, plan), turf ? State.DONE : State.NOT_STARTED),
                new Line("Cores", plan.map(p -> cores(p, units)).orElse("Being planned"), coresState(plan)),
                new Line(
                        "Print",
                        walked ? "Walk plan ready" : "Waits for cores",
                        walked ? State.DONE : State.NOT_STARTED));
    }

    private static State coresState(Optional<CorePlan> plan) {
        if (plan.isEmpty()) {
            return State.NOT_STARTED;
        }
        if (plan.get().problems().stream().anyMatch(p -> p.isError())) {
            return State.NEEDS_YOU;
        }
        return plan.get().walks().isEmpty() ? State.NOT_STARTED : State.DONE;
    }

    private static String zones(List<Zone> zones, Optional<CorePlan> plan) {
        String bags =
                plan.map(p -> ", " + counted(p.composites().size(), "bag")).orElse("");
        return counted(zones.size(), "zone") + bags;
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
