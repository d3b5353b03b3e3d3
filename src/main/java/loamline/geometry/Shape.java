package loamline.geometry;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** What somebody drew: a point, a line or an outline, in metres, kept exactly as given. */
public sealed interface Shape permits Point, Polyline, Outline {
    /** All vertices, in drawing order; a ring's first point is not repeated at its end. */
    Stream<Point> vertices();

    /** The same shape with every vertex replaced; order and structure stay. */
    Shape map(UnaryOperator<Point> change);
}
