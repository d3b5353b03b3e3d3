package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.Legend;
import loamline.scene.Mark;
import loamline.scene.NorthArrow;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.scene.Run;
import loamline.scene.ScaleBar;
import loamline.scene.Scene;
import loamline.scene.SceneOptions;
import loamline.scene.Type;

/**
 * A map over a strip with scale, legend and north.
 *
 * @param scene the map
 * @param denominator of its scale
 * @param legend what its signs mean
 * @param options how it was drawn
 */
record MapBlock(Scene scene, int denominator, List<Legend.Entry> legend, SceneOptions options) implements Block {
    private static final double BAR_MM = 42;
    private static final double BAR_ROOM_MM = 56;
    private static final double NORTH_ROOM_MM = 8;
    private static final double ROW_MM = 5;
    private static final double GAP_MM = 2.5;
    private static final double LEAST_STRIP_MM = NorthArrow.HEIGHT_MM + 0.6;
    private static final Type WORDS = Type.regular(6.8);
    private static final Type RATIO = Type.bold(9);

    /** Height of the strip under a map of a width. */
    static double stripMm(List<Legend.Entry> legend, double widthMm, SceneOptions options) {
        List<PaperRect> places = places(legend, widthMm, options);
        double legendMm = places.isEmpty() ? 0 : places.get(places.size() - 1).bottomMm();
        return Math.max(LEAST_STRIP_MM, legendMm);
    }

    @Override
    public double heightMm(double widthMm) {
        return scene.view().paper().heightMm() + stripMm(legend, widthMm, options);
    }

    @Override
    public void draw(Canvas canvas, PaperRect room) {
        scene.paint(canvas, room.corner());
        double top = room.topMm() + scene.view().paper().heightMm();
        PaperRect strip = new PaperRect(room.leftMm(), top, room.widthMm(), room.bottomMm() - top);
        drawScale(canvas, strip);
        drawLegend(canvas, strip);
        paint(NorthArrow.marks(here(), options), canvas, new Point(strip.rightMm() - 3, strip.bottomMm() - 0.2));
    }

    private void drawScale(Canvas canvas, PaperRect strip) {
        Point left = new Point(strip.leftMm() + 1.5, strip.bottomMm() - 0.4);
        ScaleBar bar = ScaleBar.of(scene.view(), options.units(), BAR_MM);
        paint(bar.marks(here(), options), canvas, left);
        Point ratio = new Point(strip.leftMm() + 0.5, strip.bottomMm() - 6.4);
        canvas.write(
                Run.plain(ratio, "1:" + denominator, RATIO, options.palette().of(Role.INK)));
    }

    private void drawLegend(Canvas canvas, PaperRect strip) {
        List<PaperRect> places = places(legend, strip.widthMm(), options);
        for (int i = 0; i < legend.size(); i++) {
            Point corner = places.get(i).moved(strip.leftMm(), strip.topMm()).corner();
            legend.get(i).sample().paint(canvas, corner);
            double baseline = (Legend.SAMPLE.heightMm() + options.text().capHeightMm(WORDS)) / 2;
            Point at = corner.plus(Legend.SAMPLE.widthMm() + 1, baseline);
            Run run = Run.plain(
                    at, legend.get(i).words(), WORDS, options.palette().of(Role.SOFT));
            canvas.write(run);
        }
    }

    /** Entries in rows, left to right, between bar and north. */
    private static List<PaperRect> places(List<Legend.Entry> legend, double widthMm, SceneOptions options) {
        List<PaperRect> places = new ArrayList<>();
        double left = BAR_ROOM_MM;
        double top = 0;
        for (Legend.Entry entry : legend) {
            double entryMm = Legend.SAMPLE.widthMm() + 1 + options.text().widthMm(entry.words(), WORDS);
            if (left + entryMm > widthMm - NORTH_ROOM_MM && left > BAR_ROOM_MM) {
                left = BAR_ROOM_MM;
                top += ROW_MM;
            }
            places.add(new PaperRect(left, top, entryMm, Legend.SAMPLE.heightMm()));
            left += entryMm + GAP_MM;
        }
        return places;
    }

    private Point here() {
        return scene.view().onGround(new Point(0, 0));
    }

    private void paint(List<Mark> marks, Canvas canvas, Point corner) {
        marks.forEach(mark -> Scene.paint(mark, scene.view(), canvas, corner));
    }
}
