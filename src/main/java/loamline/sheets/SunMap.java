package loamline.sheets;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loamline.scene.Layer;
import loamline.scene.Ramp;
import loamline.scene.Shading;
import loamline.scene.Shown;
import loamline.sun.SunStudy;
import loamline.units.Measure;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * The map of the sun on a yard's turf: hours by colour, with what casts the shadows.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 */
public record SunMap(Yard yard, List<Zone> zones, SunStudy sun, SheetOptions options) {
    /** More dates are told by the first and the last. */
    private static final int DATES_NAMED = 4;

    /** Between two colours of the legend, h: the classes of light begin on them. */
    private static final double STEP_H = 2;

    private static final Set<Layer> LAYERS = EnumSet.of(
            Layer.BOUNDARY,
            Layer.TURF,
            Layer.COVERS,
            Layer.BUILDINGS,
            Layer.RASTER,
            Layer.BARRIERS,
            Layer.TREES,
            Layer.LABELS);

    public SunMap {
        zones = List.copyOf(zones);
    }

    /** The map as a PNG of 200 pixels to the inch, a margin round it. */
    public byte[] png() {
        int steps = (int) Math.max(1, Math.ceil(sun.hours().quantile(1).orElse(0) / STEP_H));
        Shading hours = new Shading(sun.hours(), Ramp.CIVIDIS, Measure.TIME_HOURS, STEP_H, steps);
        String words = "Direct sun in hours a day without clouds, " + dates() + ". Ground taken as level.";
        return new AmountMap(yard, zones, Shown.of(hours), "Sun", words, LAYERS, options).png();
    }

    private String dates() {
        List<LocalDate> dates = sun.request().dates();
        if (dates.size() > DATES_NAMED) {
            return "mean of " + dates.size() + " dates from " + dates.get(0) + " to " + dates.get(dates.size() - 1);
        }
        String named = dates.stream().map(LocalDate::toString).collect(Collectors.joining(", "));
        return dates.size() == 1 ? "on " + named : "mean of " + named;
    }
}
