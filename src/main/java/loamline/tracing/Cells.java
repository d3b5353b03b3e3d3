package loamline.tracing;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Some cells of a window: a rectangle of flags and its place.
 *
 * <p>Operations return new cells. They keep order: if one set lies in another, so do the results; that is what
 * makes the slider monotone. Cells outside the rectangle do not exist: a neighbourhood at its border is the part
 * of it inside.
 */
final class Cells {
    private final int windowWidth;
    private final int left;
    private final int top;
    private final int width;
    private final int height;
    private final boolean[] in;

    private Cells(int windowWidth, int left, int top, int width, int height, boolean[] in) {
        this.windowWidth = windowWidth;
        this.left = left;
        this.top = top;
        this.width = width;
        this.height = height;
        this.in = in;
    }

    private Cells with(boolean[] other) {
        return new Cells(windowWidth, left, top, width, height, other);
    }

    /**
     * The cells of a window that have a property, in a rectangle with room round them.
     *
     * @param margin cells of room, as far as the window reaches
     * @param property by index in the window
     */
    static Cells of(int windowWidth, int windowHeight, int margin, IntPredicate property) {
        boolean[] all = new boolean[windowWidth * windowHeight];
        int left = windowWidth;
        int right = -1;
        int top = windowHeight;
        int bottom = -1;
        for (int i = 0, row = 0; i < all.length; i += windowWidth, row++) {
            for (int x = 0; x < windowWidth; x++) {
                all[i + x] = property.test(i + x);
            }
            int first = first(all, i, i + windowWidth) - i;
            if (first < windowWidth) {
                left = Math.min(left, first);
                right = Math.max(right, last(all, i, i + windowWidth) - i);
                top = Math.min(top, row);
                bottom = row;
            }
        }
        left = Math.max(0, left - margin);
        top = Math.max(0, top - margin);
        int width = Math.max(0, Math.min(windowWidth, right + 1 + margin) - left);
        int height = Math.max(0, Math.min(windowHeight, bottom + 1 + margin) - top);
        return cut(all, windowWidth, left, top, width, height);
    }

    private static Cells cut(boolean[] window, int windowWidth, int left, int top, int width, int height) {
        boolean[] in = new boolean[width * height];
        for (int y = 0; y < height; y++) {
            System.arraycopy(window, (top + y) * windowWidth + left, in, y * width, width);
        }
        return new Cells(windowWidth, left, top, width, height, in);
    }

    private static int first(boolean[] flags, int from, int to) {
        int i = from;
        while (i < to && !flags[i]) {
            i++;
        }
        return i;
    }

    private static int last(boolean[] flags, int from, int to) {
        int i = to - 1;
        while (i >= from && !flags[i]) {
            i--;
        }
        return i;
    }

    /** Column of the rectangle in the window. */
    int left() {
        return left;
    }

