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
import loamline.scene.View;

/**
 * What goes with a map: scale, legend and north, in a strip below it or beside it.
 *
 * @param legend what its signs mean
 * @param options how it is drawn
 * @param beside whether the strip stands at the right of the map rather than below
 */
record Furniture(List<Legend.Entry> legend, SceneOptions options, boolean beside) {
    private static final double BESIDE_MM = 34;
    private static final double GAP_MM = 2.5;
    private static final double ROW_MM = 5;
    private static final double BAR_BELOW_MM = 42;
    private static final double BAR_BESIDE_MM = 24;
    private static final double SCALE_ROOM_MM = 56;
    private static final double NORTH_ROOM_MM = 9;
    private static final double BOTTOM_MM = 1;
    private static final Type WORDS = Type.regular(6.8);
    private static final Type RATIO = Type.bold(9);

    /** What is left of a frame for the map. */
    PaperRect window(PaperRect frame) {
        PaperRect strip = strip(frame);
        return beside
                ? new PaperRect(
                        frame.leftMm(), frame.topMm(), frame.widthMm() - strip.widthMm() - GAP_MM, frame.heightMm())
                : new PaperRect(frame.leftMm(), frame.topMm(), frame.widthMm(), frame.heightMm() - strip.heightMm());
    }

    private PaperRect strip(PaperRect frame) {
        double widthMm = beside ? BESIDE_MM : frame.widthMm();
        double legendMm =
                places(widthMm).stream().mapToDouble(PaperRect::bottomMm).max().orElse(0);
        double heightMm = beside ? frame.heightMm() : Math.max(NorthArrow.HEIGHT_MM + BOTTOM_MM, legendMm + BOTTOM_MM);
        return new PaperRect(frame.rightMm() - widthMm, frame.bottomMm() - heightMm, widthMm, heightMm);
    }

    /** Draws the strip of a frame. */
    void draw(Canvas canvas, PaperRect frame, View view, int denominator) {
        PaperRect strip = strip(frame);
        Point foot = new Point(strip.leftMm() + 1.5, strip.bottomMm() - BOTTOM_MM);
        ScaleBar bar = ScaleBar.of(view, options.units(), beside ? BAR_BESIDE_MM : BAR_BELOW_MM);
        paint(bar.marks(view.onGround(new Point(0, 0)), options), canvas, foot, view);
        canvas.write(Run.plain(
                foot.plus(-1, -6.2),
                "1:" + denominator,
                RATIO,
                options.palette().of(Role.INK)));
        Point north = new Point(strip.rightMm() - 3.5, strip.bottomMm() - BOTTOM_MM);
        paint(NorthArrow.marks(view.onGround(new Point(0, 0)), options), canvas, north, view);
        double legendTop = beside ? strip.bottomMm() - STAND_MM - ROW_MM * legend.size() : strip.topMm();
        drawLegend(canvas, new Point(strip.leftMm(), legendTop), strip.widthMm());
    }

    /** Room for bar, ratio and north under the legend of a strip beside the map. */
    private static final double STAND_MM = 16;

    private void drawLegend(Canvas canvas, Point corner, double widthMm) {
        List<PaperRect> places = places(widthMm);
        for (int i = 0; i < legend.size(); i++) {
            Point at = places.get(i).moved(corner.x(), corner.y()).corner();
            legend.get(i).sample().paint(canvas, at);
            double baseline = (Legend.SAMPLE.heightMm() + options.text().capHeightMm(WORDS)) / 2;
            Point words = at.plus(Legend.SAMPLE.widthMm() + 1, baseline);
            canvas.write(Run.plain(
                    words, legend.get(i).words(), WORDS, options.palette().of(Role.SOFT)));
        }
    }

    /** Entries one below the other, or in rows between bar and north. */
    private List<PaperRect> places(double widthMm) {
        List<PaperRect> places = new ArrayList<>();
        double first = beside ? 0 : SCALE_ROOM_MM;
        double left = first;
        double top = 0;
        for (Legend.Entry entry : legend) {
            double entryMm = Legend.SAMPLE.widthMm() + 1 + options.text().widthMm(entry.words(), WORDS);
            boolean full = beside || left + entryMm > widthMm - NORTH_ROOM_MM;
            if (full && !places.isEmpty()) {
                left = first;
                top += ROW_MM;
            }
            places.add(new PaperRect(left, top, entryMm, Legend.SAMPLE.heightMm()));
            left += entryMm + GAP_MM;
        }
        return places;
    }

    private static void paint(List<Mark> marks, Canvas canvas, Point corner, View view) {
        marks.forEach(mark -> Scene.paint(mark, view, canvas, corner));
    }
}
