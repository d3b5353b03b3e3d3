package loamline.desk.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.account.Source;
import loamline.geometry.Outline;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Barrier;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.Kind;
import loamline.yard.Naming;
import loamline.yard.Tree;
import loamline.yard.Turf;
import loamline.yard.Yard;
import loamline.yard.Zones;

/** What the facts say of drawn features: what is computed from them, and what can be changed. */
final class FeatureFacts {
    private static final Source PLANE = new Source("plane-geometry", "Plane geometry, derived");

    private final Yard yard;
    private final UnitSystem units;

    private FeatureFacts(Yard yard, UnitSystem units) {
        this.yard = yard;
        this.units = units;
    }

    /** @param features one or more of the yard's */
    static Facts of(List<Feature> features, Yard yard, UnitSystem units) {
        FeatureFacts facts = new FeatureFacts(yard, units);
        List<Field> fields = Fields.common(features).stream()
                .map(spec -> Field.of(spec, features, units))
                .toList();
        if (features.size() > 1) {
            return new Facts(features.size() + " features", counted(features), facts.totals(features), fields);
        }
        Feature only = features.get(0);
        String kind = Naming.kind(only);
        String where = Naming.title(only).equalsIgnoreCase(kind) ? "" : kind;
        return new Facts(Naming.title(only), where, facts.rows(only), fields);
    }

    private static String counted(List<Feature> features) {
        Map<String, Long> byKind = features.stream()
                .collect(Collectors.groupingBy(Naming::kind, LinkedHashMap::new, Collectors.counting()));
        return byKind.entrySet().stream()
                .map(each -> each.getValue() + " " + each.getKey())
                .collect(Collectors.joining(" · "));
    }

    private List<Row> rows(Feature feature) {
        List<Row> rows = new ArrayList<>();
        if (feature.shape().orElse(null) instanceof Outline outline) {
            Region ground = Region.of(outline);
            rows.add(area(feature instanceof Turf ? "Outlined" : "Area", ground));
            if (feature instanceof Turf) {
                rows.add(net(ground));
            }
            rows.add(length(
                    "Edge",
                    ground.perimeterM(),
                    Account.of("P = Σ |p(i+1) − p(i)|", "All rings, holes too. A corner moved changes it.", PLANE)
                            .with("corners", outline.vertices().count())));
        } else if (feature.shape().orElse(null) instanceof Polyline line) {
            rows.add(length("Length", line.lengthM(), lineAccount(line)));
        }
        if (feature instanceof Barrier barrier && !barrier.gates().isEmpty()) {
            rows.add(gates(barrier));
        } else if (feature instanceof Head head) {
            head.radiusM().ifPresent(radiusM -> rows.add(thrown(radiusM, head.arcSweepDeg())));
        } else if (feature instanceof Tree tree) {
            tree.crownRadiusM().ifPresent(radiusM -> rows.add(crown(radiusM)));
        }
        return rows;
    }

    private List<Row> totals(List<Feature> features) {
        List<Region> grounds = features.stream()
                .flatMap(feature -> feature.shape().stream())
                .filter(Outline.class::isInstance)
                .map(outline -> Region.of((Outline) outline))
                .toList();
        List<Polyline> lines = features.stream()
                .flatMap(feature -> feature.shape().stream())
                .filter(Polyline.class::isInstance)
                .map(Polyline.class::cast)
                .toList();
        List<Row> rows = new ArrayList<>();
        if (!grounds.isEmpty()) {
            double sumM2 = grounds.stream().mapToDouble(Region::areaM2).sum();
            Account account = Account.of("A = area of the union", "Ground that several cover counts once.", PLANE)
                    .with("outlines", grounds.size())
                    .with("sum_m2", sumM2);
            rows.add(Row.of(
                    "Ground",
                    Formatting.format(Measure.AREA, Region.union(grounds).areaM2(), units),
                    account));
        }
        if (!lines.isEmpty()) {
            double sumM = lines.stream().mapToDouble(Polyline::lengthM).sum();
            rows.add(
                    length("Length", sumM, Account.of("L = Σ length", "", PLANE).with("lines", lines.size())));
        }
        return rows;
    }

    private Row area(String name, Region ground) {
        Account account = Account.of(
                        "A = ½ |Σ (x(i) y(i+1) − x(i+1) y(i))|",
                        "A corner moved changes it; holes are taken out.",
                        PLANE)
                .with("corners", ground.outline().vertices().count())
                .with("parts", ground.parts().size());
        return Row.of(name, Formatting.format(Measure.AREA, ground.areaM2(), units), account);
    }

    private Row net(Region ground) {
        Account account = Account.of(
                        "net = outlined − what lies on it", "Ground covered twice is taken out once.", PLANE)
                .with("outlined_m2", ground.areaM2());
        Region left = ground;
        for (Map.Entry<Kind, Region> cover : Zones.covers(yard).entrySet()) {
            double beforeM2 = left.areaM2();
            left = left.minus(cover.getValue());
            if (left.areaM2() < beforeM2) {
                account = account.with(cover.getKey().word() + "_m2", beforeM2 - left.areaM2());
            }
        }
        return Row.of("Net turf", Formatting.format(Measure.AREA, left.areaM2(), units), account);
    }

    private Row length(String name, double lengthM, Account account) {
        return Row.of(name, Formatting.format(Measure.LENGTH, lengthM, units), account);
    }

    private static Account lineAccount(Polyline line) {
        return Account.of("L = Σ |p(i+1) − p(i)|", "In plan: slopes are not counted.", PLANE)
                .with("points", line.points().size());
    }

    private Row gates(Barrier barrier) {
        String each = barrier.gates().stream()
                .map(gate -> Formatting.format(Measure.LENGTH, gate.widthM(), units)
                                .text() + " at "
                        + Formatting.format(Measure.LENGTH, gate.atM(), units).text())
                .collect(Collectors.joining(", "));
        return Row.plain(barrier.gates().size() == 1 ? "Gate" : "Gates", each, "");
    }

    private Row thrown(double radiusM, double sweepDeg) {
        double areaM2 = Math.PI * radiusM * radiusM * sweepDeg / Head.FULL_CIRCLE_DEG;
        Account account = Account.of(
                        "A = π r² · arc / 360°", "Without wind, and without what stands in the way.", PLANE)
                .with("r_m", radiusM)
                .with("arc_deg", sweepDeg);
        return Row.of("Throws over", Formatting.format(Measure.AREA, areaM2, units), account);
    }

    private Row crown(double radiusM) {
        Account account =
                Account.of("A = π r²", "The crown as seen from above.", PLANE).with("r_m", radiusM);
        return Row.of("Crown covers", Formatting.format(Measure.AREA, Math.PI * radiusM * radiusM, units), account);
    }
}