    /** Row of the rectangle in the window. */
    int top() {
        return top;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Whether a cell, by column and row in the rectangle, is in; false outside. */
    boolean has(int x, int y) {
        return x >= 0 && x < width && y >= 0 && y < height && in[y * width + x];
    }

    /** How many cells are in. */
    int count() {
        int count = 0;
        for (boolean cell : in) {
            count += cell ? 1 : 0;
        }
        return count;
    }

    /** Those that have a flag in a plane of the window. */
    Cells and(boolean[] window) {
        boolean[] both = in.clone();
        for (int y = 0; y < height; y++) {
            int start = (top + y) * windowWidth + left;
            for (int x = 0; x < width; x++) {
                both[y * width + x] &= window[start + x];
            }
        }
        return with(both);
    }

    /** These cells, and those of another set of the same rectangle that lie near given cells of the window. */
    Cells andNear(int[] centres, int radius, Cells other) {
        boolean[] more = in.clone();
        for (int centre : centres) {
            int x = centre % windowWidth - left;
            int y = centre / windowWidth - top;
            for (int row = Math.max(0, y - radius); row <= Math.min(height - 1, y + radius); row++) {
                for (int column = Math.max(0, x - radius); column <= Math.min(width - 1, x + radius); column++) {
                    more[row * width + column] |= other.in[row * width + column];
                }
            }
        }
        return with(more);
    }

    /** The cells that have one of these within a square of 2 · radius + 1 round them. */
    Cells grown(int radius) {
        return with(spread(spread(in, radius, 1, width, true), radius, width, in.length, true));
    }

    /** The cells that have nothing but these within a square of 2 · radius + 1 round them. */
    Cells shrunk(int radius) {
        return with(spread(spread(in, radius, 1, width, false), radius, width, in.length, false));
    }

    /**
     * Joins each flag with those up to a radius before and after it in its line.
     *
     * @param step between neighbours in a line: 1 along a row, the width down a column
     * @param line length after which lines end: the width for rows, everything for columns
     * @param any whether one flag is enough; otherwise all are needed
     */
    private static boolean[] spread(boolean[] flags, int radius, int step, int line, boolean any) {
        boolean[] out = flags.clone();
        for (int start = 0; start < flags.length; start += line) {
            for (int shift = step; shift <= radius * step && shift < line; shift += step) {
                join(out, start, flags, start + shift, line - shift, any);
                join(out, start + shift, flags, start, line - shift, any);
            }
        }
        return out;
    }

    private static void join(boolean[] to, int toStart, boolean[] from, int fromStart, int count, boolean any) {
        if (any) {
            for (int i = 0; i < count; i++) {
                to[toStart + i] |= from[fromStart + i];
            }
        } else {
            for (int i = 0; i < count; i++) {
                to[toStart + i] &= from[fromStart + i];
            }
        }
    }

    /** The cells connected by their sides to given cells of the window. */
    Cells connectedTo(int[] starts) {
        boolean[] reached = new boolean[in.length];
        for (int start : starts) {
            int cell = (start / windowWidth - top) * width + start % windowWidth - left;
            if (in[cell]) {
                flood(cell, reached);
            }
        }
        return with(reached);
    }

    /**
     * The same cells with small holes filled; what reaches the edge of the rectangle is no hole.
     *
     * @param smallest holes of fewer cells are filled
     */
    Cells withoutHolesBelow(double smallest) {
        boolean[] filled = in.clone();
        boolean[] reached = in.clone();
        for (int x = 0; x < width; x++) {
            flood(x, reached);
            flood((height - 1) * width + x, reached);
        }
        for (int y = 0; y < height; y++) {
            flood(y * width, reached);
            flood(y * width + width - 1, reached);
        }
        for (int cell = 0; cell < in.length; cell++) {
            if (!reached[cell] && flood(cell, reached) < smallest) {
                flood(cell, filled);
            }
        }
        return with(filled);
    }

    /**
     * Marks what is connected to a cell over cells of its kind that are not marked, run by run.
     *
     * @return how many are new
     */
    private int flood(int start, boolean[] marked) {
        int count = 0;
        int[] stack = {start};
        int depth = 1;
        while (depth > 0) {
            int cell = stack[--depth];
            if (!marked[cell]) {
                int row = cell / width * width;
                int from = cell;
                while (from > row && goesOn(from - 1, start, marked)) {
                    from--;
                }
                int to = cell + 1;
                while (to < row + width && goesOn(to, start, marked)) {
                    to++;
                }
                Arrays.fill(marked, from, to, true);
                count += to - from;
                int most = depth + to - from + 1; // a run of n cells has at most (n + 1) / 2 runs on either side
                stack = most > stack.length ? Arrays.copyOf(stack, 2 * most) : stack;
                depth = pushRuns(from - width, to - width, start, marked, stack, depth);
                depth = pushRuns(from + width, to + width, start, marked, stack, depth);
            }
        }
        return count;
    }

    private boolean goesOn(int cell, int like, boolean[] marked) {
        return in[cell] == in[like] && !marked[cell];
    }

    /** Pushes the first cell of every run in part of a row, if there is such a row. */
    private int pushRuns(int from, int to, int like, boolean[] marked, int[] stack, int depth) {
        int end = depth;
        boolean before = false;
        for (int cell = Math.max(0, from); cell < Math.min(in.length, to); cell++) {
            boolean now = goesOn(cell, like, marked);
            if (now && !before) {
                stack[end++] = cell;
            }
            before = now;
        }
        return end;
    }
}
