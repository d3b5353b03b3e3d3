package loamline.desk.tool;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Cover;
import loamline.yard.Extras;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Tree;
import loamline.yard.Turf;
import loamline.yard.Unknown;
import loamline.yard.Yard;

/** One thing of each sort: the lot, a lawn with a hole, a bed of two parts, a fence, a head, a tree, a spot. */
final class SmallYard {
    static final Boundary LOT = new Boundary("lot", "", square(0, 0, 30, 30), Extras.NONE);
    static final Turf LAWN = new Turf(
            "lawn",
            "Back lawn",
            "",
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            new Outline(List.of(new Outline.Part(
                    square(2, 2, 12, 12).vertices().toList(),
                    List.of(Outline.of(8, 8, 10, 8, 10, 10).vertices().toList())))),
            Extras.NONE);
    static final Cover BED = new Cover(
            "bed",
            Kind.BED,
            "",
            new Outline(List.of(
                    square(14, 2, 16, 4).parts().get(0),
                    square(18, 2, 20, 4).parts().get(0))),
            Extras.NONE);
    static final Barrier FENCE = new Barrier(
            "fence",
            Kind.FENCE,
            1.8,
            List.of(new Barrier.Opening(4, 1)),
            true,
            new Polyline(List.of(new Point(2, 20), new Point(12, 20), new Point(12, 28))),
            Extras.NONE);
    static final Head HEAD = new Head(
            "head",
            "h3",
            "1",
            Optional.of(HeadClass.SPRAY),
            OptionalDouble.of(3),
            0,
            90,
            OptionalDouble.empty(),
            Head.DEFAULT_PROFILE,
            0,
            new Point(4, 4),
            Extras.NONE);
    static final Tree TREE = new Tree(
            "tree",
            OptionalDouble.of(2),
            OptionalDouble.of(5),
            0.2,
            false,
            0.1,
            OptionalDouble.empty(),
            false,
            new Point(25, 25),
            Extras.NONE);
    static final KeepAway SPOT = new KeepAway("spot", 1, "", new Point(25, 5), Extras.NONE);
    static final Unknown ODD = new Unknown("odd", new Extras(Map.of("type", "Feature")));

    static final Yard YARD =
            Yard.empty("small", Frame.local()).withFeatures(List.of(LOT, LAWN, BED, FENCE, HEAD, TREE, SPOT, ODD));

    private SmallYard() {}

    private static Outline square(double x0, double y0, double x1, double y1) {
        return Outline.of(x0, y0, x1, y0, x1, y1, x0, y1);
    }
}
