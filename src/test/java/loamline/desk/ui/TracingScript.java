package loamline.desk.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import loamline.desk.WindowDriver;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Feature;
import loamline.yard.Gate;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Tree;
import loamline.yard.Turf;
import loamline.yard.Yard;

/**
 * What a person does to trace a yard by hand: for each kind one key, then a click a corner and Enter, a drag for a
 * rectangle and for what is round, a click for a gate. Turf is drawn as the whole lot, for it is net of what lies on it.
 *
 * @param yard what is drawn, if every click meets its place
 * @param acts keys and clicks, in order
 */
record TracingScript(Yard yard, List<Act> acts) {
    /** What the hand does not follow: curves are clicked with corners that keep as near. */
    private static final double CURVE_M = 0.2;

    private static final double USUAL_CROWN_M = 2;

    /** What is traced, in order; heads, panels and trouble spots are not needed for cores. */
    private static final List<Tool> TOOLS = List.of(
            new Tool(KeyCode.L, Kind.BOUNDARY),
            new Tool(KeyCode.H, Kind.BUILDING),
            new Tool(KeyCode.P, Kind.PAVING),
            new Tool(KeyCode.D, Kind.DECK),
            new Tool(KeyCode.G, Kind.GRAVEL),
            new Tool(KeyCode.B, Kind.BED),
            new Tool(KeyCode.T, Kind.TURF),
            new Tool(KeyCode.E, Kind.TREE),
            new Tool(KeyCode.N, Kind.FENCE),
            new Tool(KeyCode.I, Kind.GATE));

    /** A kind and the key that takes its tool in hand. */
    private record Tool(KeyCode key, Kind kind) {}

    /** One movement of the hand: one event. */
    sealed interface Act {
        void by(WindowDriver window, UnaryOperator<Point> seen);
    }

    record Key(KeyCode key) implements Act {
        @Override
        public void by(WindowDriver window, UnaryOperator<Point> seen) {
            window.keys(key);
        }
    }

    record Click(Point at) implements Act {
        @Override
        public void by(WindowDriver window, UnaryOperator<Point> seen) {
            window.click(seen.apply(at));
        }
    }

    record Drag(Point from, Point to) implements Act {
        @Override
        public void by(WindowDriver window, UnaryOperator<Point> seen) {
            window.drag(seen.apply(from), seen.apply(to));
        }
    }

    /** The script for a yard that is there. */
    static TracingScript of(Yard demo) {
        List<Feature> drawn = new ArrayList<>();
        List<Act> acts = new ArrayList<>();
        for (Tool tool : TOOLS) {
            List<Feature> features = of(demo, tool.kind()).toList();
            drawn.addAll(features);
            acts.add(new Key(tool.key()));
            acts.addAll(acts(features));
        }
        keepAways(demo).forEach(feature -> {
            drawn.add(feature);
            acts.addAll(keepAway(feature));
        });
        return new TracingScript(demo.withFeatures(drawn), List.copyOf(acts));
    }

    /** Features of a kind, with no more corners than a hand would click. */
    private static Stream<Feature> of(Yard demo, Kind kind) {
        if (kind == Kind.TURF) {
            Turf any = demo.all(Turf.class).findFirst().orElseThrow();
            Shape lot = demo.all(Boundary.class).findFirst().orElseThrow().outline();
            return Stream.of(any.withShape(lot));
        } else if (kind == Kind.FENCE) {
            return demo.all(Barrier.class).flatMap(TracingScript::betweenGates);
        }
        return demo.features().stream()
                .filter(feature -> feature.kind().filter(kind::equals).isPresent())
                .map(TracingScript::simple);
    }

    /** A fence as lines of its own between the gates, for a gap is a gap. */
    private static Stream<Feature> betweenGates(Barrier fence) {
        List<Polyline> stretches = fence.closedStretches();
        return IntStream.range(0, stretches.size())
                .mapToObj(i ->
                        fence.withGates(List.of()).withShape(stretches.get(i)).withKey(fence.key() + " " + (i + 1)));
    }

    private static Stream<KeepAway> keepAways(Yard demo) {
        return demo.all(KeepAway.class);
    }

    private static Feature simple(Feature feature) {
        return feature.shape()
                .filter(Outline.class::isInstance)
                .map(shape -> feature.withShape(Outline.of(Corners.ofRing(shell((Outline) shape), CURVE_M))))
                .orElse(feature);
    }

    private static List<Point> shell(Outline outline) {
        return outline.parts().get(0).shell();
    }

    /** Rectangles come last, for from then on the tool draws rectangles. */
    private static List<Act> acts(List<Feature> features) {
        List<Act> acts = new ArrayList<>();
        features.stream().filter(feature -> !isRectangle(feature)).forEach(feature -> acts.addAll(acts(feature)));
        List<Feature> rectangles =
                features.stream().filter(TracingScript::isRectangle).toList();
        if (!rectangles.isEmpty()) {
            acts.add(new Key(KeyCode.R));
        }
        rectangles.forEach(rectangle -> acts.add(diagonal(rectangle)));
        return acts;
    }

    /** Whether it has four corners and sides north and east. */
    private static boolean isRectangle(Feature feature) {
        return feature.shape().filter(Outline.class::isInstance).isPresent()
                && corners(feature).size() == 4
                && corners(feature).stream().map(Point::x).distinct().count() == 2
                && corners(feature).stream().map(Point::y).distinct().count() == 2;
    }

    private static Drag diagonal(Feature rectangle) {
        return new Drag(corners(rectangle).get(0), corners(rectangle).get(2));
    }

    private static List<Point> corners(Feature outlined) {
        return shell((Outline) outlined.shape().orElseThrow());
    }

    private static List<Act> acts(Feature feature) {
        if (feature instanceof Tree tree) {
            return List.of(
                    new Drag(tree.at(), tree.at().plus(tree.crownRadiusM().orElse(USUAL_CROWN_M), 0)));
        } else if (feature instanceof Gate gate) {
            return List.of(new Click(gate.at()));
        }
        return clicks(feature.shape().orElseThrow());
    }

    private static List<Act> keepAway(KeepAway feature) {
        if (feature.place() instanceof Point at) {
            return List.of(new Key(KeyCode.K), new Drag(at, at.plus(feature.radiusM(), 0)));
        }
        List<Act> acts = new ArrayList<>(List.of(new Key(KeyCode.Y)));
        acts.addAll(clicks(feature.place()));
        return acts;
    }

    private static List<Act> clicks(Shape shape) {
        List<Point> corners = shape instanceof Polyline line ? line.points() : shell((Outline) shape);
        List<Act> acts = new ArrayList<>();
        corners.forEach(corner -> acts.add(new Click(corner)));
        acts.add(new Key(KeyCode.ENTER));
        return acts;
    }

    /**
     * Does all of it in a window.
     *
     * @param seen where the window has a place of the yard
     */
    void by(WindowDriver window, UnaryOperator<Point> seen) {
        acts.forEach(act -> act.by(window, seen));
    }
}
