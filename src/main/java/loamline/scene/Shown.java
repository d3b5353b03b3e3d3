package loamline.scene;

import java.util.List;
import java.util.Optional;
import loamline.sampling.CorePlan;
import loamline.sun.Glare;
import loamline.water.Gap;

/**
 * What was found and is drawn on the map of a yard.
 *
 * @param plan cores and walk; without one, the cores that the yard itself holds are drawn, if any
 * @param shading amounts by colour
 * @param holes turf that no head reaches
 * @param cups of a test of a valve, in the place of cores
 * @param glare where panels throw the sun
 */
public record Shown(
        Optional<CorePlan> plan, Optional<Shading> shading, List<Gap> holes, Optional<CupMap> cups, List<Glare> glare) {
    public Shown {
        holes = List.copyOf(holes);
        glare = List.copyOf(glare);
    }

    /** A plan, or nothing. */
    public static Shown of(Optional<CorePlan> plan) {
        return new Shown(plan, Optional.empty(), List.of(), Optional.empty(), List.of());
    }

    /** Hours of sun. */
    public static Shown of(Shading hours) {
        return new Shown(Optional.empty(), Optional.of(hours), List.of(), Optional.empty(), List.of());
    }

    /** Water. */
    public static Shown of(Optional<Shading> rate, List<Gap> holes) {
        return new Shown(Optional.empty(), rate, holes, Optional.empty(), List.of());
    }

    /** A cup test. */
    public static Shown of(CupMap cups, Optional<Shading> measured) {
        return new Shown(Optional.empty(), measured, List.of(), Optional.of(cups), List.of());
    }
}
