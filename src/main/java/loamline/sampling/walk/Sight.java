package loamline.sampling.walk;

import java.util.Arrays;
import loamline.cancel.Cancellation;

/**
 * Which corners of a map see each other, by turning a ray about every corner.
 *
 * <p><b>What.</b> All steps that a shortest way can be made of: between two sectors whose corners see each other with
 * no corner in between, and along both sides of every edge. Steps that cannot be part of a shortest way, because it
 * would have to bend away from the wall, are left out.
 * <p><b>Units and shape.</b> Metres; sectors by their numbers in the {@link WallMap}.
 * <p><b>NaN.</b> None: coordinates are finite.
 * <p><b>Ties and borders.</b> A corner on the line of sight ends it: the way goes on from that corner's sectors, so a
 * line that touches a free end passes and one that meets two walls from either side does not. Lines along an edge stay
 * on their side of it.
 * <p><b>Accuracy.</b> Every decision is the sign of a {@link loamline.geometry.Turn}; lengths are rounded once.
 * <p><b>Cost.</b> O(n² log n) for n corners, each pair looked at once, and the number of edges cut by a ray for each
 * event.
 * <p><b>Reference.</b> Visibility graph: Lozano-Pérez and Wesley 1979, CACM 22:560-570. Rotational sweep and reduction to
 * common tangents: common practice, from memory.
 */
final class Sight {
    /** Bits of a sort key that hold the corner; the rest hold its direction. */
    private static final int CORNER_BITS = 20;

    /** The largest map that can be looked at, corners. */
    static final int MAX_CORNERS = 1 << CORNER_BITS;

    /** Steps of direction in a sort key for a quarter turn. */
    private static final double DIRECTIONS = 1L << (61 - CORNER_BITS);

    private final WallMap map;
    private final Network.Builder steps = new Network.Builder();

    /** Corners on the right of the viewpoint, counterclockwise from straight down. */
    private final long[] keys;

    private final int[] round;
    private int roundSize;

    /** Edges that the ray crosses, the nearest first. */
    private final int[] crossed;

    private int crossedSize;

    /** The side of an edge on which the viewpoint lies, for edges that the ray crosses. */
    private final int[] facing;

    private final boolean[] useful;

    private Sight(WallMap map) {
        this.map = map;
        keys = new long[map.x.length];
        round = new int[map.x.length];
        crossed = new int[map.edgeFrom.length];
        facing = new int[map.edgeFrom.length];
        useful = new boolean[map.x.length];
    }

    /**
     * The steps of a map.
     *
     * @throws IllegalArgumentException if the map has {@link #MAX_CORNERS} or more
     */
    static Network of(WallMap map) {
        if (map.x.length >= MAX_CORNERS) {
            throw new IllegalArgumentException(map.x.length + " corners, must be fewer than " + MAX_CORNERS);
        }
        Sight sight = new Sight(map);
        for (int c = 0; c < map.x.length; c++) {
            sight.useful[c] = map.isUseful(c);
        }
        for (int e = 0; e < map.edgeFrom.length; e++) {
            sight.linkAlong(map.edgeFrom[e], map.edgeTo[e]);
        }
        for (int c = 0; c < map.x.length; c++) {
            Cancellation.check();
            if (sight.useful[c]) {
                sight.lookFrom(c);
            }
        }
        return sight.steps.build(map.rayTo.length);
    }

    private void linkAlong(int a, int b) {
        int ray = map.rayBetween(a, b);
        int back = map.rayBetween(b, a);
        link(a, ray, b, map.rayBefore(b, back));
        link(a, map.rayBefore(a, ray), b, back);
    }

    private void link(int a, int sectorOfA, int b, int sectorOfB) {
        if (map.isUsefulAlong(a, sectorOfA) && map.isUsefulAlong(b, sectorOfB)) {
            steps.join(sectorOfA, sectorOfB, map.distanceM(a, b));
        }
    }

    /** Turns the ray about a corner from straight down to straight up, over all corners with a higher number. */
    private void lookFrom(int p) {
        sortRound(p);
        startCrossed(p);
        for (int i = 0; i < roundSize; ) {
            int end = i + 1;
            while (end < roundSize && map.turn(p, round[i], round[end]) == 0) {
                end++;
            }
            for (int k = i; k < end; k++) {
                dropEnding(p, round[k]);
            }
            see(p, round[i]);
            for (int k = i; k < end; k++) {
                addBeginning(p, round[k]);
            }
            i = end;
        }
    }

