package loamline.desk.water;

import java.util.List;
import java.util.Optional;
import loamline.desk.session.Derived;
import loamline.files.CupTable;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.water.cups.Concern;
import loamline.water.cups.Cup;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupPlanner;
import loamline.yard.Attachment;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * All that is known of a yard's water. Immutable.
 *
 * @param water as mapped, ideal, no wind
 * @param options how it was computed
 * @param worthwhile the cup tests that something asks for
 * @param tested what the readings say, a test a table
 */
record WaterView(Water water, WaterOptions options, List<CupPlan> worthwhile, List<CupTable> tested) {
    /** Cells of a raster that is drawn again at every move; a larger yard gets larger cells. */
    private static final double MOST_CELLS = 400_000;

    WaterView {
        worthwhile = List.copyOf(worthwhile);
        tested = List.copyOf(tested);
    }

    static WaterView of(Yard yard, Optional<Derived.Of<WaterView>> before) {
        WaterOptions options = WaterOptions.USUAL.withCellM(cellM(yard));
        Water water = before.map(Derived.Of::value)
                .filter(view -> view.options().equals(options))
                .map(view -> view.water().after(yard))
                .orElseGet(() -> Water.of(yard, options));
        List<CupPlan> worthwhile = CupPlanner.worthwhile(yard, Concern.of(yard, water), Cup.USUAL_THROAT_CM2);
        return new WaterView(water, options, worthwhile, CupTable.all(yard));
    }

    private static double cellM(Yard yard) {
        double turfM2 = Zones.of(yard).stream().mapToDouble(Zone::netAreaM2).sum();
        return Math.max(WaterOptions.USUAL.cellM(), Math.ceil(100 * Math.sqrt(turfM2 / MOST_CELLS)) / 100);
    }

    /** The test of a table. */
    Optional<CupTable> tested(Attachment table) {
        return tested.stream().filter(each -> each.table().equals(table)).findFirst();
    }
}
