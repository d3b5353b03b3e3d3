package loamline.yard;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.geometry.Polyline;

/** Lines joined where their ends meet. */
final class EndToEnd {
    /** Ends this near each other are one corner, m: about a foot, less than any gap to walk through. */
    static final double REACH_M = 0.3;

    private final List<Point> chain;

    private EndToEnd(Polyline first) {
        chain = new ArrayList<>(first.points());
    }

    /**
     * One line of several, in the direction of the first; where ends lie a little apart, the corner of the line that
     * was there before counts.
     *
     * @param lines at least one
     * @return empty if one of them meets no end of the others
     */
    static Optional<Polyline> of(List<Polyline> lines) {
        EndToEnd whole = new EndToEnd(lines.get(0));
        List<Polyline> left = new ArrayList<>(lines.subList(1, lines.size()));
        while (whole.takesOneOf(left)) {
            // each turn leaves one line less
        }
        return left.isEmpty() ? Optional.of(new Polyline(whole.chain)) : Optional.empty();
    }

    private boolean takesOneOf(List<Polyline> left) {
        for (Iterator<Polyline> lines = left.iterator(); lines.hasNext(); ) {
            Polyline line = lines.next();
            if (takes(line) || takes(line.reversed())) {
                lines.remove();
                return true;
            }
        }
        return false;
    }

    private boolean takes(Polyline line) {
        List<Point> points = line.points();
        Point start = points.get(0);
        Point end = points.get(points.size() - 1);
        if (start.distanceTo(chain.get(chain.size() - 1)) <= REACH_M) {
            return chain.addAll(points.subList(1, points.size()));
        }
        return end.distanceTo(chain.get(0)) <= REACH_M && chain.addAll(0, points.subList(0, points.size() - 1));
    }
}
