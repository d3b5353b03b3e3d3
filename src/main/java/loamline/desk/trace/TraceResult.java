package loamline.desk.trace;

import java.util.List;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Zone;

/** What the Trace step has led to, in a line. */
public final class TraceResult {
    private static final String PLUS_MINUS = " ± ";

    private TraceResult() {}

    /** As in "7,410 ft² turf ± 90 in 3 parts". */
    public static String of(List<Zone> zones, UnitSystem units) {
        if (zones.isEmpty()) {
            return "No turf yet";
        }
        double netM2 = zones.stream().mapToDouble(Zone::netAreaM2).sum();
        double seM2 = Math.sqrt(zones.stream()
                .mapToDouble(zone -> zone.areaSeM2() * zone.areaSeM2())
                .sum());
        Formatted area = Formatting.withStandardError(Measure.AREA, netM2, seM2, units);
        String[] parts = area.number().split(PLUS_MINUS, 2);
        String turf = parts[0] + " " + area.unit() + " turf" + PLUS_MINUS + parts[1];
        return turf + " in " + zones.size() + (zones.size() == 1 ? " part" : " parts");
    }
}
