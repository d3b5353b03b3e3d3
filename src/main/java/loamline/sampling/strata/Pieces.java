package loamline.sampling.strata;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The connected pieces of strata: cells of one stratum that touch by a side. The largest piece of a stratum is its
 * main piece (the first of equals); the others are stray.
 */
final class Pieces {
    private final Ground ground;
    private final int[] owner;
    private final int[] pieceOf;
    private final List<int[]> cells = new ArrayList<>();
    private final int[] mainPiece;
    private final int[] found;

    Pieces(Ground ground, int[] owner, int k) {
        this.ground = ground;
        this.owner = owner;
        this.pieceOf = new int[owner.length];
        this.mainPiece = new int[k];
        this.found = new int[owner.length];
        Arrays.fill(pieceOf, Ground.NONE);
        Arrays.fill(mainPiece, Ground.NONE);
        for (int i = 0; i < owner.length; i++) {
            if (pieceOf[i] == Ground.NONE) {
                collect(i);
            }
        }
    }

    private void collect(int first) {
        int piece = cells.size();
        int count = 0;
        pieceOf[first] = piece;
        found[count++] = first;
        for (int i = 0; i < count; i++) {
            for (int side = 0; side < Ground.SIDES; side++) {
                int next = ground.neighbour(found[i], side);
                if (next != Ground.NONE && pieceOf[next] == Ground.NONE && owner[next] == owner[first]) {
                    pieceOf[next] = piece;
                    found[count++] = next;
                }
            }
        }
        cells.add(Arrays.copyOf(found, count));
        int main = mainPiece[owner[first]];
        if (main == Ground.NONE || count > cells.get(main).length) {
            mainPiece[owner[first]] = piece;
        }
    }

    /** Pieces beyond one a stratum. */
    int strayCount() {
        return cells.size() - mainPiece.length;
    }

    boolean isStray(int cell) {
        return mainPiece[owner[cell]] != pieceOf[cell];
    }

    /** All cells of the piece that a cell belongs to. */
    int[] pieceWith(int cell) {
        return cells.get(pieceOf[cell]);
    }

    /** One cell of each stray piece, the smallest piece first. */
    int[] oneCellOfEachStray() {
        return cells.stream()
                .filter(piece -> isStray(piece[0]))
                .sorted(Comparator.comparingInt(piece -> piece.length))
                .mapToInt(piece -> piece[0])
                .toArray();
    }

    /** The main piece of a stratum. */
    int[] mainPieceOf(int stratum) {
        return cells.get(mainPiece[stratum]);
    }

    /** Strata in more than one piece, rising. */
    int[] brokenStrata() {
        return IntStream.range(0, cells.size())
                .map(piece -> cells.get(piece)[0])
                .filter(this::isStray)
                .map(cell -> owner[cell])
                .sorted()
                .distinct()
                .toArray();
    }
}
