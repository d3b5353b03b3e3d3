package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.sun.Glare;
import loamline.yard.Panel;
import loamline.yard.Yard;

/** Panels as a heavy line with rays out of its face, and the ground on which they throw the sun. */
final class PanelSigns {
    private static final double LINE_MM = 0.8;
    private static final double RAY_MM = 0.25;
    private static final double RAY_LENGTH_MM = 1.3;
    private static final double RAY_EVERY_MM = 1.8;
    private static final double PRICE = 0.06;
    private static final double WASH = 0.4;
    private static final double EDGE_MM = 0.4;
    private static final double HATCH_MM = 0.2;
    private static final double HALO_MM = 0.9;
    private static final int RANK = 0;
    private static final double WORD_PT = 8;

    private PanelSigns() {}

    static void draw(Sketch sketch, Yard yard) {
        yard.all(Panel.class).forEach(panel -> {
            List<Polyline> base = List.of(panel.base());
            sketch.draw(Layer.BARRIERS, Path.of(base), Paint.line(sketch.pen(Role.INFO, LINE_MM)));
            sketch.draw(
                    Layer.BARRIERS,
                    Path.of(rays(panel.base(), sketch.view())),
                    Paint.line(sketch.pen(Role.INFO, RAY_MM)));
            sketch.avoid(panel.base(), PRICE);
        });
    }

    private static List<Polyline> rays(Polyline base, View view) {
        List<Polyline> rays = new ArrayList<>();
        long count = Math.max(1, Math.round(base.lengthM() / view.metres(RAY_EVERY_MM)));
        double lengthM = view.metres(RAY_LENGTH_MM);
        for (long i = 0; i < count; i++) {
            double alongM = (i + 0.5) * base.lengthM() / count;
            Point foot = base.at(alongM);
            Point left = Heading.along(base, alongM).left();
            rays.add(new Polyline(List.of(foot, foot.plus(lengthM * left.x(), lengthM * left.y()))));
        }
        return rays;
    }

    /** A bright wash, hatched, in a dashed line, with its word. */
    static void glare(Sketch sketch, List<Glare> thrown) {
        for (Glare glare : thrown) {
            Region ground = Region.of(glare.ground());
            lit(sketch, ground);
            Label.Line word = new Label.Line("glare", Type.bold(WORD_PT), sketch.ink(Role.INK));
            sketch.label(new Label(
                    RANK,
                    List.of(new Label.Form(List.of(word), 0)),
                    Places.on(ground, sketch.view()),
                    Label.Home.ANYWHERE));
        }
    }

    /** The sign without its word; a halo under the dashes sets them off from any colour. */
    static void lit(Sketch sketch, Region ground) {
        sketch.draw(Layer.GLARE, ground, Paint.fill(sketch.ink(Role.SELECT).at(WASH)));
        sketch.draw(Layer.GLARE, ground, Paint.line(sketch.pen(Role.PANEL, HALO_MM)));
        sketch.draw(Layer.GLARE, Patterns.hatch(ground, sketch.view()), Paint.line(sketch.pen(Role.WARN, HATCH_MM)));
        sketch.draw(Layer.GLARE, ground, Paint.line(Pen.dashed(sketch.ink(Role.WARN), EDGE_MM, 1.2, 0.6)));
    }
}
