package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Edge;
import loamline.geometry.Point;

/**
 * What a snap is looked for by.
 *
 * @param pointer where the mouse is
 * @param reachM how far a snap may move it, m
 * @param drawn the places drawn so far, in order
 * @param near edges within reach, nearest first
 * @param tracks lines the next side may follow
 */
record SnapAsk(Point pointer, double reachM, List<Point> drawn, List<Edge> near, List<Track> tracks) {
    boolean reaches(Point place) {
        return pointer.distanceTo(place) <= reachM;
    }

    /** The place the next side starts from. */
    Optional<Point> last() {
        return drawn.isEmpty() ? Optional.empty() : Optional.of(drawn.get(drawn.size() - 1));
    }
}
