package loamline.scene;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;

/**
 * Lines and curves, open or closed. Whoever holds the path says what its plane is: metres on the ground or
 * millimetres on paper.
 *
 * @param steps each piece begins with a {@link Move}
 */
public record Path(List<Step> steps) {
    /** Distance of the control points from the ends of a quarter circle of radius 1: 4/3 · (√2 − 1). */
    private static final double QUARTER = 4 / 3.0 * (Math.sqrt(2) - 1);

    public Path {
        steps = List.copyOf(steps);
    }

    /** One stroke of the pen. */
    public sealed interface Step {}

    /** Lifts the pen and sets it down. */
    public record Move(Point to) implements Step {}

    /** A straight line. */
    public record Line(Point to) implements Step {}

    /** A cubic curve. */
    public record Curve(Point control1, Point control2, Point to) implements Step {}

    /** A straight line back to the last move. */
    public record Close() implements Step {}

    /** All rings of an outline. */
    public static Path of(Outline outline) {
        return joined(outline.rings()
                .filter(ring -> !ring.isEmpty())
                .map(ring -> closed(ring.toArray(Point[]::new)))
                .toList());
    }

    /** Open lines. */
    public static Path of(Collection<Polyline> lines) {
        return joined(lines.stream()
                .map(line -> open(line.points().toArray(Point[]::new)))
                .toList());
    }

    public static Path open(Point... points) {
        List<Step> steps = new ArrayList<>();
        for (Point p : points) {
            steps.add(steps.isEmpty() ? new Move(p) : new Line(p));
        }
        return new Path(steps);
    }

    public static Path closed(Point... corners) {
        List<Step> steps = new ArrayList<>(open(corners).steps);
        steps.add(new Close());
        return new Path(steps);
    }

    /** A circle as four curves, within 0.03 % of its radius. */
    public static Path circle(Point centre, double radius) {
        double r = radius;
        double k = radius * QUARTER;
        return new Path(List.of(
                new Move(centre.plus(r, 0)),
                new Curve(centre.plus(r, k), centre.plus(k, r), centre.plus(0, r)),
                new Curve(centre.plus(-k, r), centre.plus(-r, k), centre.plus(-r, 0)),
                new Curve(centre.plus(-r, -k), centre.plus(-k, -r), centre.plus(0, -r)),
                new Curve(centre.plus(k, -r), centre.plus(r, -k), centre.plus(r, 0)),
                new Close()));
    }

    /** Several paths as one. */
    public static Path joined(Collection<Path> paths) {
        return new Path(paths.stream().flatMap(path -> path.steps.stream()).toList());
    }

    public boolean isEmpty() {
        return steps.isEmpty();
    }

    /** Every point of the path, control points too. */
    public Stream<Point> points() {
        return steps.stream().flatMap(Path::pointsOf);
    }

    private static Stream<Point> pointsOf(Step step) {
        if (step instanceof Move move) {
            return Stream.of(move.to);
        }
        if (step instanceof Line line) {
            return Stream.of(line.to);
        }
        return step instanceof Curve curve ? Stream.of(curve.control1, curve.control2, curve.to) : Stream.of();
    }

    /** The same path with every point replaced. */
    public Path map(UnaryOperator<Point> change) {
        return new Path(steps.stream().map(step -> mapped(step, change)).toList());
    }

    private static Step mapped(Step step, UnaryOperator<Point> change) {
        if (step instanceof Move move) {
            return new Move(change.apply(move.to));
        }
        if (step instanceof Line line) {
            return new Line(change.apply(line.to));
        }
        return step instanceof Curve curve
                ? new Curve(change.apply(curve.control1), change.apply(curve.control2), change.apply(curve.to))
                : step;
    }
}
