package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.yard.Head;
import loamline.yard.Yard;

/** Heads: a dot and a thin wedge for the arc, the valve in the wedge; the throw to scale in a layer of its own. */
final class HeadSigns {
    private static final double DOT_MM = 0.65;
    private static final double WEDGE_MM = 3.9;
    private static final double WEDGE_OPACITY = 0.16;
    private static final double GROUND_OPACITY = 0.7;
    private static final double WEDGE_LINE_MM = 0.2;
    private static final double VALVE_PT = 5.5;
    /** The valve stands this far out from the head. */
    private static final double VALVE_AT_MM = 2.4;
    /** A valve's name that takes more room does not fit the wedge. */
    private static final double VALVE_WIDTH_MM = 3;

    private static final double PRICE = 0.2;
    private static final double THROW_LINE_MM = 0.2;
    private static final double STEP_DEG = 4;
    private static final double FULL_TURN_DEG = 360;

    private HeadSigns() {}

    /** @param onColours whether the ground is coloured, so that the signs need a ground of their own */
    static void draw(Sketch sketch, Yard yard, boolean onColours) {
        yard.all(Head.class).forEach(head -> {
            Paint wedge = Paint.both(sketch.ink(Role.INFO).at(WEDGE_OPACITY), sketch.pen(Role.INFO, WEDGE_LINE_MM));
            Path arc = sector(head, WEDGE_MM).map(p -> new Point(p.x(), -p.y()));
            if (onColours) {
                Paint ground = Paint.fill(sketch.ink(Role.PANEL).at(GROUND_OPACITY));
                sketch.add(Layer.HEADS, new Mark.Stamp(head.at(), arc, ground));
            }
            sketch.add(Layer.HEADS, new Mark.Stamp(head.at(), arc, wedge));
            sketch.add(
                    Layer.HEADS,
                    new Mark.Stamp(head.at(), Path.circle(new Point(0, 0), DOT_MM), Paint.fill(sketch.ink(Role.INFO))));
            Point middle = bearing(head.arcStartDeg() + head.arcSweepDeg() / 2, VALVE_AT_MM);
            valve(sketch, head, new Point(middle.x(), -middle.y()));
            sketch.avoid(head.at(), WEDGE_MM, PRICE);
        });
    }

    private static void valve(Sketch sketch, Head head, Point middleMm) {
        Label.Line line = new Label.Line(head.valve(), Type.bold(VALVE_PT), sketch.ink(Role.INFO));
        double widthMm = sketch.options().text().widthMm(line.words(), line.type());
        if (widthMm > 0 && widthMm <= VALVE_WIDTH_MM) {
            sketch.write(Layer.HEADS, head.at(), middleMm, line);
        }
    }

    static void throwsOf(Sketch sketch, Layer layer, Yard yard) {
        Pen pen = Pen.dashed(sketch.ink(Role.INFO), THROW_LINE_MM, 1.2, 0.8);
        yard.all(Head.class)
                .filter(head -> head.radiusM().isPresent())
                .forEach(head -> sketch.draw(
                        layer,
                        sector(head, head.radiusM().getAsDouble())
                                .map(p -> p.plus(head.at().x(), head.at().y())),
                        Paint.line(pen)));
    }

    /** The arc round the origin, y to the north: a pie slice, or a circle for a full turn. */
    private static Path sector(Head head, double radius) {
        if (head.arcSweepDeg() >= FULL_TURN_DEG) {
            return Path.circle(new Point(0, 0), radius);
        }
        List<Point> corners = new ArrayList<>(List.of(new Point(0, 0)));
        int steps = (int) Math.max(1, Math.ceil(head.arcSweepDeg() / STEP_DEG)); // an arc of 0 is drawn as a line
        for (int i = 0; i <= steps; i++) {
            corners.add(bearing(head.arcStartDeg() + head.arcSweepDeg() * i / steps, radius));
        }
        return Path.closed(corners.toArray(Point[]::new));
    }

    /** A point at an azimuth clockwise from north. */
    private static Point bearing(double azimuthDeg, double radius) {
        double azimuth = Math.toRadians(azimuthDeg);
        return new Point(radius * Math.sin(azimuth), radius * Math.cos(azimuth));
    }
}
