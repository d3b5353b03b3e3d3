package loamline.sheets;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loamline.raster.Grid;
import loamline.scene.Layer;
import loamline.scene.Ramp;
import loamline.scene.Shading;
import loamline.scene.Shown;
import loamline.units.Measure;
import loamline.water.Water;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * The map of a yard's water: rate by colour, holes outlined.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 */
public record WaterMap(Yard yard, List<Zone> zones, Water water, SheetOptions options) {
    private static final String WHAT = "rate with every valve running, ideal without wind";
    private static final String CAUTION = "Yards measure less even: only a cup test tells.";

    /** What a map of water consists of: trees and cores would hide it. */
    private static final Set<Layer> LAYERS = EnumSet.of(
            Layer.BOUNDARY,
            Layer.TURF,
            Layer.COVERS,
            Layer.BUILDINGS,
            Layer.RASTER,
            Layer.HEADS,
            Layer.BARRIERS,
            Layer.HOLES,
            Layer.LABELS);

    public WaterMap {
        zones = List.copyOf(zones);
    }

    /** The map as a PNG of 200 pixels to the inch, a margin round it. */
    public byte[] png() {
        return map().png();
    }

    /** The map on a page of its own; the same bytes for the same input. */
    public byte[] pdf() {
        Fonts fonts = new Fonts();
        return new Book(yard.name(), "water", options, fonts).pdf(List.of(map().page(fonts)));
    }

    private AmountMap map() {
        Shown shown = Shown.of(
                water.rateMmH()
                        .map(WaterMap::wet)
                        .map(rate -> Shading.of(rate, Ramp.CIVIDIS, Measure.DEPTH_RATE, options.units())),
                water.gaps());
        return new AmountMap(yard, zones, shown, "Water", WHAT, CAUTION, LAYERS, options);
    }

    /** Dry turf keeps the colour of turf, so that the wash of the holes shows. */
    private static Grid wet(Grid rate) {
        return rate.map(mmH -> mmH > 0 ? mmH : Double.NaN);
    }
}
