package loamline.scene;

import java.util.List;
import java.util.Optional;
import loamline.sampling.CorePlan;
import loamline.water.Gap;

/**
 * What was found and is drawn on the map of a yard.
 *
 * @param plan cores and walk; without one, the cores that the yard itself holds are drawn, if any
 * @param shading amounts by colour
 * @param holes turf that no head reaches
 * @param cups a cup test, with the throws of its valve
 */
public record Shown(Optional<CorePlan> plan, Optional<Shading> shading, List<Gap> holes, Optional<CupMap> cups) {
    public Shown {
        holes = List.copyOf(holes);
    }

    /** A plan, or nothing. */
    public static Shown of(Optional<CorePlan> plan) {
        return new Shown(plan, Optional.empty(), List.of(), Optional.empty());
    }

    /** A cup test. */
    public static Shown of(CupMap cups) {
        return new Shown(Optional.empty(), Optional.empty(), List.of(), Optional.of(cups));
    }

    /** Water. */
    public static Shown of(Optional<Shading> rate, List<Gap> holes) {
        return new Shown(Optional.empty(), rate, holes, Optional.empty());
    }
}
