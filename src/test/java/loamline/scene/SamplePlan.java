package loamline.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.account.Source;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Stratum;
import loamline.sampling.CorePlan.Walk;
import loamline.yard.Probe;
import loamline.yard.Zone;
import loamline.yard.Zones;

/** Core plans laid by hand: right in form, not computed. */
public final class SamplePlan {
    private static final Source STRATA = new Source(
            "walvoort-2010",
            "Walvoort, Brus & de Gruijter 2010, An R package for spatial coverage sampling and random sampling from"
                    + " compact geographical strata by k-means, Computers & Geosciences 36:1261-1267");
    private static final Source HELD_KARP = new Source(
            "held-karp-1962",
            "Held & Karp 1962, A dynamic programming approach to sequencing problems, J. SIAM 10:196-210");

    private final List<Composite> composites = new ArrayList<>();
    private final List<PlannedCore> cores = new ArrayList<>();
    private final List<PlannedCore> spares = new ArrayList<>();
    private final List<Walk> walks = new ArrayList<>();

    private final Map<String, Region> grounds;

    private SamplePlan(Map<String, Region> grounds) {
        this.grounds = grounds;
    }

    /** Two bags of twelve for {@link SampleYard#yard}: both back lawns, and the front. */
    public static CorePlan twoBags() {
        SamplePlan plan = new SamplePlan(Zones.of(SampleYard.yard()).stream()
                .collect(Collectors.toMap(Zone::name, zone -> zone.net().buffer(-0.9))));
        double[][] back = {
            {25.6, 30.6}, {21.6, 36.2}, {20.6, 41.4}, {15.6, 41.2}, {15.6, 36.1}, {10.2, 36.6},
            {10.2, 42.1}, {3.2, 43}, {3.1, 37.2}, {3, 30.8}, {10.9, 31}, {15.8, 31.6}
        };
        double[][] backSpares = {
            {27.4, 33.4}, {24.2, 34.6}, {22.8, 44}, {17.4, 44.2}, {18, 38.4}, {11.6, 39.4},
            {12.2, 43.8}, {6.4, 40}, {1.2, 34.6}, {4.6, 29}, {11.6, 33.8}, {18.2, 30.2}
        };
        plan.bag(
                "A",
                List.of("Back west", "Back east"),
                back,
                backSpares,
                x -> x.x() < 13.2 ? "Back west" : "Back east");
        double[][] front = {
            {27.2, 9.6}, {27.4, 2}, {16.6, 2}, {16.6, 6.6}, {12.8, 6.6}, {12.8, 2},
            {9, 2}, {9, 6.6}, {5.3, 6.6}, {5.3, 2}, {1.8, 2}, {1.8, 6.6}
        };
        double[][] frontSpares = {
            {28.9, 9.9}, {26, 1.2}, {17.4, 3.8}, {16, 8.2}, {11.6, 8}, {12, 3.8},
            {8, 3.6}, {8.2, 8.2}, {4.4, 8.2}, {4.4, 3.6}, {2.8, 3.6}, {2.8, 8.2}
        };
        plan.bag("B", List.of("Front"), front, frontSpares, x -> "Front");
        plan.walk("A", true, 27.2, 25.28, back, new double[][] {{26.5, 28}});
        plan.walk("B", false, 27.2, 25.28, front, new double[][] {{1.8, 11.5}, {2.8, 11.5}, {2.8, 24.5}, {24.8, 25}});
        return plan.done();
    }

    /** One bag with a single core and no gate: a walk of no length. */
    public static CorePlan oneCore() {
        SamplePlan plan = new SamplePlan(Map.of("Front", Region.of(Outline.of(6, 2, 12, 2, 12, 8, 6, 8))));
        plan.bag("A", List.of("Front"), new double[][] {{9, 5}}, new double[0][], x -> "Front");
        plan.walks.add(new Walk("A", 0, 0, true, new Polyline(List.of(new Point(9, 5), new Point(9, 5)))));
        return plan.done();
    }

    /** A bag for every zone, as many cores each, in a grid over the zone's box. */
    public static CorePlan grid(Map<String, Outline> zones, int coresEach) {
        Map<String, Region> grounds = new LinkedHashMap<>();
        zones.forEach((zone, outline) -> grounds.put(zone, Region.of(outline)));
        SamplePlan plan = new SamplePlan(grounds);
        char name = 'A';
        for (Map.Entry<String, Outline> zone : zones.entrySet()) {
            var box = Region.of(zone.getValue()).box().orElseThrow();
            double[][] at = new double[coresEach][];
            double[][] spares = new double[coresEach][];
            int columns = (int) Math.ceil(Math.sqrt(coresEach * box.widthM() / box.heightM()));
            int rows = (coresEach + columns - 1) / columns;
            for (int i = 0; i < coresEach; i++) {
                int row = i / columns;
                int column = row % 2 == 0 ? i % columns : columns - 1 - i % columns;
                double x = box.minX() + (column + 0.5) * box.widthM() / columns;
                double y = box.minY() + (row + 0.5) * box.heightM() / rows;
                at[i] = new double[] {x, y};
                spares[i] = new double[] {x + 0.3 * box.widthM() / columns, y + 0.3 * box.heightM() / rows};
            }
            String bag = String.valueOf(name++);
            plan.bag(bag, List.of(zone.getKey()), at, spares, p -> zone.getKey());
            plan.walk(bag, false, at[0][0], at[0][1], at, new double[0][]);
        }
        return plan.done();
    }

