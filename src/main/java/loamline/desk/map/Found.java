package loamline.desk.map;

import java.util.List;
import java.util.Optional;
import loamline.raster.Grid;
import loamline.sampling.CorePlan;
import loamline.scene.CupMap;
import loamline.scene.Ramp;
import loamline.scene.Shading;
import loamline.scene.Shown;
import loamline.sun.Glare;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.water.Gap;

/**
 * What a step has found and wants to be seen on the map.
 *
 * @param amounts as colours on the ground
 * @param holes turf that no head reaches
 * @param cups a cup test
 * @param glare where panels throw the sun
 */
public record Found(Optional<Amounts> amounts, List<Gap> holes, Optional<CupMap> cups, List<Glare> glare) {
    /** Nothing. */
    public static final Found NOTHING = new Found(Optional.empty(), List.of(), Optional.empty(), List.of());

    /** Amounts and nothing else. */
    public static Found of(Amounts amounts) {
        return new Found(Optional.of(amounts), List.of(), Optional.empty(), List.of());
    }

    /**
     * Amounts by cell.
     *
     * @param values 0 or more, NaN where there are none
     * @param ramp from none to the most
     */
    public record Amounts(Grid values, Ramp ramp, Measure measure) {
        Shading shading(UnitSystem units) {
            return Shading.of(values, ramp, measure, units);
        }
    }

    public Found {
        holes = List.copyOf(holes);
        glare = List.copyOf(glare);
    }

    Shown with(Optional<CorePlan> plan, UnitSystem units) {
        return new Shown(plan, amounts.map(found -> found.shading(units)), holes, cups, glare);
    }

    boolean isNothing() {
        return amounts.isEmpty() && holes.isEmpty() && cups.isEmpty() && glare.isEmpty();
    }
}
