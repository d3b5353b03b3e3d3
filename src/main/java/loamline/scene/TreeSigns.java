package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.yard.Tree;
import loamline.yard.Yard;

/** Trees: a translucent crown with a scalloped edge, and the trunk to scale. */
final class TreeSigns {
    private static final double CROWN_OPACITY = 0.42;
    private static final double EDGE_MM = 0.25;
    private static final double SCALLOP_MM = 2.2;
    private static final int FEWEST_SCALLOPS = 8;
    /** Valleys of the edge lie this share of the radius inside the crown, control points as far outside it. */
    private static final double SCALLOP_DEPTH = 0.05;
    /** A crown of unknown size is drawn with this radius on paper. */
    private static final double UNKNOWN_CROWN_MM = 3;
    /** A trunk is never drawn smaller than this, or it would be lost. */
    private static final double LEAST_TRUNK_MM = 0.45;

    /** Labels avoid a square in the crown, its side so many radii. */
    private static final double CROWN_SQUARE = 1.5;

    private static final double CROWN_PRICE = 0.3;

    private TreeSigns() {}

    static void draw(Sketch sketch, Yard yard) {
        View view = sketch.view();
        yard.all(Tree.class).forEach(tree -> {
            double radiusM = tree.crownRadiusM().orElse(view.metres(UNKNOWN_CROWN_MM));
            double trunkM = Math.max(tree.trunkRadiusM(), view.metres(LEAST_TRUNK_MM));
            Ink crown = sketch.ink(Role.CROWN).at(CROWN_OPACITY);
            sketch.draw(
                    Layer.TREES,
                    crown(tree.at(), radiusM, radiusM / view.metresPerMm()),
                    Paint.both(crown, sketch.pen(Role.CROWN_EDGE, EDGE_MM)));
            sketch.draw(Layer.TREES, Path.circle(tree.at(), trunkM), Paint.fill(sketch.ink(Role.TRUNK)));
            sketch.avoid(tree.at(), CROWN_SQUARE * radiusM / view.metresPerMm(), CROWN_PRICE);
        });
    }

    private static Path crown(Point middle, double radiusM, double radiusMm) {
        long scallops = Math.max(FEWEST_SCALLOPS, Math.round(2 * Math.PI * radiusMm / SCALLOP_MM));
        double turn = 2 * Math.PI / scallops;
        double inner = radiusM * (1 - SCALLOP_DEPTH);
        double outer = radiusM * (1 + SCALLOP_DEPTH);
        List<Path.Step> steps = new ArrayList<>();
        steps.add(new Path.Move(polar(middle, inner, 0)));
        for (int i = 0; i < scallops; i++) {
            steps.add(new Path.Curve(
                    polar(middle, outer, (i + 0.15) * turn),
                    polar(middle, outer, (i + 0.85) * turn),
                    polar(middle, inner, (i + 1) * turn)));
        }
        steps.add(new Path.Close());
        return new Path(steps);
    }

    private static Point polar(Point middle, double radius, double angle) {
        return middle.plus(radius * Math.cos(angle), radius * Math.sin(angle));
    }
}
