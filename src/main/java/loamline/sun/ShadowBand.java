package loamline.sun;

import java.util.Arrays;
import loamline.raster.GridSpec;

/**
 * Shadows on a few neighbouring rows of a grid: the kernel of all sun maps.
 *
 * <p><b>What.</b> For one position of the sun, the share of its direct light that reaches the middle of each cell: every
 * caster multiplies the cells of its shadow by the light that it lets through. A shadow is the ground from which the way
 * to the sun meets the caster. Shadows of prisms, cylinders and ellipsoids on level ground are convex, so each is one
 * span of cells on a row, whose ends follow from the shadow's outline in closed form.
 *
 * <p><b>Units and shape.</b> Metres in the grid's plane; {@code east} and {@code north} say how far the shadow of a thing
 * 1 m high reaches. {@code light} holds rows · columns shares, 0 to 1, row-major from the band's first row.
 *
 * <p><b>NaN.</b> None in, none out.
 *
 * <p><b>Ties and borders.</b> A middle on the edge of a shadow, or within {@link #EDGE_M} of it along the row, is shaded,
 * so that convex parts of one footprint leave no bright seam.
 *
 * <p><b>Accuracy.</b> Cells whose middle lies farther than {@link #ACCURACY_M} from every shadow's edge are exact.
 *
 * <p><b>Cost.</b> Rows of each shadow times its sides, plus its cells; nothing is allocated after the constructor.
 *
 * <p><b>Reference.</b> Closed forms: the shadow of an upright thing is the sweep of its footprint along the shadow of its
 * height; that of an ellipsoid with half axes r, r, a is the ellipse xᵀ Q⁻¹ x ≤ 1 with Q = r² I + a² d dᵀ, d the shadow of
 * 1 m of height.
 */
final class ShadowBand {
    /** Cells this near to an edge count as shaded, m: more than rounding, less than anyone can mean. */
    static final double EDGE_M = 1e-9;

    /** What the tests grant round the edges of shadows, m. */
    static final double ACCURACY_M = 1e-6;

    final float[] light;
    final int rows;
    private final double originX;
    private final double firstY;
    private final double cell;
    private final double perM;
    private final int columns;
    private final double[] low;
    private final double[] high;
    private int from;
    private int to;

    /** @param firstRow of the grid; so many rows from there on */
    ShadowBand(GridSpec grid, int firstRow, int rows) {
        this.rows = rows;
        originX = grid.xOf(0);
        firstY = grid.yOf(firstRow);
        cell = grid.cellM();
        perM = 1 / cell;
        columns = grid.columns();
        light = new float[rows * columns];
        low = new double[rows];
        high = new double[rows];
    }

    /** Fills {@link #light} for one position of the sun. */
    void shade(CasterTable casters, double east, double north) {
        Arrays.fill(light, 1);
        for (int i = 0; i < casters.prisms; i++) {
            prism(casters, i, east, north);
        }
        for (int i = 0; i < casters.rounds; i++) {
            if (casters.ellipsoid[i]) {
                ellipsoid(casters, i, east, north);
            } else {
                cylinder(casters, i, east, north);
            }
        }
    }

