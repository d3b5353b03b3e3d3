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
    /** Share of a neighbourhood for {@link #filter}: at least one cell of it, which grows a set. */
    static final double ANY = 0;

    /** At least half of it, which rounds off spurs and gulfs. */
    static final double HALF = 0.5;

    /** All of it, which shrinks a set. */
    static final double ALL = 1;

    private static final int[] NONE = {};

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
        for (int y = 0; y < windowHeight; y++) {
            for (int x = 0; x < windowWidth; x++) {
                if (property.test(y * windowWidth + x)) {
                    all[y * windowWidth + x] = true;
                    left = Math.min(left, x);
                    right = Math.max(right, x);
                    top = Math.min(top, y);
                    bottom = y;
                }
            }
        }
        left = Math.max(0, left - margin);
        top = Math.max(0, top - margin);
        int width = Math.max(0, Math.min(windowWidth, right + 1 + margin) - left);
        int height = Math.max(0, Math.min(windowHeight, bottom + 1 + margin) - top);
        boolean[] in = new boolean[width * height];
        for (int y = 0; y < height; y++) {
            System.arraycopy(all, (top + y) * windowWidth + left, in, y * width, width);
        }
        return new Cells(windowWidth, left, top, width, height, in);
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

    /** Those that have a property, by index in the window. */
    Cells where(IntPredicate property) {
        boolean[] kept = new boolean[in.length];
        for (int y = 0; y < height; y++) {
            int shift = (top + y) * windowWidth + left - y * width;
            for (int i = y * width; i < (y + 1) * width; i++) {
                kept[i] = in[i] && property.test(i + shift);
            }
        }
        return with(kept);
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

    /**
     * The cells whose square neighbourhood is full to a share, by running sums.
     *
     * @param radius half the side of the square, cells
     * @param share {@link #ANY}, {@link #HALF} or {@link #ALL}
     */
    Cells filter(int radius, double share) {
        byte[] across = sumsAcross(radius);
        boolean[] out = new boolean[in.length];
        int[] sums = new int[width];
        int[] need = {};
        for (int y = -radius; y < height; y++) {
            if (y + radius < height) {
                add(sums, across, (y + radius) * width, 1);
            }
            if (y > radius) {
                add(sums, across, (y - radius - 1) * width, -1);
            }
            if (y == 0 || (y > 0 && places(y, radius, height) != places(y - 1, radius, height))) {
                need = need(radius, share, places(y, radius, height));
            }
            for (int x = 0; y >= 0 && x < width; x++) {
                out[y * width + x] = sums[x] >= need[x];
            }
        }
        return with(out);
    }

    /** How many cells are in along the row, up to a radius to both sides of each. */
    private byte[] sumsAcross(int radius) {
        byte[] across = new byte[in.length];
        for (int start = 0; start < in.length; start += width) {
            int sum = 0;
            for (int x = -radius; x < width; x++) {
                sum += x + radius < width && in[start + x + radius] ? 1 : 0;
                sum -= x > radius && in[start + x - radius - 1] ? 1 : 0;
                if (x >= 0) {
                    across[start + x] = (byte) sum;
                }
            }
        }
        return across;
    }

    private static void add(int[] sums, byte[] from, int start, int sign) {
        for (int x = 0; x < sums.length; x++) {
            sums[x] += sign * from[start + x];
        }
    }

    /** How many cells of its neighbourhood each cell of a row needs. */
    private int[] need(int radius, double share, int rows) {
        int[] need = new int[width];
        Arrays.setAll(need, x -> Math.max(1, (int) Math.ceil(share * rows * places(x, radius, width))));
        return need;
    }

    /** How many of the 2 · radius + 1 places round one exist in a row of some length. */
    private static int places(int at, int radius, int length) {
        return Math.min(length - 1, at + radius) - Math.max(0, at - radius) + 1;
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
        boolean[] reached = new boolean[in.length];
        for (int x = 0; x < width; x++) {
            floodOutside(x, reached);
            floodOutside((height - 1) * width + x, reached);
        }
        for (int y = 0; y < height; y++) {
            floodOutside(y * width, reached);
            floodOutside(y * width + width - 1, reached);
        }
        for (int cell = 0; cell < in.length; cell++) {
            int[] hole = in[cell] ? NONE : flood(cell, reached);
            if (hole.length < smallest) {
                for (int i : hole) {
                    filled[i] = true;
                }
            }
        }
        return with(filled);
    }

    private void floodOutside(int cell, boolean[] reached) {
        if (!in[cell]) {
            flood(cell, reached);
        }
    }

    /** Marks what is connected to a cell over cells of its kind, and lists those newly marked. */
    private int[] flood(int start, boolean[] reached) {
        if (reached[start]) {
            return NONE;
        }
        int[] queue = new int[64];
        int end = 0;
        queue[end++] = start;
        reached[start] = true;
        for (int next = 0; next < end; next++) {
            int cell = queue[next];
            int x = cell % width;
            if (end + 4 > queue.length) {
                queue = Arrays.copyOf(queue, 2 * queue.length);
            }
            if (x > 0 && isNew(cell - 1, start, reached)) {
                queue[end++] = cell - 1;
            }
            if (x + 1 < width && isNew(cell + 1, start, reached)) {
                queue[end++] = cell + 1;
            }
            if (cell >= width && isNew(cell - width, start, reached)) {
                queue[end++] = cell - width;
            }
            if (cell + width < in.length && isNew(cell + width, start, reached)) {
                queue[end++] = cell + width;
            }
        }
        return Arrays.copyOf(queue, end);
    }

    /** Marks a cell of the same kind as another; whether it was not marked yet. */
    private boolean isNew(int cell, int like, boolean[] reached) {
        boolean isNew = in[cell] == in[like] && !reached[cell];
        reached[cell] |= isNew;
        return isNew;
    }
}
