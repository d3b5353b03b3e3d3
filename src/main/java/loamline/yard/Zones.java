package loamline.yard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.account.Source;
import loamline.geometry.Region;

/**
 * The zones of a yard as ground.
 *
 * <p>Net area = turf − union of building, water, deck, paving, gravel and bed. Turf that two zones claim goes
 * to the zone listed first. A zone that is covered whole stays in the list with an area of 0.
 */
public final class Zones {
    /** What is taken out of turf, in the order in which shared ground is charged. */
    private static final List<Kind> COVERING =
            List.of(Kind.BUILDING, Kind.WATER, Kind.DECK, Kind.PAVING, Kind.GRAVEL, Kind.BED);

    private static final Source SHOELACE = new Source(
            "local-plane",
            "Plane area by the shoelace formula on a transverse Mercator plane centred on the yard"
                    + " (IOGP Guidance Note 7-2, method 9807)");

    private Zones() {}

    /** The zones in the order in which their first outline is listed; none if there is no turf. */
    public static List<Zone> of(Yard yard) {
        Map<Kind, Region> covers = covers(yard);
        Digitizing digitizing = Digitizing.of(yard);
        Map<String, List<Turf>> byName = yard.all(Turf.class)
                .collect(Collectors.groupingBy(Turf::zone, LinkedHashMap::new, Collectors.toList()));
        List<Zone> zones = new ArrayList<>();
        Region claimed = Region.EMPTY;
        for (Map.Entry<String, List<Turf>> entry : byName.entrySet()) {
            Region drawn = Region.union(entry.getValue().stream()
                    .map(turf -> Region.of(turf.outline()))
                    .toList());
            Region gross = drawn.minus(claimed);
            claimed = claimed.union(drawn);
            zones.add(zone(entry.getKey(), entry.getValue(), gross, covers, digitizing));
        }
        return List.copyOf(zones);
    }

    /** Everything that covers ground, joined by kind; kinds that do not occur are left out. */
    public static Map<Kind, Region> covers(Yard yard) {
        Map<Kind, List<Region>> drawn = new EnumMap<>(Kind.class);
        yard.all(Cover.class)
                .forEach(cover -> drawn.computeIfAbsent(cover.cover(), k -> new ArrayList<>())
                        .add(Region.of(cover.outline())));
        yard.all(Building.class)
                .forEach(building -> drawn.computeIfAbsent(Kind.BUILDING, k -> new ArrayList<>())
                        .add(Region.of(building.outline())));
        Map<Kind, Region> joined = new EnumMap<>(Kind.class);
        drawn.forEach((kind, regions) -> joined.put(kind, Region.union(regions)));
        return joined;
    }

    private static Zone zone(
            String name, List<Turf> outlines, Region gross, Map<Kind, Region> covers, Digitizing digitizing) {
        Map<Kind, Double> minus = new LinkedHashMap<>();
        Region net = gross;
        for (Kind kind : COVERING) {
            Region cover = covers.getOrDefault(kind, Region.EMPTY);
            Region left = net.minus(cover);
            double takenM2 = net.areaM2() - left.areaM2();
            if (takenM2 > NO_AREA_M2) {
                minus.put(kind, takenM2);
                net = left;
            }
        }
        return new Zone(
                name,
                gross.areaM2(),
                net,
                minus,
                digitizing.areaSeM2(net),
                firstGiven(outlines, Turf::grass),
                weighted(outlines, Turf::trouble),
                weighted(outlines, Turf::slopePct),
                outlines.stream().flatMap(turf -> turf.bag().stream()).findFirst(),
                outlines.stream().map(Turf::key).toList(),
                accounts(gross, net, minus, digitizing));
    }

    /** Less than a square millimetre is rounding of an overlay, not ground. */
    private static final double NO_AREA_M2 = 1e-6;

    private static Map<String, Account> accounts(
            Region gross, Region net, Map<Kind, Double> minus, Digitizing digitizing) {
        Account netAccount = Account.of(
                        "net = gross − Σ minus", "Turf only: what lies on it is taken out once.", SHOELACE)
                .with("gross_m2", gross.areaM2());
        for (Map.Entry<Kind, Double> taken : minus.entrySet()) {
            netAccount = netAccount.with(taken.getKey().word() + "_m2", taken.getValue());
        }
        Map<String, Account> accounts = new LinkedHashMap<>();
        accounts.put("netAreaM2", netAccount);
        accounts.put("areaSeM2", digitizing.account(net));
        return accounts;
    }

    private static String firstGiven(List<Turf> outlines, Function<Turf, String> word) {
        return outlines.stream().map(word).filter(w -> !w.isBlank()).findFirst().orElse("");
    }

    private static OptionalDouble weighted(List<Turf> outlines, Function<Turf, OptionalDouble> value) {
        double sum = 0;
        double weight = 0;
        for (Turf turf : outlines) {
            OptionalDouble v = value.apply(turf);
            if (v.isPresent()) {
                double areaM2 = Math.max(NO_AREA_M2, Region.of(turf.outline()).areaM2());
                sum += areaM2 * v.getAsDouble();
                weight += areaM2;
            }
        }
        return weight == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / weight);
    }
}