    private void prism(CasterTable c, int prism, double east, double north) {
        int first = c.first[prism];
        int end = c.first[prism + 1];
        double bottom = c.prismBottom[prism];
        double top = c.prismTop[prism];
        double minY = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int i = first; i < end; i++) {
            minY = Math.min(minY, c.cornerY[i]);
            maxY = Math.max(maxY, c.cornerY[i]);
        }
        if (!open(minY + Math.min(bottom * north, top * north), maxY + Math.max(bottom * north, top * north))) {
            return;
        }
        // The shadow's outline is made of sides of the foot's shadow, sides of the top's, and the ways between them.
        for (int i = first, before = end - 1; i < end; before = i++) {
            double footX = c.cornerX[i] + bottom * east;
            double footY = c.cornerY[i] + bottom * north;
            double headX = c.cornerX[i] + top * east;
            double headY = c.cornerY[i] + top * north;
            side(footX, footY, headX, headY);
            side(c.cornerX[before] + bottom * east, c.cornerY[before] + bottom * north, footX, footY);
            side(c.cornerX[before] + top * east, c.cornerY[before] + top * north, headX, headY);
        }
        close(c.prismLight[prism]);
    }

    private void cylinder(CasterTable c, int round, double east, double north) {
        double r = c.radius[round];
        double footX = c.roundX[round] + c.roundBottom[round] * east;
        double footY = c.roundY[round] + c.roundBottom[round] * north;
        double headX = c.roundX[round] + c.roundTop[round] * east;
        double headY = c.roundY[round] + c.roundTop[round] * north;
        if (!open(Math.min(footY, headY) - r, Math.max(footY, headY) + r)) {
            return;
        }
        // Two discs and the two sides between them.
        double perLength = r / Math.max(Double.MIN_NORMAL, Math.sqrt(east * east + north * north));
        double acrossX = -north * perLength;
        double acrossY = east * perLength;
        side(footX + acrossX, footY + acrossY, headX + acrossX, headY + acrossY);
        side(footX - acrossX, footY - acrossY, headX - acrossX, headY - acrossY);
        for (int row = from; row <= to; row++) {
            disc(row, footX, footY, r);
            disc(row, headX, headY, r);
        }
        close(c.roundLight[round]);
    }

    private void disc(int row, double x, double y, double r) {
        double up = firstY + row * cell - y;
        double rest = r * r - up * up;
        if (rest >= 0) {
            double half = Math.sqrt(rest);
            low[row] = Math.min(low[row], x - half);
            high[row] = Math.max(high[row], x + half);
        }
    }

    private void ellipsoid(CasterTable c, int round, double east, double north) {
        double middle = (c.roundBottom[round] + c.roundTop[round]) / 2;
        double half = (c.roundTop[round] - c.roundBottom[round]) / 2;
        double x = c.roundX[round] + middle * east;
        double y = c.roundY[round] + middle * north;
        double r2 = c.radius[round] * c.radius[round];
        double a2 = half * half;
        double q12 = a2 * east * north;
        double q22 = r2 + a2 * north * north;
        double reach = Math.sqrt(q22);
        if (!open(y - reach, y + reach)) {
            return;
        }
        double across = Math.sqrt(r2 * (r2 + a2 * (east * east + north * north)) / q22);
        double lean = q12 / q22;
        for (int row = from; row <= to; row++) {
            double up = firstY + row * cell - y;
            double width = across * Math.sqrt(Math.max(0, 1 - up * up / q22));
            low[row] = x + lean * up - width;
            high[row] = x + lean * up + width;
        }
        close(c.roundLight[round]);
    }

    /** Begins a shadow between two heights of the plane; false if it has no row in the band. */
    private boolean open(double minY, double maxY) {
        from = (int) Math.max(0, Math.ceil((minY - firstY) * perM));
        to = (int) Math.min(rows - 1.0, Math.floor((maxY - firstY) * perM));
        for (int row = from; row <= to; row++) {
            low[row] = Double.POSITIVE_INFINITY;
            high[row] = Double.NEGATIVE_INFINITY;
        }
        return from <= to;
    }

    /** Widens the spans of the rows that a side crosses. */
    private void side(double x0, double y0, double x1, double y1) {
        double bottom = Math.min(y0, y1);
        double top = Math.max(y0, y1);
        int first = (int) Math.max(from, Math.ceil((bottom - firstY) * perM));
        int last = (int) Math.min(to, Math.floor((top - firstY) * perM));
        double lean = (x1 - x0) / (y1 - y0);
        if (first <= last && bottom == top) {
            low[first] = Math.min(low[first], Math.min(x0, x1));
            high[first] = Math.max(high[first], Math.max(x0, x1));
            return;
        }
        for (int row = first; row <= last; row++) {
            double x = x0 + (firstY + row * cell - y0) * lean;
            low[row] = Math.min(low[row], x);
            high[row] = Math.max(high[row], x);
        }
    }

    /** Ends a shadow: takes its spans' light away. */
    private void close(float pass) {
        for (int row = from; row <= to; row++) {
            int first = (int) Math.max(0, Math.ceil((low[row] - EDGE_M - originX) * perM));
            int end = (int) Math.min(columns, Math.floor((high[row] + EDGE_M - originX) * perM) + 1);
            if (first >= end) {
                continue;
            }
            if (pass == 0) {
                Arrays.fill(light, row * columns + first, row * columns + end, 0);
                continue;
            }
            for (int i = row * columns + first; i < row * columns + end; i++) {
                light[i] *= pass;
            }
        }
    }
}
