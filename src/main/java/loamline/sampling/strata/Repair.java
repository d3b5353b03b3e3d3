package loamline.sampling.strata;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import loamline.cancel.Cancellation;

/**
 * Joins broken strata where that costs little: a stray piece goes to the stratum it touches most, and as many cells
 * come back to the stratum that lost it, passed on from stratum to stratum along their common borders.
 *
 * <p>Sizes stay as they were. Cells that hold their stratum together are not passed on. Where the ground itself is
 * in parts, a stray piece can come home only through another stratum that spans the same parts: so many broken
 * strata become few, but never fewer than the areas of the parts allow.
 */
final class Repair {
    /**
     * What a stray piece is as bad as, in shares of the mean squared distance: one percent, the margin within which
     * plans count as equally good. Own choice, no source.
     */
    private static final double PRICE_OF_STRAY = 0.01;

    /** Joining one piece may nibble at others, and they are then tried again; two or three rounds do (measured). */
    private static final int MOST_ROUNDS = 5;

    private final Ground ground;
    private final int k;
    private final int[] owner;
    private final Pieces pieces;
    private final double[] x;
    private final double[] y;
    private final Transfers transfers;

    /** All cells on a border between strata, and perhaps some that were. */
    private final BitSet border = new BitSet();

    private Repair(Strata strata) {
        this.ground = strata.ground();
        this.k = strata.count();
        this.owner = strata.owners();
        this.pieces = strata.pieces();
        this.x = new double[k];
        this.y = new double[k];
        for (int j = 0; j < k; j++) {
            x[j] = Arrays.stream(pieces.mainPieceOf(j))
                    .mapToDouble(ground::column)
                    .average()
                    .orElseThrow();
            y[j] = Arrays.stream(pieces.mainPieceOf(j))
                    .mapToDouble(ground::row)
                    .average()
                    .orElseThrow();
        }
        this.transfers = new Transfers(k, 0);
        border.set(0, owner.length);
    }

    /** Mean squared distance from the final cores, raised for each stray piece: what the best plan has least of. */
    static double cost(Strata strata) {
        double mssd = CorePlacement.atCentres(strata).nearestMssd();
        return mssd * (1 + PRICE_OF_STRAY * strata.pieces().strayCount());
    }

    /** The same strata, or cheaper ones with fewer stray pieces. */
    static Strata join(Strata strata) {
        Strata best = strata;
        Strata before;
        int round = 0;
        do {
            before = best;
            best = joinOnce(before);
            round++;
        } while (best != before && round < MOST_ROUNDS);
        return best;
    }

    /** Tries each stray piece once, the smallest first. */
    private static Strata joinOnce(Strata strata) {
        Strata best = strata;
        for (int cell : strata.pieces().oneCellOfEachStray()) {
            if (best.pieces().isStray(cell)) {
                Strata current = best;
                best = new Repair(best)
                        .giveAway(cell)
                        .map(owner -> new Strata(current.ground(), current.count(), owner))
                        .filter(joined -> cost(joined) < cost(current))
                        .orElse(best);
            }
        }
        return best;
    }

    /** Owners after the stray piece with this cell went to a neighbour; empty if it has none or nothing comes back. */
    private Optional<int[]> giveAway(int cell) {
        int[] piece = pieces.pieceWith(cell);
        int loser = owner[cell];
        int heir = mostTouched(piece);
        if (heir == Transfers.NONE) {
            return Optional.empty();
        }
        for (int given : piece) {
            owner[given] = heir;
        }
        int[] surplus = new int[k];
        surplus[heir] = piece.length;
        surplus[loser] = -piece.length;
        int end = loser;
        while (surplus[loser] < 0 && end != Transfers.NONE) { // each round brings one cell back
            Cancellation.check();
            offerBorders();
            end = transfers.endOfCheapestPath(surplus);
            if (end != Transfers.NONE) {
                transfers.pass(end, owner, surplus);
                extendBorder(end);
            }
        }
        return surplus[loser] < 0 ? Optional.empty() : Optional.of(owner);
    }

    private int mostTouched(int[] piece) {
        int[] contacts = new int[k];
        int most = Transfers.NONE;
        for (int cell : piece) {
            for (int side = 0; side < Ground.SIDES; side++) {
                int next = ground.neighbour(cell, side);
                if (next != Ground.NONE && owner[next] != owner[cell]) {
                    int other = owner[next];
                    contacts[other]++;
                    most = most == Transfers.NONE || contacts[other] > contacts[most] ? other : most;
                }
            }
        }
        return most;
    }

    /** Offers each cell on a border that can be spared to the strata beyond. */
    private void offerBorders() {
        transfers.forget();
        for (int i = border.nextSetBit(0); i >= 0; i = border.nextSetBit(i + 1)) {
            boolean touches = false;
            for (int side = 0; side < Ground.SIDES; side++) {
                int next = ground.neighbour(i, side);
                if (next != Ground.NONE && owner[next] != owner[i]) {
                    touches = true;
                    if (canBeSpared(i)) {
                        double cost = squaredDistance(i, owner[next]) - squaredDistance(i, owner[i]);
                        transfers.offer(owner[i], owner[next], Math.max(0, cost), i);
                    }
                }
            }
            border.set(i, touches);
        }
    }

    /** Takes in the cells beside those that passed along a path. */
    private void extendBorder(int end) {
        for (int at = end; transfers.before(at) != Transfers.NONE; at = transfers.before(at)) {
            int passed = transfers.cellInto(at);
            border.set(passed);
            for (int side = 0; side < Ground.SIDES; side++) {
                if (ground.neighbour(passed, side) != Ground.NONE) {
                    border.set(ground.neighbour(passed, side));
                }
            }
        }
    }

    /** Whether the cells of the own stratum beside a cell still hang together around it without it. */
    private boolean canBeSpared(int cell) {
        int beside = 0;
        int joints = 0;
        for (int side = 0; side < Ground.SIDES; side++) {
            int next = ground.neighbour(cell, side);
            if (next != Ground.NONE && owner[next] == owner[cell]) {
                beside++;
                int turn = (side + 1) % Ground.SIDES;
                int afterNext = ground.neighbour(cell, turn);
                int corner = ground.neighbour(next, turn);
                boolean joined = afterNext != Ground.NONE && corner != Ground.NONE;
                if (joined && owner[afterNext] == owner[cell] && owner[corner] == owner[cell]) {
                    joints++;
                }
            }
        }
        return beside - joints <= 1;
    }

    private double squaredDistance(int cell, int stratum) {
        double dx = ground.column(cell) - x[stratum];
        double dy = ground.row(cell) - y[stratum];
        return dx * dx + dy * dy;
    }
}
