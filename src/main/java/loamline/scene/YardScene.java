package loamline.scene;

import java.util.List;
import java.util.Optional;
import loamline.sampling.CorePlan;
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
        List<CoreSigns.Dot> dots = shown.cups().isPresent() ? List.of() : CoreSigns.dots(yard, plan);
        sketch.on(Layer.BOUNDARY, s -> GroundSigns.lot(s, yard));
        sketch.on(Layer.TURF, s -> GroundSigns.turf(s, zones));
        sketch.on(Layer.COVERS, s -> GroundSigns.covers(s, yard));
        sketch.on(Layer.BUILDINGS, s -> GroundSigns.buildings(s, yard));
        sketch.on(
                Layer.RASTER,
                s -> shown.shading().ifPresent(shading -> s.add(Layer.RASTER, shading.mark(s.options()))));
        sketch.on(Layer.GLARE, s -> PanelSigns.glare(s, shown.glare()));
        sketch.on(Layer.THROWS, s -> HeadSigns.throwsOf(s, Layer.THROWS, yard));
        sketch.on(Layer.HEADS, s -> HeadSigns.draw(s, yard, shown.shading().isPresent()));
        sketch.on(Layer.BARRIERS, s -> BarrierSigns.draw(s, yard));
        sketch.on(Layer.BARRIERS, s -> PanelSigns.draw(s, yard));
        sketch.on(Layer.TREES, s -> TreeSigns.draw(s, yard));
        sketch.on(Layer.SPOTS, s -> SpotSigns.keepAways(s, yard));
        sketch.on(Layer.SPOTS, s -> SpotSigns.troubles(s, yard));
        sketch.on(Layer.HOLES, s -> HoleSigns.draw(s, shown.holes()));
        sketch.on(Layer.STRATA, s -> plan.ifPresent(p -> CoreSigns.strata(s, p, zones)));
        sketch.on(Layer.WALK, s -> plan.ifPresent(p -> WalkSigns.walks(s, p, dots)));
        sketch.on(Layer.SPARES, s -> CoreSigns.spares(s, dots, CoreSigns.SPARE_MM));
        sketch.on(Layer.CORES, s -> CoreSigns.cores(s, dots, CoreSigns.CORE_MM));
        sketch.on(Layer.START, s -> WalkSigns.starts(s, yard));
        shown.cups().ifPresent(cups -> sketch.on(Layer.CUPS, s -> CupSigns.draw(s, yard, cups)));
        return sketch.scene();
    }
}
