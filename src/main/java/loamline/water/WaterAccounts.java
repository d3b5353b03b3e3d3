package loamline.water;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.account.Source;

/** How the numbers of a yard's water came about, by JSON pointer into {@code water.json}. */
final class WaterAccounts {
    private static final String IDEAL = "Ideal, no wind: yards measure far less. Only a cup test tells.";

    private static final Source RATE = new Source(
            "flow-over-area", "Rate = flow / area: a litre on a square metre is a millimetre (NMSU, Soils 456, ch. 5)");
    private static final Source LOW_QUARTER = new Source(
            "merriam-keller-1978",
            "from memory of Merriam & Keller 1978, Farm Irrigation System Evaluation: A Guide for Management");
    private static final Source LOW_HALF = new Source(
            "ia-2005",
            "from memory of Irrigation Association 2005, Landscape Irrigation Scheduling and Water Management");
    private static final Source CHRISTIANSEN =
            new Source("christiansen-1942", "Christiansen 1942, California Agr. Exp. Stn. Bulletin 670");
    private static final Source WINDOW = new Source(
            "cati-880802",
            "CATI Irrigation Notes 880802, California State University Fresno; a window of 5 % for turf from memory");
    private static final Source SPACING =
            new Source("epa-watersense-5-3", "US EPA, WaterSense at Work, section 5.3: spacing equal to the radius");
    private static final Source SHAPES = new Source(
            "outlines",
            "Arcs as outlines within " + Reach.CHORD_ERROR_M + " m of the circle and with its area; set operations");
    private static final Source YEAR = new Source("year-depth", "common practice, no source: an inch a week, 26 weeks");

    private final Map<String, Account> accounts = new LinkedHashMap<>();

    private WaterAccounts() {}

    static Map<String, Account> of(Water water, WaterOptions options) {
        WaterAccounts all = new WaterAccounts();
        List<ValveWater> valves = water.valves();
        for (int i = 0; i < valves.size(); i++) {
            all.valve("/valves/" + i, valves.get(i), options);
        }
        all.coverage(water.coverage(), options);
        for (int i = 0; i < water.gaps().size(); i++) {
            Gap gap = water.gaps().get(i);
            all.put(
                    "/gaps/" + i + "/areaM2",
                    Account.of(
                                    "A = one piece of turf − ∪ arcs",
                                    "Turf that no head of any valve reaches. " + IDEAL,
                                    SHAPES)
                            .with("zone", gap.zone())
                            .with("leastGap_m2", Covering.LEAST_GAP_M2));
        }
        for (int i = 0; i < water.headToHead().size(); i++) {
            all.headToHead("/headToHead/" + i, water.headToHead().get(i));
        }
        return all.accounts;
    }

    private void put(String pointer, Account account) {
        accounts.put(pointer, account);
    }

    private void valve(String at, ValveWater valve, WaterOptions options) {
        Account cells = Account.of("", IDEAL).with("cells", valve.cells()).with("cell_m", options.cellM());
        put(at + "/flowLpm", Account.of("Q = Σ flow of its heads", "").with("heads", String.join(", ", valve.heads())));
        put(at + "/throwAreaM2", Account.of("A = area of ∪ arcs", "On the turf or off it, once.", SHAPES));
        put(
                at + "/turfAreaM2",
                Account.of("A = turf ∩ convex hull of the ground its heads reach", "The turf of this valve.", SHAPES));
        put(
                at + "/grossMmH",
                Account.of("gross = 60 · Q / A_turf", "What its turf would get if no water fell elsewhere.", RATE)
                        .with("Q_Lpm", valve.flowLpm())
                        .with("A_turf_m2", valve.turfAreaM2()));
        put(at + "/meanMmH", named(cells, "mean over the cells of its turf, sampled at their middles", RATE));
        put(at + "/minMmH", named(cells, "rate on the driest cell of its turf"));
        valve.uniformity().ifPresent(u -> {
            Account mean = cells.with("mean_mmh", u.mean());
            put(at + "/duLq", named(mean, "DU = mean of the lowest quarter / mean; " + Uniformity.RULE, LOW_QUARTER));
            put(at + "/duLh", named(mean, "DU = mean of the lowest half / mean, cut by the same rule", LOW_HALF));
            put(at + "/cu", named(mean, "CU = 1 − mean |rate − mean| / mean", CHRISTIANSEN));
            put(at + "/cv", named(mean, "CV = standard deviation (n − 1) / mean"));
        });
        put(at + "/sc5", coefficient(cells, valve));
    }

    private static Account coefficient(Account cells, ValveWater valve) {
        int side = DriestWindow.side(valve.cells(), Valve.WINDOW_SHARE);
        String formula = "SC = mean / mean of the driest square window of 5 % of its turf, wholly on it";
        OptionalDouble sc = valve.sc5();
        String words = sc.isPresent() ? formula : formula + "; null: the window is dry, or none fits on this turf";
        return named(cells, words, WINDOW).with("window_cells", side + " × " + side);
    }

    private static Account named(Account numbers, String formula, Source... sources) {
        return new Account(formula, numbers.inputs(), List.of(sources), numbers.note());
    }

    private void coverage(Coverage coverage, WaterOptions options) {
        String[] keys = {"reachedBy0M2", "reachedBy1M2", "reachedBy2M2", "reachedBy3plusM2"};
        put("/coverage/turfM2", Account.of("A = net turf of all zones", "Each square metre once.", SHAPES));
        for (String key : keys) {
            put(
                    "/coverage/" + key,
                    Account.of("A = turf that lies in so many arcs", "Arcs of all valves count. " + IDEAL, SHAPES)
                            .with("turf_m2", coverage.turfM2()));
        }
        put(
                "/coverage/offTurfShare",
                Account.of(
                        "share = Σ flow falling off turf / Σ flow", "All valves run equally long. " + IDEAL, SHAPES));
        for (int i = 0; i < coverage.destinations().size(); i++) {
            put(
                    "/coverage/destinations/" + i + "/litresAYear",
                    Account.of(
                                    "V = Σ over valves of flow · share · hours until its turf has the year's depth",
                                    "Change the depth, and the volume changes in proportion.",
                                    RATE,
                                    YEAR)
                            .with("year_mm", options.yearMm()));
        }
    }

    private void headToHead(String at, HeadToHead check) {
        Account account = Account.of(
                "reach = radius / distance to the nearest head; ok if every side's next head is reached",
                "A side is a quarter turn of the arc at most; the way to a neighbour leads over turf for half or more.",
                SPACING);
        check.nearestM().ifPresent(m -> put(at + "/reach", account.with("nearest_m", m)));
        put(at + "/ok", account.with("sides", check.sides().size()));
    }
}
