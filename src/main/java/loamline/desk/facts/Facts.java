package loamline.desk.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.account.Account;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Zone;

/**
 * What the facts say of the selection.
 *
 * @param title what is selected
 * @param where where it belongs, in a line; may be empty
 * @param rows what was computed or is known
 * @param fields what can be changed in place
 */
record Facts(String title, String where, List<Row> rows, List<Field> fields) {
    Facts {
        rows = List.copyOf(rows);
        fields = List.copyOf(fields);
    }

    /** The facts of the features that are selected, else of the core, the zone, or the yard as a whole. */
    static Facts of(Results results, Selection selection, UnitSystem units) {
        List<Feature> features = selection.keys().stream()
                .flatMap(key -> results.yard().feature(key).stream())
                .toList();
        if (!features.isEmpty()) {
            return FeatureFacts.of(features, results.yard(), units);
        }
        Optional<Facts> core = results.plan()
                .flatMap(plan -> plan.cores().stream()
                        .filter(c -> c.id().equals(selection.core()))
                        .findFirst()
                        .map(c -> ofCore(c, plan, units)));
        return core.or(() -> results.zones().stream()
                        .filter(z -> z.name().equals(selection.zone()))
                        .findFirst()
                        .map(z -> ofZone(z, units)))
                .orElseGet(() -> ofYard(results, units));
    }

    private static Facts ofCore(PlannedCore core, CorePlan plan, UnitSystem units) {
        Composite bag = plan.composites().stream()
                .filter(c -> c.name().equals(core.composite()))
                .findFirst()
                .orElseThrow();
        String bagKey = "/composites/" + plan.composites().indexOf(bag);
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of(
                "Stands for",
                Formatting.format(Measure.AREA, bag.areaM2() / bag.cores(), units),
                account(plan, "/cores/" + plan.cores().indexOf(core))));
        rows.add(fact(
                "Probe to", Formatting.format(Measure.SMALL_LENGTH, bag.probe().depthM() * 1000, units)));
        rows.add(Row.of(
                "Soil in the bag",
                Formatting.format(Measure.VOLUME_SMALL, bag.volumeMl(), units),
                account(plan, bagKey + "/probe/volumeMl")));
        core.order().ifPresent(order -> rows.add(Row.plain("Stop", String.valueOf(order), "of the walk")));
        plan.cores().stream()
                .filter(spare -> spare.spareOf().filter(core.id()::equals).isPresent())
                .forEach(spare -> rows.add(fact(
                        "Spare " + spare.id(),
                        Formatting.format(Measure.LENGTH, spare.at().distanceTo(core.at()), units))));
        String what = core.spareOf().map(of -> "Spare of " + of).orElse("Core " + core.id());
        String where = "bag " + core.composite() + " · " + core.zone()
                + (core.stratum() > 0
                        ? " · stratum " + core.stratum() + " of " + bag.strata().size()
                        : "");
        return new Facts(what, where, rows, List.of());
    }

    private static Facts ofZone(Zone zone, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of(
                "Net turf",
                Formatting.withStandardError(Measure.AREA, zone.netAreaM2(), zone.areaSeM2(), units),
                Optional.ofNullable(zone.accounts().get("netAreaM2"))));
        rows.add(Row.of(
                "Standard error",
                Formatting.format(Measure.AREA, zone.areaSeM2(), units),
                Optional.ofNullable(zone.accounts().get("areaSeM2"))));
        rows.add(fact("Outlined", Formatting.format(Measure.AREA, zone.grossM2(), units)));
        for (Map.Entry<Kind, Double> taken : zone.minusM2().entrySet()) {
            rows.add(fact("less " + taken.getKey().word(), Formatting.format(Measure.AREA, taken.getValue(), units)));
        }
        rows.add(fact("Edge", Formatting.format(Measure.LENGTH, zone.net().perimeterM(), units, 0)));
        String where = zone.grass().isBlank() ? "zone" : "zone · " + zone.grass();
        return new Facts(zone.name(), where, rows, List.of());
    }

    private static Facts ofYard(Results results, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        for (Zone zone : results.zones()) {
            rows.add(Row.of(
                    zone.name(),
                    Formatting.format(Measure.AREA, zone.netAreaM2(), units),
                    Optional.ofNullable(zone.accounts().get("netAreaM2"))));
        }
        List<CorePlan.Walk> walks = results.plan().map(CorePlan::walks).orElse(List.of());
        for (int i = 0; i < walks.size(); i++) {
            rows.add(Row.of(
                    "Walk " + walks.get(i).composite(),
                    Formatting.format(Measure.LENGTH, walks.get(i).lengthM(), units, 0),
                    account(results.plan().orElseThrow(), "/walks/" + i + "/lengthM")));
        }
        String name = results.yard().name();
        return new Facts(
                name.isBlank() ? "Yard" : name,
                rows.isEmpty() ? "What you trace tells its facts here." : "Click anything on the map to see its facts.",
                rows,
                List.of());
    }

    private static Row fact(String name, Formatted formatted) {
        return Row.of(name, formatted, Optional.empty());
    }

    private static Optional<Account> account(CorePlan plan, String key) {
        return Optional.ofNullable(plan.accounts().get(key));
    }
}
