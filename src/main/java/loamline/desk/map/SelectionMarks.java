package loamline.desk.map;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.tool.Guide;
import loamline.desk.tool.Guide.Style;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.sampling.CorePlan;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Tree;

/** The halo round what is selected: along its outline, round its crown or its sign. */
final class SelectionMarks {
    /** Radius of the ring round a sign, logical pixels. */
    private static final double RING_PX = 15;

    private SelectionMarks() {}

    /** @param plan the cores that are shown */
    static List<Guide> of(Results results, List<CorePlan> plan, Selection selection, double metresPerPx) {
        double ringM = RING_PX * metresPerPx;
        List<Guide> marks = new ArrayList<>();
        selection.keys().stream()
                .flatMap(key -> results.yard().feature(key).stream())
                .flatMap(feature -> of(feature, ringM))
                .forEach(marks::add);
        plan.stream()
                .flatMap(p -> p.cores().stream())
                .filter(core -> core.id().equals(selection.core()))
                .forEach(core -> marks.add(ring(core.at(), ringM)));
        results.zones().stream()
                .filter(zone -> zone.name().equals(selection.zone()))
                .flatMap(zone -> lines(zone.net().outline()))
                .forEach(marks::add);
        return marks;
    }

    private static Stream<Guide> of(Feature feature, double ringM) {
        if (feature instanceof Tree tree) {
            return Stream.of(ring(tree.at(), Math.max(ringM, tree.crownRadiusM().orElse(0))));
        }
        if (feature instanceof Head head) {
            return Stream.of(ring(head.at(), ringM));
        }
        if (feature instanceof KeepAway spot && spot.place() instanceof Point at) {
            return Stream.of(ring(at, Math.max(ringM, spot.radiusM())));
        }
        return feature.shape().stream().flatMap(shape -> of(shape, ringM));
    }

    private static Stream<Guide> of(Shape shape, double ringM) {
        if (shape instanceof Point at) {
            return Stream.of(ring(at, ringM));
        }
        return shape instanceof Polyline line
                ? Stream.of(new Guide.Line(line.points(), false, Style.SELECTED))
                : lines((Outline) shape);
    }

    private static Stream<Guide> lines(Outline outline) {
        return outline.rings().map(ring -> new Guide.Line(ring, true, Style.SELECTED));
    }

    private static Guide ring(Point at, double radiusM) {
        return new Guide.Circle(at, radiusM, Style.SELECTED);
    }
}
