package loamline.sheets;

import java.util.List;
import loamline.geometry.Box;
import loamline.scene.Legend;
import loamline.scene.PaperRect;
import loamline.scene.Scene;
import loamline.scene.SceneOptions;

/** A page of a row of tiles over a map. */
final class TiledMap {
    static final double GAP_MM = 1.6;

    private TiledMap() {}

    /** The room for the map. */
    static PaperRect room(PaperRect paper) {
        PaperRect body = Page.body(paper);
        double tilesMm = Tile.HEIGHT_MM + GAP_MM;
        return new PaperRect(body.leftMm(), body.topMm() + tilesMm, body.widthMm(), body.heightMm() - tilesMm);
    }

    /** The largest scale at which the ground fits into that room. */
    static MapFit fit(Box ground, Paper paper, List<Legend.Entry> legend, SceneOptions any) {
        return MapFit.onPaper(ground, paper, TiledMap::room, legend, any);
    }

    static Page page(MapFit fit, Scene scene, String title, String caution, Block tiles) {
        PaperRect paper = fit.place().paper();
        PaperRect body = Page.body(paper);
        PaperRect row = new PaperRect(body.leftMm(), body.topMm(), body.widthMm(), Tile.HEIGHT_MM);
        MapBlock map = new MapBlock(scene, fit.denominator(), fit.place().furniture());
        return new Page(paper, title, caution, List.of(new Page.Placed(tiles, row), new Page.Placed(map, room(paper))));
    }
}
