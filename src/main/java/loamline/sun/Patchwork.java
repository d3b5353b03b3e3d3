package loamline.sun;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Labels on a grid, tidied: patches too small to treat apart go to the neighbour they share the longest border with.
 *
 * <p>Cells touch at their sides. A label is 0 or more; {@link #NONE} is no ground.
 */
final class Patchwork {
    static final int NONE = -1;

    /** A patch that goes to a neighbour may make another small one whole; after so many rounds it stays as it is. */
    private static final int MOST_ROUNDS = 20;

    private final int columns;
    private final int[] labels;

    /** @param labels by cell, row-major; copied */
    Patchwork(int columns, int[] labels) {
        this.columns = columns;
        this.labels = labels.clone();
    }

    int[] labels() {
        return labels.clone();
    }

    /** Gives patches of fewer cells away, the smallest first; a patch without a neighbour stays. */
    Patchwork withoutSmall(int leastCells) {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            boolean changed = false;
            for (int[] patch : patches()) {
                changed |= patch.length < leastCells && give(patch);
            }
            if (!changed) {
                return this;
            }
        }
        return this;
    }

    /** Spreads labels over the ground without one, so many cells wide. */
    Patchwork grown(int cells) {
        for (int step = 0; step < cells; step++) {
            int[] before = labels.clone();
            for (int cell = 0; cell < labels.length; cell++) {
                for (int side = 0; side < 4 && labels[cell] == NONE; side++) {
                    int next = beside(cell, side);
                    labels[cell] = next < 0 ? NONE : before[next];
                }
            }
        }
        return this;
    }

    /** Connected cells of one label, the smallest patch first. */
    private List<int[]> patches() {
        List<int[]> found = new ArrayList<>();
        boolean[] seen = new boolean[labels.length];
        int[] stack = new int[labels.length];
        for (int cell = 0; cell < labels.length; cell++) {
            if (!seen[cell] && labels[cell] != NONE) {
                found.add(patch(cell, seen, stack));
            }
        }
        found.sort(Comparator.comparingInt(patch -> patch.length));
        return found;
    }

    private int[] patch(int from, boolean[] seen, int[] stack) {
        int size = 1;
        stack[0] = from;
        seen[from] = true;
        for (int done = 0; done < size; done++) {
            for (int side = 0; side < 4; side++) {
                int next = beside(stack[done], side);
                if (next >= 0 && !seen[next] && labels[next] == labels[from]) {
                    seen[next] = true;
                    stack[size++] = next;
                }
            }
        }
        return Arrays.copyOf(stack, size);
    }

    private boolean give(int[] patch) {
        int own = labels[patch[0]];
        int[] border = new int[Arrays.stream(labels).max().orElse(0) + 1];
        for (int cell : patch) {
            for (int side = 0; side < 4; side++) {
                int next = beside(cell, side);
                if (next >= 0 && labels[next] != NONE && labels[next] != own) {
                    border[labels[next]]++;
                }
            }
        }
        int longest = 0;
        for (int label = 1; label < border.length; label++) {
            longest = border[label] > border[longest] ? label : longest;
        }
        if (border[longest] == 0) {
            return false;
        }
        for (int cell : patch) {
            labels[cell] = longest;
        }
        return true;
    }

    /** The cell to the west, east, south or north; -1 off the grid. */
    private int beside(int cell, int side) {
        int column = cell % columns;
        return switch (side) {
            case 0 -> column > 0 ? cell - 1 : -1;
            case 1 -> column + 1 < columns ? cell + 1 : -1;
            case 2 -> cell >= columns ? cell - columns : -1;
            default -> cell + columns < labels.length ? cell + columns : -1;
        };
    }
}
