package loamline.desk.tool;

import java.util.List;
import loamline.geometry.Point;

/** A passing mark over the map: what is being drawn, handles, snaps. Places in metres, sizes up to the screen. */
public sealed interface Guide {
    /** A line being drawn; filled in faintly if it closes. */
    record Line(List<Point> points, boolean closed, Style style) implements Guide {
        public Line {
            points = List.copyOf(points);
        }
    }

    /** A circle of a radius on the ground. */
    record Circle(Point centre, double radiusM, Style style) implements Guide {}

    /** A grip to drag: a corner, or the middle of a side that would become one. */
    record Grip(Point at, boolean middle, boolean hot) implements Guide {}

    /** Where the pointer has snapped to, and what to. */
    record Snap(Point at, String word) implements Guide {}

    /** Words beside a place, as the length of a side. */
    record Words(Point at, String text) implements Guide {}

    /** How a line is drawn. */
    enum Style {
        DRAWN,
        HELP,
        SELECTED
    }
}
