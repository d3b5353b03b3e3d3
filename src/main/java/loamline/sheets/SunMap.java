package loamline.sheets;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.raster.Grid;
import loamline.scene.Layer;
import loamline.scene.Ramp;
import loamline.scene.Shading;
import loamline.scene.Shown;
import loamline.sun.Glare;
import loamline.sun.SunStudy;
import loamline.units.Measure;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * The map of the sun on a yard's turf: hours by colour, with what casts the shadows.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 * @param moment a moment of which pages tell besides
 */
public record SunMap(Yard yard, List<Zone> zones, SunStudy sun, Optional<Moment> moment, SheetOptions options) {
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
            Layer.GLARE,
            Layer.BARRIERS,
            Layer.TREES,
            Layer.LABELS);

    private static final String CAUTION = "Without clouds; ground taken as level.";

    public SunMap {
        zones = List.copyOf(zones);
    }

    /** Hours only. */
    public SunMap(Yard yard, List<Zone> zones, SunStudy sun, SheetOptions options) {
        this(yard, zones, sun, Optional.empty(), options);
    }

    /**
     * Light and glare at a moment.
     *
     * @param words when, such as {@code 14:30 by the sun, 2027-06-21}
     * @param light share of the sun that reaches each cell, 0 to 1; NaN off turf
     * @param glare where panels throw the sun
     */
    public record Moment(String words, Grid light, List<Glare> glare) {
        public Moment {
            glare = List.copyOf(glare);
        }
    }

    /** The map as a PNG of 200 pixels to the inch, a margin round it. */
    public byte[] png() {
        return hours().png();
    }

    /** The hours on a page, and the moment, if there is one, on another; the same bytes for the same input. */
    public byte[] pdf() {
        Fonts fonts = new Fonts();
        List<Page> pages = Stream.concat(Stream.of(hours()), moment.map(this::light).stream())
                .map(map -> map.page(fonts))
                .toList();
        return new Book(yard.name(), "sun", options, fonts).pdf(pages);
    }

    private AmountMap hours() {
        int steps = (int) Math.max(1, Math.ceil(sun.hours().quantile(1).orElse(0) / STEP_H));
        Shading hours = new Shading(sun.hours(), Ramp.CIVIDIS, Measure.TIME_HOURS, STEP_H, steps);
        String what = "direct sun in hours a day, " + dates();
        return new AmountMap(yard, zones, Shown.of(hours), "Sun", what, CAUTION, LAYERS, options);
    }

    private AmountMap light(Moment at) {
        Shown shown = new Shown(
                Optional.empty(),
                Optional.of(Shading.of(at.light(), Ramp.CIVIDIS, Measure.PERCENT, options.units())),
                List.of(),
                Optional.empty(),
                at.glare());
        String caution = at.glare().isEmpty() ? CAUTION : CAUTION + " Glare lands there if nothing stands in its way.";
        String what = "sun that reaches the turf at " + at.words();
        return new AmountMap(yard, zones, shown, "Shade", what, caution, LAYERS, options);
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
