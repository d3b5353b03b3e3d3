package loamline.sheets;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.Layer;
import loamline.scene.Legend;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.scene.Run;
import loamline.scene.SceneOptions;
import loamline.scene.Shown;
import loamline.scene.Type;
import loamline.scene.View;
import loamline.scene.YardScene;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * A map of amounts by colour: an image with a line over it that says what they are and what they are not, or a page.
 *
 * @param zones the yard's turf, as {@link loamline.yard.Zones#of} gives it
 * @param title such as {@code Water}
 * @param what the amounts are, as a clause
 * @param caution what they are not, as a sentence
 * @param layers what the map consists of
 */
record AmountMap(
        Yard yard,
        List<Zone> zones,
        Shown shown,
        String title,
        String what,
        String caution,
        Set<Layer> layers,
        SheetOptions options) {
    private static final double IMAGE_DPI = 200;
    private static final double FRAME_MM = 4;
    private static final double TITLE_MM = 9;
    private static final Type TITLE = Type.bold(11);
    private static final Type CAUTION = Type.regular(7.5);
    /** A yard without anything in it is shown as this much ground, m. */
    private static final Box NOTHING = new Box(-5, -5, 5, 5);

    AmountMap {
        zones = List.copyOf(zones);
        layers = Set.copyOf(layers);
    }

    /** The map as a PNG of 200 pixels to the inch, a margin round it. */
    byte[] png() {
        Fonts fonts = new Fonts();
        MapFit fit = fit(fonts, AmountMap::underTitle);
        MapBlock map = map(fit, fonts);
        PaperRect room = fit.place().frame();
        ImagePainter painter =
                new ImagePainter(fonts, IMAGE_DPI, options.palette().of(Role.PAPER));
        PaperRect framed =
                new PaperRect(0, 0, room.widthMm() + 2 * FRAME_MM, room.heightMm() + TITLE_MM + 2 * FRAME_MM);
        PaperRect below = new PaperRect(FRAME_MM, FRAME_MM + TITLE_MM, room.widthMm(), room.heightMm());
        return painter.png(painter.image(framed, canvas -> {
            title(canvas);
            map.draw(canvas, below);
        }));
    }

    /** The map as a page for a {@link Book}. */
    Page page(Fonts fonts) {
        MapFit fit = fit(fonts, Page::body);
        return new Page(
                fit.place().paper(),
                what,
                caution,
                List.of(new Page.Placed(map(fit, fonts), fit.place().frame())));
    }

    private MapBlock map(MapFit fit, Fonts fonts) {
        return new MapBlock(
                YardScene.of(yard, zones, shown, sceneOptions(fit.view(), fonts)),
                fit.denominator(),
                fit.place().furniture());
    }

    private void title(Canvas canvas) {
        String name = yard.name().isBlank() ? title : yard.name() + ": " + title.toLowerCase(Locale.ROOT);
        canvas.write(Run.plain(
                new Point(FRAME_MM, FRAME_MM + 3.2),
                name,
                TITLE,
                options.palette().of(Role.INK)));
        canvas.write(Run.plain(
                new Point(FRAME_MM, FRAME_MM + 7.2),
                what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1) + ". " + caution,
                CAUTION,
                options.palette().of(Role.SOFT)));
    }

    /** Upright before on its side, furniture below the map before beside it: the first of the largest scale. */
    private MapFit fit(Fonts fonts, UnaryOperator<PaperRect> room) {
        SceneOptions any = sceneOptions(new View(NOTHING, 1), fonts);
        List<Legend.Entry> legend = Legend.ofAmounts(yard, shown, any);
        return MapFit.largest(
                yard.box().orElse(NOTHING),
                Stream.of(options.paper().upright(), options.paper().onItsSide())
                        .flatMap(paper -> Stream.of(false, true)
                                .map(beside -> new MapFit.Place(
                                        paper, room.apply(paper), new Furniture(legend, any, beside)))));
    }

    private static PaperRect underTitle(PaperRect paper) {
        PaperRect body = Page.body(paper);
        return new PaperRect(body.leftMm(), body.topMm() + TITLE_MM, body.widthMm(), body.heightMm() - TITLE_MM);
    }

    private SceneOptions sceneOptions(View view, Fonts fonts) {
        return SceneOptions.usual(view, fonts)
                .with(options.palette())
                .with(options.units())
                .with(layers);
    }
}
