package loamline.sheets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loamline.findings.Findings;
import loamline.findings.LoggedCore;
import loamline.findings.Quantity;
import loamline.findings.Surface;
import loamline.geometry.Box;
import loamline.raster.Grid;
import loamline.sampling.CorePlan;
import loamline.scene.CoreState;
import loamline.scene.Layer;
import loamline.scene.Legend;
import loamline.scene.Ramp;
import loamline.scene.SceneOptions;
import loamline.scene.Shading;
import loamline.scene.Shown;
import loamline.scene.View;
import loamline.scene.YardScene;
import loamline.units.Measure;
import loamline.yard.Yard;
import loamline.yard.Zone;

/** The map of the findings: cores as logged, trouble spots, the clearest reading in colour. */
record FindingsMapPage(
        Yard yard, List<Zone> zones, CorePlan plan, Findings findings, SheetOptions options, Blocks blocks) {
    /** A yard without anything in it is shown as this much ground, m. */
    private static final Box NOTHING = new Box(-5, -5, 5, 5);

    /** White in the colours, so that numbers are legible on them. */
    private static final double WHITE = 0.45;

    private static final Set<Layer> LAYERS = EnumSet.complementOf(
            EnumSet.of(Layer.THROWS, Layer.WALK, Layer.STRATA, Layer.HEADS, Layer.START, Layer.CUPS));

    Page page(String title, String caution, List<Block> tiles) {
        Optional<Shading> shading = findings.clearestSurface().flatMap(this::shading);
        MapFit fit = fit(shading);
        SceneOptions drawn = sceneOptions(fit.view());
        return TiledMap.page(
                fit, YardScene.of(yard, zones, shown(shading), drawn), title, caution, Blocks.row(Tile.GAP_MM, tiles));
    }

    private Shown shown(Optional<Shading> shading) {
        return new Shown(Optional.of(logged()), shading, List.of(), Optional.empty(), List.of());
    }

    /** The plan with the spares that were used; the others tell nothing here. */
    private CorePlan logged() {
        Set<String> seen = findings.cores().stream().map(LoggedCore::id).collect(Collectors.toSet());
        return new CorePlan(
                plan.seed(),
                plan.composites(),
                plan.cores().stream()
                        .filter(core -> core.spareOf().isEmpty() || seen.contains(core.id()))
                        .toList(),
                List.of(),
                List.of(),
                List.of(),
                Map.of());
    }

    private Optional<Shading> shading(Surface surface) {
        Quantity quantity = surface.quantity();
        Measure measure = quantity.measure().orElse(Measure.PERCENT);
        double factor = quantity.measure().isPresent() ? quantity.perStored() : 1.0 / 100;
        boolean shown = quantity.measure().isPresent() || quantity == Quantity.VWC;
        return surface.values()
                .filter(grid -> shown)
                .map(grid -> Shading.of(scaled(grid, factor), Ramp.CIVIDIS.lighter(WHITE), measure, options.units()));
    }

    private static Grid scaled(Grid grid, double factor) {
        return Grid.of(grid.spec(), values -> {
            for (int i = 0; i < values.length; i++) {
                values[i] = grid.at(i) * factor;
            }
        });
    }

    private MapFit fit(Optional<Shading> shading) {
        SceneOptions any = sceneOptions(new View(NOTHING, 1));
        List<Legend.Entry> legend = new ArrayList<>();
        shading.ifPresent(s -> legend.addAll(s.legend(any)));
        legend.addAll(Legend.of(yard, Optional.of(logged()), any));
        return TiledMap.fit(yard.box().orElse(NOTHING), options.paper(), legend, any);
    }

    private SceneOptions sceneOptions(View view) {
        Map<String, CoreState> states = findings.cores().stream()
                .collect(Collectors.toMap(
                        LoggedCore::id, core -> core.isRefused() ? CoreState.REFUSED : CoreState.LOGGED));
        SceneOptions usual = SceneOptions.usual(view, blocks.text())
                .with(options.palette())
                .with(options.units())
                .with(LAYERS);
        return new SceneOptions(
                usual.view(), usual.layers(), usual.palette(), usual.units(), usual.text(), states, usual.wash());
    }
}
