package loamline.scene;

import java.util.List;
import java.util.Optional;
import loamline.sampling.CorePlan;
import loamline.yard.Head;
import loamline.yard.Yard;
import loamline.yard.Zone;

/** Draws a yard. */
public final class YardScene {
    private YardScene() {}

    /**
     * The map of a yard.
     *
     * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it; turf in no zone is not drawn
     * @param plan cores and walk; without one, the cores that the yard itself holds are drawn, if any
     */
    public static Scene of(Yard yard, List<Zone> zones, Optional<CorePlan> plan, SceneOptions options) {
        return of(yard, zones, Shown.of(plan), options);
    }

    /**
     * The map of a yard with what was found.
     *
     * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it; turf in no zone is not drawn
     */
    public static Scene of(Yard yard, List<Zone> zones, Shown shown, SceneOptions options) {
        Optional<CorePlan> plan = shown.plan();
        Sketch sketch = new Sketch(options);
        List<CoreSigns.Dot> dots = CoreSigns.dots(yard, plan);
        ground(sketch, yard, zones, shown.shading());
        sketch.on(Layer.HOLES, s -> HoleSigns.draw(s, shown.holes()));
        sketch.on(Layer.STRATA, s -> plan.ifPresent(p -> CoreSigns.strata(s, p, zones)));
        sketch.on(Layer.WALK, s -> plan.ifPresent(p -> WalkSigns.walks(s, p, dots)));
        sketch.on(Layer.SPARES, s -> CoreSigns.spares(s, dots, CoreSigns.SPARE_MM));
        sketch.on(Layer.CORES, s -> CoreSigns.cores(s, dots, CoreSigns.CORE_MM));
        sketch.on(Layer.START, s -> WalkSigns.starts(s, yard));
        return sketch.scene();
    }

    /** Everything that is there, and amounts by colour on it. */
    private static void ground(Sketch sketch, Yard yard, List<Zone> zones, Optional<Shading> shading) {
        sketch.on(Layer.BOUNDARY, s -> GroundSigns.lot(s, yard));
        sketch.on(Layer.TURF, s -> GroundSigns.turf(s, zones));
        sketch.on(Layer.COVERS, s -> GroundSigns.covers(s, yard));
        sketch.on(Layer.BUILDINGS, s -> GroundSigns.buildings(s, yard));
        sketch.on(Layer.RASTER, s -> shading.ifPresent(amounts -> s.add(Layer.RASTER, amounts.mark(s.options()))));
        sketch.on(Layer.THROWS, s -> HeadSigns.throwsOf(s, yard));
        sketch.on(Layer.HEADS, s -> HeadSigns.draw(s, yard));
        sketch.on(Layer.BARRIERS, s -> BarrierSigns.draw(s, yard));
        sketch.on(Layer.TREES, s -> TreeSigns.draw(s, yard));
        sketch.on(Layer.SPOTS, s -> SpotSigns.keepAways(s, yard));
        sketch.on(Layer.SPOTS, s -> SpotSigns.troubles(s, yard));
    }

    /** The map of a cup test: cups in the place of cores, and the throws of the valve that was tested. */
    public static Scene of(Yard yard, List<Zone> zones, CupMap cups, SceneOptions options) {
        Sketch sketch = new Sketch(options);
        ground(sketch, yard, zones, Optional.empty());
        sketch.on(Layer.STRATA, s -> CupSigns.washes(s, cups));
        HeadSigns.throwsOf(sketch, only(yard, cups.valve()));
        sketch.on(Layer.CORES, s -> CupSigns.cups(s, cups));
        sketch.on(Layer.START, s -> CupSigns.suspects(s, cups));
        return sketch.scene();
    }

    private static Yard only(Yard yard, String valve) {
        return yard.withFeatures(yard.features().stream()
                .filter(feature -> feature instanceof Head head && head.valve().equals(valve))
                .toList());
    }
}
