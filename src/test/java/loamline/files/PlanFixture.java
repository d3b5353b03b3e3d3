package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.account.Account;
import loamline.account.Source;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.Merge;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Stratum;
import loamline.sampling.CorePlan.Walk;
import loamline.yard.Probe;

/** A plan of two cores and a spare, put together by hand. */
final class PlanFixture {
    static final Frame COLUMBUS = Frame.at(new LonLat(-82.9988, 39.9612));

    static final Account AREA =
            Account.of("A = net", "What is left.", new Source("own", "derived")).with("net_m2", 50.0);

    private PlanFixture() {}

    static CorePlan plan(String zone) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        accounts.put("/composites/0/areaM2", AREA);
        return new CorePlan(
                7,
                List.of(new Composite(
                        "A",
                        List.of(zone),
                        2,
                        50,
                        48,
                        OptionalDouble.of(0.01),
                        OptionalDouble.empty(),
                        List.of(new Stratum(1, zone, Region.of(Outline.of(0, 0, 5, 0, 5, 5, 0, 5)))),
                        new Probe(0.02, 0.1),
                        62.5)),
                List.of(
                        new PlannedCore("A1", "A", zone, new Point(2, 3), 1, Optional.empty(), OptionalInt.of(1)),
                        new PlannedCore("A2", "A", zone, new Point(7, 3), 2, Optional.empty(), OptionalInt.of(2)),
                        new PlannedCore(
                                "A1s", "A", zone, new Point(2.5, 3.5), 1, Optional.of("A1"), OptionalInt.empty())),
                List.of(new Walk(
                        "A",
                        14.5,
                        14.25,
                        false,
                        new Polyline(List.of(
                                new Point(0, 0), new Point(2, 3), new Point(5, 2), new Point(7, 3), new Point(0, 0))))),
                List.of(new Merge(List.of(zone), List.of("back"), 0.125, "Both are shaded.")),
                List.of(),
                accounts);
    }
}
