package loamline.desk.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.account.Source;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Kind;
import loamline.yard.Zone;

/**
 * What the facts say of the selection.
 *
 * @param title what is selected
 * @param where where it belongs, in a line
 * @param rows name, number and unit
 * @param why how its main number came about
 */
public record Facts(String title, String where, List<Row> rows, Optional<Why> why) {
    /** A fact: its name, its number or word, and its unit. */
    public record Row(String name, String value, String unit) {
        Row(String name, Formatted formatted) {
            this(name, formatted.number(), formatted.unit());
        }
    }

    /** An account in words: formula, what was put in, what it means, where it comes from. */
    public record Why(String formula, String inputs, String note, String sources) {
        static Why of(Account account) {
            String inputs = account.inputs().entrySet().stream()
                    .map(input -> input.getKey() + " = " + shown(input.getValue()))
                    .collect(Collectors.joining(", "));
            String sources = account.sources().stream().map(Source::citation).collect(Collectors.joining("; "));
            return new Why(account.formula(), inputs, account.note(), sources);
        }

        private static String shown(Object value) {
            return value instanceof Double number
                    ? new java.math.BigDecimal(number)
                            .round(new java.math.MathContext(6))
                            .stripTrailingZeros()
                            .toPlainString()
                    : String.valueOf(value);
        }
    }

    public static Facts of(Results results, Selection selection, UnitSystem units) {
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
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("Stands for", Formatting.format(Measure.AREA, bag.areaM2() / bag.cores(), units)));
        rows.add(new Row(
                "Probe to", Formatting.format(Measure.SMALL_LENGTH, bag.probe().depthM() * 1000, units)));
        core.order().ifPresent(order -> rows.add(new Row("Stop", String.valueOf(order), "of the walk")));
        plan.cores().stream()
                .filter(spare -> spare.spareOf().filter(core.id()::equals).isPresent())
                .forEach(spare -> rows.add(new Row(
                        "Spare " + spare.id(),
                        Formatting.format(Measure.LENGTH, spare.at().distanceTo(core.at()), units))));
        String what = core.spareOf().map(of -> "Spare of " + of).orElse("Core " + core.id());
        String where = "bag " + core.composite() + " · " + core.zone()
                + (core.stratum() > 0
                        ? " · stratum " + core.stratum() + " of " + bag.strata().size()
                        : "");
        return new Facts(
                what, where, rows, why(plan.accounts(), "/cores/" + plan.cores().indexOf(core)));
    }

    private static Facts ofZone(Zone zone, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(
                "Net turf", Formatting.withStandardError(Measure.AREA, zone.netAreaM2(), zone.areaSeM2(), units)));
        rows.add(new Row("Outlined", Formatting.format(Measure.AREA, zone.grossM2(), units)));
        for (Map.Entry<Kind, Double> taken : zone.minusM2().entrySet()) {
            rows.add(
                    new Row("less " + taken.getKey().word(), Formatting.format(Measure.AREA, taken.getValue(), units)));
        }
        rows.add(new Row("Edge", Formatting.format(Measure.LENGTH, zone.net().perimeterM(), units, 0)));
        return new Facts(
                zone.name(),
                zone.grass().isBlank() ? "zone" : "zone · " + zone.grass(),
                rows,
                why(zone.accounts(), "netAreaM2"));
    }

    private static Facts ofYard(Results results, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        for (Zone zone : results.zones()) {
            rows.add(new Row(zone.name(), Formatting.format(Measure.AREA, zone.netAreaM2(), units)));
        }
        for (CorePlan.Walk walk : results.plan().map(CorePlan::walks).orElse(List.of())) {
            rows.add(new Row("Walk " + walk.composite(), Formatting.format(Measure.LENGTH, walk.lengthM(), units, 0)));
        }
        return new Facts(
                results.yard().name().isBlank() ? "Yard" : results.yard().name(),
                "Click a core or a zone to see its facts.",
                rows,
                results.plan().flatMap(plan -> why(plan.accounts(), "/walks/0/lengthM")));
    }

    private static Optional<Why> why(Map<String, Account> accounts, String key) {
        return Optional.ofNullable(accounts.get(key)).map(Why::of);
    }
}
