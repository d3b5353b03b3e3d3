package loamline.desk.tool;

import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.StraightLine;

/**
 * A line without ends that a side may follow.
 *
 * @param line where
 * @param word why one would follow it
 * @param shown what it goes by: the ends of a side, or a single place
 */
record Track(StraightLine line, String word, List<Point> shown) {
    /** What explains a snap to it. */
    Guide help(Point at) {
        return new Guide.Line(shown.size() == 1 ? List.of(shown.get(0), at) : shown, false, Guide.Style.HELP);
    }
}
