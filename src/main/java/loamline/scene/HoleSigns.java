package loamline.scene;

import java.util.List;
import loamline.geometry.Region;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.water.Gap;

/** Turf that no head reaches: a bold dashed outline with a light wash and its area. */
final class HoleSigns {
    private static final double LINE_MM = 0.55;
    private static final double HALO_MM = 1.1;
    private static final double WASH = 0.18;
    private static final int RANK = 0;

    private HoleSigns() {}

    static void draw(Sketch sketch, List<Gap> holes) {
        for (Gap hole : holes) {
            outline(sketch, hole.ground());
            Label.Line area = new Label.Line(
                    Formatting.format(
                                    Measure.AREA,
                                    hole.areaM2(),
                                    sketch.options().units())
                            .text(),
                    Type.bold(8),
                    sketch.ink(Role.HOLE));
            sketch.label(new Label(
                    RANK,
                    List.of(new Label.Form(List.of(area), 0)),
                    Places.on(hole.ground(), sketch.view()),
                    mm -> hole.ground().covers(sketch.view().onGround(mm))));
        }
    }

    /** The sign without its area; a halo under the dashes sets them off from any colour. */
    static void outline(Sketch sketch, Region ground) {
        sketch.draw(Layer.HOLES, ground, Paint.fill(sketch.ink(Role.HOLE).at(WASH)));
        sketch.draw(Layer.HOLES, ground, Paint.line(sketch.pen(Role.PANEL, HALO_MM)));
        sketch.draw(Layer.HOLES, ground, Paint.line(Pen.dashed(sketch.ink(Role.HOLE), LINE_MM, 1.8, 0.9)));
    }
}