    /** Sorts by rounded directions first, then repairs the few places where rounding decided. */
    private void sortRound(int p) {
        roundSize = map.x.length - p - 1;
        for (int i = 0; i < roundSize; i++) {
            double dx = map.x[p + 1 + i] - map.x[p];
            double dy = map.y[p + 1 + i] - map.y[p];
            long direction = (long) ((dy / (dx + Math.abs(dy)) + 1) * DIRECTIONS);
            keys[i] = direction << CORNER_BITS | (p + 1 + i);
        }
        Arrays.sort(keys, 0, roundSize);
        for (int i = 0; i < roundSize; i++) {
            int corner = (int) keys[i] & (MAX_CORNERS - 1);
            int j = i;
            for (; j > 0 && isBefore(p, corner, round[j - 1]); j--) {
                round[j] = round[j - 1];
            }
            round[j] = corner;
        }
    }

    /** By direction; in one direction the nearer first, which has the lower number. */
    private boolean isBefore(int p, int a, int b) {
        int turn = map.turn(p, a, b);
        return turn > 0 || (turn == 0 && a < b);
    }

    /** The edges that pass straight below a corner. */
    private void startCrossed(int p) {
        crossedSize = 0;
        for (int e = 0; e < map.edgeFrom.length; e++) {
            if (map.edgeFrom[e] < p && p < map.edgeTo[e] && sideOf(e, p) > 0) {
                insert(e, 1);
            }
        }
    }

    private int sideOf(int e, int corner) {
        return map.turn(map.edgeFrom[e], map.edgeTo[e], corner);
    }

    /** Drops the edges of a corner that the ray leaves here; those along the ray were never on it. */
    private void dropEnding(int p, int corner) {
        for (int r = map.firstRay[corner]; r < map.firstRay[corner + 1]; r++) {
            if (map.rayEdge[r] >= 0 && map.rayTo[r] != p && map.turn(p, corner, map.rayTo[r]) < 0) {
                remove(map.rayEdge[r]);
            }
        }
    }

    /** Adds the edges of a corner that the ray meets from here on. */
    private void addBeginning(int p, int corner) {
        for (int r = map.firstRay[corner]; r < map.firstRay[corner + 1]; r++) {
            if (map.rayEdge[r] >= 0 && map.rayTo[r] != p && map.turn(p, corner, map.rayTo[r]) > 0) {
                insert(map.rayEdge[r], sideOf(map.rayEdge[r], p));
            }
        }
    }

    private void insert(int e, int side) {
        facing[e] = side;
        int low = 0;
        int high = crossedSize;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (isNearer(e, crossed[middle])) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        System.arraycopy(crossed, low, crossed, low + 1, crossedSize - low);
        crossed[low] = e;
        crossedSize++;
    }

    private void remove(int e) {
        int at = 0;
        while (at < crossedSize && crossed[at] != e) {
            at++;
        }
        if (at < crossedSize) {
            System.arraycopy(crossed, at + 1, crossed, at, crossedSize - at - 1);
            crossedSize--;
        }
    }

    /** Whether the ray meets an edge before another, both of which it crosses. */
    private boolean isNearer(int e, int f) {
        int from = facing[e] * sideOf(e, map.edgeFrom[f]);
        int to = facing[e] * sideOf(e, map.edgeTo[f]);
        if (from >= 0 && to >= 0) {
            return false;
        }
        if (from <= 0 && to <= 0) {
            return true;
        }
        return facing[f] * sideOf(f, map.edgeFrom[e]) >= 0 && facing[f] * sideOf(f, map.edgeTo[e]) >= 0;
    }

    /** Joins two corners if no edge lies between them. */
    private void see(int p, int q) {
        if (!useful[q] || map.rayBetween(p, q) >= 0) {
            return;
        }
        if (crossedSize > 0 && facing[crossed[0]] * sideOf(crossed[0], q) < 0) {
            return;
        }
        int sectorOfP = map.sectorTowards(p, q);
        int sectorOfQ = map.sectorTowards(q, p);
        if (map.isUsefulTowards(p, sectorOfP, q) && map.isUsefulTowards(q, sectorOfQ, p)) {
            steps.join(sectorOfP, sectorOfQ, map.distanceM(p, q));
        }
    }
}
