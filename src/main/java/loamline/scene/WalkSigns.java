package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Walk;
import loamline.yard.Gate;
import loamline.yard.Yard;

/** The walk: a line with small open chevrons in the direction of the walk, and a pennant where it starts. */
final class WalkSigns {
    private static final double LINE_MM = 0.4;
    private static final double CASING_MM = 1.1;
    private static final double CASING_OPACITY = 0.65;
    private static final double CHEVRON_EVERY_MM = 20;
    private static final double SHORTEST_LEG_MM = 5;
    private static final double CHEVRON_MM = 1.0;
    /** Where in its part of a leg a chevron goes, the best first. */
    private static final List<Double> SHARES = List.of(0.5, 0.35, 0.65, 0.2, 0.8);
    /** Chevrons nearer than this to each other look like a cross. */
    private static final double APART_MM = 2.6;
    /** What a label pays for a bit of the walk that it covers. */
    private static final double PRICE = 0.12;

    private static final double POLE_MM = 5.2;
    private static final double FOOT_MM = 0.8;
    private static final int START_RANK = 1;
    private static final Path CHEVRON =
            Path.open(new Point(-CHEVRON_MM, -CHEVRON_MM), new Point(0, 0), new Point(-CHEVRON_MM, CHEVRON_MM));

    private WalkSigns() {}

    static void walks(Sketch sketch, CorePlan plan, List<CoreSigns.Dot> dots) {
        for (Walk walk : plan.walks()) {
            Path line = Path.of(List.of(walk.path()));
            Ink casing = sketch.ink(Role.PANEL).at(CASING_OPACITY);
            sketch.draw(Layer.WALK, line, Paint.line(Pen.solid(casing, CASING_MM)));
        }
        List<Point> placed = new ArrayList<>();
        for (Walk walk : plan.walks()) {
            sketch.draw(Layer.WALK, Path.of(List.of(walk.path())), Paint.line(sketch.pen(Role.INK, LINE_MM)));
            chevrons(sketch, walk.path(), dots, placed);
            sketch.avoid(walk.path(), PRICE);
        }
    }

    /**
     * On every leg that is long enough, evenly, clear of the cores.
     *
     * @param placed where chevrons are already; those of a way back along the same line step aside
     */
    private static void chevrons(Sketch sketch, Polyline path, List<CoreSigns.Dot> dots, List<Point> placed) {
        View view = sketch.view();
        Paint paint = Paint.line(sketch.pen(Role.INK, LINE_MM));
        List<Point> turns = path.points();
        for (int i = 1; i < turns.size(); i++) {
            Point from = turns.get(i - 1);
            Point to = turns.get(i);
            double legMm = from.distanceTo(to) / view.metresPerMm();
            long count = legMm < SHORTEST_LEG_MM ? 0 : Math.max(1, Math.round(legMm / CHEVRON_EVERY_MM));
            for (long k = 0; k < count; k++) {
                long part = k;
                SHARES.stream()
                        .map(share -> from.towards(to, (part + share) / count))
                        .filter(at -> isFree(at, dots, placed, view))
                        .findFirst()
                        .ifPresent(at -> {
                            sketch.add(
                                    Layer.WALK,
                                    new Mark.Stamp(at, Heading.from(from, to).turn(CHEVRON), paint));
                            placed.add(at);
                        });
            }
        }
    }

    private static boolean isFree(Point at, List<CoreSigns.Dot> dots, List<Point> placed, View view) {
        return !CoreSigns.touchesCore(at, CHEVRON_MM, dots, view)
                && placed.stream().noneMatch(other -> other.distanceTo(at) < view.metres(APART_MM));
    }

    static void starts(Sketch sketch, Yard yard) {
        Ink accent = sketch.ink(Role.ACCENT);
        PaperRect room = new PaperRect(-FOOT_MM, -POLE_MM, 4.2, POLE_MM + FOOT_MM);
        yard.all(Gate.class).forEach(gate -> {
            Path pole = Path.open(new Point(0, 0), new Point(0, -POLE_MM));
            Path flag =
                    Path.closed(new Point(0, -POLE_MM), new Point(3.2, -POLE_MM + 1.3), new Point(0, -POLE_MM + 2.6));
            Path foot = Path.circle(new Point(0, 0), FOOT_MM);
            sketch.add(Layer.START, new Mark.Stamp(gate.at(), pole, Paint.line(Pen.solid(accent, LINE_MM))));
            sketch.add(Layer.START, new Mark.Stamp(gate.at(), flag, Paint.both(accent, Pen.solid(accent, LINE_MM))));
            sketch.add(
                    Layer.START,
                    new Mark.Stamp(gate.at(), foot, Paint.both(sketch.ink(Role.PANEL), Pen.solid(accent, LINE_MM))));
            sketch.block(gate.at(), room);
            Point mm = sketch.view().onPaper(gate.at());
            Label.Line start = new Label.Line("Start", Type.bold(7.5), accent);
            PaperRect words = Label.room(List.of(start), mm, sketch.options().text());
            sketch.label(new Label(
                    START_RANK,
                    Label.oneLine(start),
                    Places.beside(room.moved(mm.x(), mm.y()), words),
                    Label.Home.ANYWHERE));
        });
    }
}
