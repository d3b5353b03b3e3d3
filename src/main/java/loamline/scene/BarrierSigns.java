package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.yard.Barrier;
import loamline.yard.Kind;
import loamline.yard.Yard;

/** Fences as a line with ticks, walls as a double line, gates as gaps between two posts. */
final class BarrierSigns {
    private static final double FENCE_MM = 0.35;
    private static final double TICK_MM = 0.22;
    private static final double TICK_HALF_MM = 0.7;
    private static final double TICK_EVERY_MM = 3.2;
    private static final double WALL_MM = 1.1;
    private static final double WALL_INSIDE_MM = 0.55;
    private static final double PRICE = 0.06;
    private static final double POST_MM = 0.8;
    private static final double POST_HALF_MM = 1.2;

    private BarrierSigns() {}

    static void draw(Sketch sketch, Yard yard) {
        yard.all(Barrier.class).forEach(barrier -> {
            Path line = Path.of(barrier.closedStretches());
            if (barrier.barrier() == Kind.WALL) {
                sketch.draw(Layer.BARRIERS, line, Paint.line(sketch.pen(Role.BARRIER, WALL_MM)));
                sketch.draw(Layer.BARRIERS, line, Paint.line(sketch.pen(Role.PANEL, WALL_INSIDE_MM)));
            } else {
                sketch.draw(Layer.BARRIERS, line, Paint.line(sketch.pen(Role.BARRIER, FENCE_MM)));
                sketch.draw(
                        Layer.BARRIERS,
                        Path.of(ticks(barrier.closedStretches(), sketch.view())),
                        Paint.line(sketch.pen(Role.BARRIER, TICK_MM)));
            }
            barrier.closedStretches().forEach(stretch -> sketch.avoid(stretch, PRICE));
            barrier.gates().forEach(gap -> posts(sketch, barrier.line(), gap));
        });
    }

    private static List<Polyline> ticks(List<Polyline> stretches, View view) {
        List<Polyline> ticks = new ArrayList<>();
        double everyM = view.metres(TICK_EVERY_MM);
        double halfM = view.metres(TICK_HALF_MM);
        for (Polyline stretch : stretches) {
            long count = Math.round(stretch.lengthM() / everyM);
            for (long i = 0; i < count; i++) {
                double alongM = (i + 0.5) * stretch.lengthM() / count;
                Point at = stretch.at(alongM);
                Point across = Heading.along(stretch, alongM).left();
                ticks.add(new Polyline(List.of(
                        at.plus(halfM * across.x(), halfM * across.y()),
                        at.plus(-halfM * across.x(), -halfM * across.y()))));
            }
        }
        return ticks;
    }

    private static void posts(Sketch sketch, Polyline line, Barrier.Opening gap) {
        for (double side : new double[] {-0.5, 0.5}) {
            double alongM = gap.atM() + side * gap.widthM();
            Point across = Heading.along(line, alongM).left();
            Point tip = new Point(POST_HALF_MM * across.x(), -POST_HALF_MM * across.y());
            Path post = Path.open(tip, new Point(-tip.x(), -tip.y()));
            Paint paint = Paint.line(sketch.pen(Role.BARRIER, POST_MM));
            sketch.add(Layer.BARRIERS, new Mark.Stamp(line.at(alongM), post, paint));
        }
    }
}
