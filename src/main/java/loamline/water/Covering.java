package loamline.water;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.geometry.Overlaps;
import loamline.geometry.Region;
import loamline.water.Coverage.Destination;

/** Where water falls and where it misses, from outlines. */
final class Covering {
    /** A smaller hole is the wobble of edges traced by hand, m² (about 1 ft²). */
    static final double LEAST_GAP_M2 = 0.1;

    /** A hole nowhere wider than twice this is a seam, m. */
    private static final double SEAM_M = 0.05;

    private static final double MINUTES_PER_HOUR = 60;

    private Covering() {}

    static Coverage of(Lawn lawn, Collection<Valve> valves, double yearMm) {
        List<Region> reaches = valves.stream()
                .flatMap(valve -> valve.heads().stream())
                .map(SprinklerHead::reach)
                .toList();
        List<Region> depths = Overlaps.depths(lawn.turf(), reaches, Coverage.MOST);
        return new Coverage(lawn.turf().areaM2(), depths, destinations(valves, yearMm));
    }

    private static List<Destination> destinations(Collection<Valve> valves, double yearMm) {
        Map<String, Double> lpm = new LinkedHashMap<>(Map.of(Destination.TURF, 0.0));
        Map<String, Double> litresAYear = new LinkedHashMap<>();
        for (Valve valve : valves) {
            double minutes = MINUTES_PER_HOUR * valve.hours(yearMm);
            for (SprinklerHead head : valve.heads()) {
                head.shares().forEach((ground, share) -> {
                    double own = share * head.pattern().flowLpm();
                    lpm.merge(ground, own, Double::sum);
                    litresAYear.merge(ground, own * minutes, Double::sum);
                });
            }
        }
        double all = lpm.values().stream().mapToDouble(v -> v).sum();
        List<Destination> destinations = new ArrayList<>();
        lpm.forEach((ground, own) -> destinations.add(
                new Destination(ground, all > 0 ? own / all : 0, litresAYear.getOrDefault(ground, 0.0))));
        return destinations;
    }

    /** The holes, largest first. */
    static List<Gap> gaps(Coverage coverage, Lawn lawn) {
        List<Gap> gaps = new ArrayList<>();
        for (Region piece : coverage.reachedBy().get(0).parts()) {
            if (piece.areaM2() >= LEAST_GAP_M2 && !piece.buffer(-SEAM_M).isEmpty()) {
                gaps.add(new Gap("g" + (gaps.size() + 1), piece, lawn.zoneOf(piece)));
            }
        }
        return gaps;
    }
}
