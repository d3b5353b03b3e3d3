package loamline.geometry;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/**
 * The free ground between two neighbouring edges that meet at a place, counter-clockwise from one to the other.
 *
 * @param at the place
 * @param from far end of the first edge; {@code at} itself if no edge is there and the ground is free all round
 * @param to far end of the last edge; the same as {@code from} where a single wall ends
 * @param stop whether a walk may start or end here, and so turn any way
 */
record Sector(Coordinate at, Coordinate from, Coordinate to, boolean stop) {
    static Sector allRound(Coordinate at) {
        return new Sector(at, at, at, true);
    }

    private boolean isAllRound() {
        return from.equals2D(at);
    }

    private boolean isWallEnd() {
        return from.equals2D(to);
    }

    /** Whether a path can turn here round what is not free, or run straight along it. */
    boolean isHalfTurnOrMore() {
        return isAllRound() || isWallEnd() || Orientation.index(at, from, to) != Orientation.COUNTERCLOCKWISE;
    }

    boolean startsAlong(Coordinate end) {
        return from.equals2D(end);
    }

    boolean endsAlong(Coordinate end) {
        return to.equals2D(end);
    }

    /** Whether the straight way to a point begins inside the sector, off its two edges. */
    boolean opensTo(Coordinate w) {
        if (isAllRound()) {
            return true;
        }
        if (isWallEnd()) {
            boolean along = (w.x - at.x) * (from.x - at.x) + (w.y - at.y) * (from.y - at.y) > 0;
            return !(along && Orientation.index(at, from, w) == Orientation.COLLINEAR);
        }
        if (isHalfTurnOrMore()) {
            return !(Orientation.index(at, to, w) >= 0 && Orientation.index(at, w, from) >= 0);
        }
        return Orientation.index(at, from, w) > 0 && Orientation.index(at, w, to) > 0;
    }

    /**
     * Whether a shortest path that comes from a point can turn here: only if what is not free lies to one side of
     * its line. A path may do anything at a stop.
     */
    boolean mayTurnFrom(Coordinate u) {
        return stop || Orientation.index(u, at, from) * Orientation.index(u, at, to) >= 0;
    }
}
