package loamline.water;

import loamline.raster.GridSpec;

/**
 * <b>What.</b> Adds the rate of heads to cells of a window, sampled at their middles.
 *
 * <p><b>Units and shape.</b> mm/h; row-major from the south-west cell of the window.
 *
 * <p><b>NaN.</b> None comes in or out.
 *
 * <p><b>Ties and borders.</b> As {@link HeadPattern#reaches}: the rim and the first edge of the arc are in, the second
 * edge is not.
 *
 * <p><b>Accuracy.</b> Each cell is within {@link #ACCURACY} of {@link HeadPattern#rateMmH} at its middle, as a share of
 * the head's scale. Sampling moves every edge of a pattern to the nearest line between cells. Over all places of the
 * lattice that cancels, so the sum over cells keeps the flow on average, for every profile and arc; for one head it
 * keeps it to {@link #FLOW_ACCURACY} where water thins out to nothing at the rim and the arc is full or its edges lie
 * on lines between cells. An edge along the lines that lies between them gains or loses a strip of up to half a cell:
 * 0.1 m cells, a quarter of 7 m radius, 1 % in the mean, 4 % at worst. Sums that must balance come from {@link
 * ThrownWater}, which does not sample.
 *
 * <p><b>Cost.</b> The cells the head reaches. Each row is cut where the edges of the arc cross it, so that the loops
 * over cells have no branch.
 */
final class RateKernel {
    /** Rounding of a square root and a few products, as a share of the head's scale. */
    static final double ACCURACY = 1e-12;

    /** Share of the flow that sampling may lose or gain with edges on lines between cells of a fiftieth of the radius. */
    static final double FLOW_ACCURACY = 1e-3;

    /** Places where a row is cut: its two ends, and three about each edge, for rounding. */
    private static final int MOST_CUTS = 8;

    private final GridSpec grid;
    private final Window window;
    private final double[] rates;

    /** Where cells are added to, in columns from the window's first and rows of the grid. */
    private final int westColumn;

    private final int eastColumn;
    private final int fromRow;
    private final int toRow;
    private final double perCell;

    // scratch for one head and one row; columns count from the window's first
    private final double[] eastM2;
    private final double[] shape;
    private final int[] cuts = new int[MOST_CUTS];
    private double headColumn;
    private double startSlope;
    private double endSlope;

    /**
     * @param window the cells that {@code rates} has
     * @param part the cells of the window to add to
     */
    RateKernel(GridSpec grid, Window window, Window part, double[] rates) {
        this.grid = grid;
        this.window = window;
        this.rates = rates;
        this.westColumn = part.column() - window.column();
        this.eastColumn = part.endColumn() - window.column();
        this.fromRow = part.row();
        this.toRow = part.endRow();
        this.perCell = 1 / grid.cellM();
        this.eastM2 = new double[window.columns()];
        this.shape = new double[window.columns()];
    }

    /** Adds a head. */
    void add(HeadPattern head) {
        startSlope = slope(head.arc().startX(), head.arc().startY());
        endSlope = slope(head.arc().endX(), head.arc().endY());
        headColumn = (head.at().x() - grid.originX()) / grid.cellM() - 0.5 - window.column();
        double reachM = Math.sqrt(head.reachM2());
        int west = column(-reachM);
        int east = column(reachM);
        Window reach = Window.of(grid, head);
        int firstRow = Math.max(fromRow, reach.row());
        int endRow = Math.min(toRow, reach.endRow());
        if (firstRow >= endRow || west >= east || head.flowLpm() == 0) {
            return;
        }
        for (int i = west; i < east; i++) {
            eastM2[i] = eastM(head, i) * eastM(head, i);
        }
        double scale = head.scaleMmH();
        for (int row = firstRow; row < endRow; row++) {
            addRow(head, scale, row);
        }
    }

    private double eastM(HeadPattern head, int column) {
        return grid.xOf(window.column() + column) - head.at().x();
    }

    private void addRow(HeadPattern head, double scale, int row) {
        double northM = grid.yOf(row) - head.at().y();
        int start = (row - window.row()) * window.columns();
        int last = cut(head, northM) - 1;
        int from = cuts[0];
        for (int i = 0; i <= last; i++) {
            boolean end = i == last;
            if (end || (cuts[i] < cuts[i + 1] && !head.arc().holds(eastM(head, cuts[i]), northM))) {
                if (from < cuts[i]) {
                    head.profile().row(shape, from, cuts[i], eastM2, northM * northM, head.radiusM());
                    addScaled(shape, scale, from, cuts[i], start);
                }
                from = end ? from : cuts[i + 1];
            }
        }
    }

    private void addScaled(double[] shape, double scale, int from, int to, int start) {
        for (int i = from; i < to; i++) {
            rates[start + i] += scale * shape[i];
        }
    }

    /** Cuts a row where the circle begins and ends and about where edges cross; rising, returns how many cuts. */
    private int cut(HeadPattern head, double northM) {
        double halfM = Math.sqrt(Math.max(0, head.reachM2() - northM * northM));
        int west = column(-halfM);
        int east = Math.max(west, column(halfM));
        int count = 0;
        cuts[count++] = west;
        if (!head.arc().isFull() && west < east) {
            int start = column(northM * startSlope);
            int end = column(northM * endSlope);
            count = cutAbout(Math.min(start, end), east, count);
            count = cutAbout(Math.max(start, end), east, count);
        }
        cuts[count++] = east;
        return count;
    }

    /** Cuts before, at and after a column, as far as these lie past the last cut. */
    private int cutAbout(int column, int east, int count) {
        int next = count;
        for (int i = column - 1; i <= column + 1; i++) {
            cuts[next] = Math.max(cuts[next - 1], Math.min(east, i));
            next++;
        }
        return next;
    }

    /** How far east the line of an edge runs for a metre north; 0 for one that runs along the rows. */
    private static double slope(double edgeX, double edgeY) {
        return edgeY == 0 ? 0 : edgeX / edgeY;
    }

    /** The first column whose middle is so far east of the head or farther, within the part. */
    private int column(double eastM) {
        double column = Math.ceil(headColumn + eastM * perCell);
        return (int) Math.max(westColumn, Math.min(eastColumn, column));
    }
}