    private interface ZoneOf {
        String at(Point p);
    }

    private void bag(String name, List<String> zones, double[][] at, double[][] spareAt, ZoneOf zoneOf) {
        List<Stratum> strata = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            Point p = new Point(at[i][0], at[i][1]);
            String id = name + (i + 1);
            cores.add(new PlannedCore(id, name, zoneOf.at(p), p, i + 1, Optional.empty(), OptionalInt.of(i + 1)));
            strata.add(new Stratum(i + 1, zoneOf.at(p), Region.EMPTY));
            if (i < spareAt.length) {
                Point s = new Point(spareAt[i][0], spareAt[i][1]);
                spares.add(
                        new PlannedCore(id + "s", name, zoneOf.at(s), s, i + 1, Optional.of(id), OptionalInt.empty()));
            }
        }
        composites.add(new Composite(
                name,
                zones,
                at.length,
                25.2 * at.length,
                21.4 * at.length,
                OptionalDouble.of(0.021),
                OptionalDouble.of(3.72),
                strata,
                Probe.USUAL,
                at.length * Probe.USUAL.coreMl()));
    }

    /** Gate, cores in order, the way home, gate. */
    private void walk(String bag, boolean proven, double x, double y, double[][] at, double[][] home) {
        List<Point> path = new ArrayList<>(List.of(new Point(x, y)));
        for (double[] p : at) {
            path.add(new Point(p[0], p[1]));
        }
        for (double[] p : home) {
            path.add(new Point(p[0], p[1]));
        }
        path.add(new Point(x, y));
        Polyline line = new Polyline(path);
        double lengthM = line.lengthM();
        walks.add(new Walk(bag, lengthM, proven ? lengthM : lengthM / 1.032, proven, line));
    }

    /** Strata as squares round the cores on the zone's ground, each cut off where it is nearer to another core. */
    private CorePlan done() {
        List<Composite> full = new ArrayList<>();
        for (Composite bag : composites) {
            List<PlannedCore> own =
                    cores.stream().filter(c -> c.composite().equals(bag.name())).toList();
            List<Stratum> strata = own.stream()
                    .map(core -> new Stratum(core.stratum(), core.zone(), cell(core, own)))
                    .toList();
            full.add(new Composite(
                    bag.name(),
                    bag.zones(),
                    bag.cores(),
                    bag.areaM2(),
                    bag.eligibleM2(),
                    bag.stratumAreaCv(),
                    bag.mssdM2(),
                    strata,
                    bag.probe(),
                    bag.volumeMl()));
        }
        List<PlannedCore> all = new ArrayList<>(cores);
        all.addAll(spares);
        return new CorePlan(1, full, all, walks, List.of(), List.of(), accounts(full));
    }

    private Region cell(PlannedCore planned, List<PlannedCore> all) {
        Point core = planned.at();
        double half = 3;
        Region cell = Region.of(square(core, half)).intersection(grounds.get(planned.zone()));
        for (PlannedCore other : all) {
            double farM = other.at().distanceTo(core);
            if (farM > 0 && farM < 4 * half) {
                double ux = (other.at().x() - core.x()) / farM;
                double uy = (other.at().y() - core.y()) / farM;
                Point middle = core.towards(other.at(), 0.5);
                double reach = 20;
                cell = cell.minus(Region.of(Outline.of(
                        middle.x() - reach * uy,
                        middle.y() + reach * ux,
                        middle.x() + reach * uy,
                        middle.y() - reach * ux,
                        middle.x() + reach * (uy + ux),
                        middle.y() + reach * (uy - ux),
                        middle.x() + reach * (ux - uy),
                        middle.y() + reach * (uy + ux))));
            }
        }
        return cell;
    }

    private static Outline square(Point middle, double half) {
        double x = middle.x();
        double y = middle.y();
        return Outline.of(x - half, y - half, x + half, y - half, x + half, y + half, x - half, y + half);
    }

    private static Map<String, Account> accounts(List<Composite> bags) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        for (int i = 0; i < bags.size(); i++) {
            accounts.put(
                    "/composites/" + i + "/stratumAreaCv",
                    Account.of(
                            "cv = sd(stratum areas) / mean, in the zone where it is largest",
                            "Equal strata make equal plugs an unbiased mean.",
                            STRATA));
            accounts.put(
                    "/walks/" + i + "/lengthM",
                    Account.of(
                            "shortest closed round over obstacle-avoiding distances",
                            "No shorter round exists.",
                            HELD_KARP));
        }
        return accounts;
    }
}
