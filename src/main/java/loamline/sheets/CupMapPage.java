package loamline.sheets;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.scene.CupLegend;
import loamline.scene.CupMap;
import loamline.scene.Layer;
import loamline.scene.Legend;
import loamline.scene.SceneOptions;
import loamline.scene.Shading;
import loamline.scene.Shown;
import loamline.scene.View;
import loamline.scene.YardScene;
import loamline.yard.Head;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * The map of a cup test on one page: the ground of the valve, as large as it goes, under a row of tiles.
 *
 * @param measured rates between the cups
 */
record CupMapPage(
        Yard yard, List<Zone> zones, CupMap cups, Optional<Shading> measured, SheetOptions options, Blocks blocks) {
    /** A yard without anything in it is shown as this much ground, m. */
    private static final Box NOTHING = new Box(-5, -5, 5, 5);

    /** Trees, walls of text and keep-aways would hide the cups. */
    private static final Set<Layer> LAYERS = EnumSet.of(
            Layer.BOUNDARY,
            Layer.TURF,
            Layer.COVERS,
            Layer.BUILDINGS,
            Layer.RASTER,
            Layer.HEADS,
            Layer.BARRIERS,
            Layer.SPOTS,
            Layer.CUPS,
            Layer.LABELS);

    /** Ground shown round cups and heads, m. */
    private static final double ROUND_M = 2;

    Page page(String title, String caution, List<Block> tiles) {
        MapFit fit = fit();
        return TiledMap.page(
                fit,
                YardScene.of(yard, zones, Shown.of(cups, measured), sceneOptions(fit.view())),
                title,
                caution,
                Blocks.row(Tile.GAP_MM, tiles));
    }

    private MapFit fit() {
        List<Legend.Entry> legend = CupLegend.of(yard, cups, measured, sceneOptions(new View(NOTHING, 1)));
        SceneOptions any = sceneOptions(new View(NOTHING, 1));
        return TiledMap.fit(ground(), options.paper(), legend, any);
    }

    private Box ground() {
        Stream<Point> throwing = yard.all(Head.class)
                .filter(head -> head.valve().equals(cups.valve()))
                .map(Head::at);
        Stream<Point> standing = cups.cups().stream().map(CupMap.Cup::at);
        Box wanted =
                Box.around(Stream.concat(throwing, standing)).orElse(NOTHING).grown(ROUND_M);
        return yard.box()
                .filter(lot -> lot.minX() < wanted.maxX()
                        && lot.maxX() > wanted.minX()
                        && lot.minY() < wanted.maxY()
                        && lot.maxY() > wanted.minY())
                .map(lot -> new Box(
                        Math.max(lot.minX(), wanted.minX()),
                        Math.max(lot.minY(), wanted.minY()),
                        Math.min(lot.maxX(), wanted.maxX()),
                        Math.min(lot.maxY(), wanted.maxY())))
                .orElse(wanted);
    }

    private SceneOptions sceneOptions(View view) {
        return SceneOptions.usual(view, blocks.text())
                .with(options.palette())
                .with(options.units())
                .with(LAYERS);
    }
}
