package loamline.desk.tool;

import java.util.List;
import loamline.geometry.Point;

/**
 * A place that the pointer may be drawn to.
 *
 * @param rank what it is; those that stand first win, whatever their distance
 * @param word for the person who draws
 * @param help marks that explain it
 */
record SnapCandidate(Point at, Rank rank, String word, List<Guide> help) {
    enum Rank {
        /** The first place, which closes the outline. */
        START,
        CORNER,
        /** Of two edges. */
        CROSSING,
        /** Of an edge and a track. */
        TRACK_AT_EDGE,
        EDGE,
        /** Of two tracks. */
        TRACKS,
        TRACK
    }

    Snapped snapped() {
        return new Snapped(at, word, help);
    }
}
