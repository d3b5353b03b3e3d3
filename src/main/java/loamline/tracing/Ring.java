package loamline.tracing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loamline.geometry.Point;

/**
 * A closed border along the sides of cells, the cells that are in on its right as it runs (the picture's y
 * points down, so a border round cells runs clockwise on screen and one round a hole the other way).
 *
 * <p>Cells that touch only by a corner are not joined across it.
 */
final class Ring {
    /** Columns and rows of the corners passed, in the window, one for each cell side. */
    private final int[] x;

    private final int[] y;

    private Ring(int[] x, int[] y) {
        this.x = x;
        this.y = y;
    }

    private static final int[] DX = {1, 0, -1, 0};
    private static final int[] DY = {0, 1, 0, -1};

    /** All borders of some cells, in the order of their first cells. */
    static List<Ring> around(Cells cells) {
        boolean[] seen = new boolean[cells.width() * cells.height()];
        List<Ring> rings = new ArrayList<>();
        for (int y = 0; y < cells.height(); y++) {
            for (int x = 0; x < cells.width(); x++) {
                if (cells.has(x, y) && !cells.has(x, y - 1) && !seen[y * cells.width() + x]) {
                    rings.add(follow(cells, x, y, seen));
                }
            }
        }
        return rings;
    }

    /** Follows the border that runs east along the top of a cell, and marks all cells whose top it passes. */
    private static Ring follow(Cells cells, int startX, int startY, boolean[] seen) {
        int[] xs = new int[64];
        int[] ys = new int[64];
        int count = 0;
        int x = startX;
        int y = startY;
        int heading = 0;
        do {
            if (heading == 0) {
                seen[y * cells.width() + x] = true;
            }
            if (count == xs.length) {
                xs = Arrays.copyOf(xs, 2 * count);
                ys = Arrays.copyOf(ys, 2 * count);
            }
            xs[count] = cells.left() + x;
            ys[count++] = cells.top() + y;
            x += DX[heading];
            y += DY[heading];
            heading = turned(cells, x, y, heading);
        } while (x != startX || y != startY || heading != 0);
        return new Ring(Arrays.copyOf(xs, count), Arrays.copyOf(ys, count));
    }

    /** Where the border goes on from a corner: right if the cell ahead on the right is out, left if both are in. */
    private static int turned(Cells cells, int x, int y, int heading) {
        boolean right = ahead(cells, x, y, heading, (heading + 1) & 3);
        boolean left = ahead(cells, x, y, heading, (heading + 3) & 3);
        return !right ? heading + 1 & 3 : left ? heading + 3 & 3 : heading;
    }

    /** Whether the cell beyond a corner, in the quadrant between two directions, is in. */
    private static boolean ahead(Cells cells, int x, int y, int heading, int side) {
        int dx = DX[heading] + DX[side];
        int dy = DY[heading] + DY[side];
        return cells.has(dx > 0 ? x : x - 1, dy > 0 ? y : y - 1);
    }

    /** Column of the first corner, the upper left one of a cell that is in. */
    int firstX() {
        return x[0];
    }

    /** Row of the first corner. */
    int firstY() {
        return y[0];
    }

    /** Cell sides. */
    int length() {
        return x.length;
    }

    /** Area enclosed, in cells; negative for the border of a hole. */
    int area() {
        long twice = 0;
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            twice += (long) x[i] * y[next] - (long) x[next] * y[i];
        }
        return (int) (twice / 2);
    }

    /** Whether the cells lie outside. */
    boolean isHole() {
        return area() < 0;
    }

    /** How far right a side looks outward: 1, 0 or -1. */
    int outX(int i) {
        return y[(i + 1) % y.length] - y[i];
    }

    /** How far down a side looks outward. */
    int outY(int i) {
        return x[i] - x[(i + 1) % x.length];
    }

    /** Column of the cell on the inner side. */
    int cellX(int i) {
        return Math.min(x[i], x[(i + 1) % x.length]) - Math.max(0, outX(i));
    }

    /** Row of the cell on the inner side. */
    int cellY(int i) {
        return Math.min(y[i], y[(i + 1) % y.length]) - Math.max(0, outY(i));
    }

    /** Column of the middle of a cell side. */
    double middleX(int i) {
        return (x[i] + x[(i + 1) % x.length]) / 2.0;
    }

    /** Row of the middle of a cell side. */
    double middleY(int i) {
        return (y[i] + y[(i + 1) % y.length]) / 2.0;
    }

    /** The corners where the border turns. */
    List<Point> corners() {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            int before = (i + x.length - 1) % x.length;
            int after = (i + 1) % x.length;
            if (x[before] != x[after] && y[before] != y[after]) {
                corners.add(new Point(x[i], y[i]));
            }
        }
        return corners;
    }

    /** Whether the middle of a cell lies inside, by the crossings to its left. */
    boolean encloses(int column, int row) {
        boolean inside = false;
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            inside ^= x[i] == x[next] && x[i] <= column && Math.min(y[i], y[next]) == row;
        }
        return inside;
    }
}
