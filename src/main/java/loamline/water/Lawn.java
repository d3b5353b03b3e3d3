package loamline.water;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Region;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.yard.Boundary;
import loamline.yard.Kind;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * What water falls on: all of a yard that does not change when a head is moved.
 *
 * @param zones turf by zone
 * @param turf all of it
 * @param nearTurf turf and what lies within {@link #EDGE_SLACK_M} of it
 * @param covers everything else that is drawn, by kind, in the order in which shared ground is charged
 * @param lot all ground within the property line; empty if there is none
 * @param mask the cells of the raster that are turf; empty if there is no turf
 */
record Lawn(
        List<Zone> zones,
        Region turf,
        Region nearTurf,
        Map<Kind, Region> covers,
        Optional<Region> lot,
        Optional<Mask> mask) {
    /** The most cells a raster has: 128 MB of numbers. */
    static final int MOST_CELLS = 16_000_000;

    /** Heads stand on edges, and edges wind by so much, m. */
    static final double EDGE_SLACK_M = 0.5;

    static Lawn of(Yard yard, double cellM) {
        List<Zone> zones = Zones.of(yard);
        Region turf = Region.union(zones.stream().map(Zone::net).toList());
        List<Region> lots = yard.all(Boundary.class)
                .map(boundary -> Region.of(boundary.outline()))
                .toList();
        Optional<Mask> mask = turf.box().map(box -> Mask.of(GridSpec.covering(box, cellFor(box, cellM)), turf));
        return new Lawn(
                zones,
                turf,
                turf.buffer(EDGE_SLACK_M),
                new LinkedHashMap<>(Zones.covers(yard)),
                lots.isEmpty() ? Optional.empty() : Optional.of(Region.union(lots)),
                mask);
    }

    /** The cell asked for, or the smallest with which the raster is not too large. */
    private static double cellFor(Box box, double cellM) {
        double cells = (box.widthM() / cellM + 2) * (box.heightM() / cellM + 2);
        return cells <= MOST_CELLS ? cellM : cellM * Math.sqrt(cells / MOST_CELLS);
    }

    /** The name of the zone that has most of some ground, the first of equals; empty if there is no zone. */
    String zoneOf(Region ground) {
        return zones.stream()
                .max(Comparator.comparingDouble(
                        zone -> zone.net().intersection(ground).areaM2()))
                .map(Zone::name)
                .orElse("");
    }
}
