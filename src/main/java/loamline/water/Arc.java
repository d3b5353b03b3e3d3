package loamline.water;

import java.util.Locale;

/**
 * The part of the compass a head throws into. Immutable.
 *
 * <p>Borders: a point on the first edge, or nearer to it than {@link #EDGE_M}, is in; one on the second edge is not.
 * So two arcs that share an edge never both hold a point, and a sum over cells keeps the flow; the head's own place is
 * in arcs wider than half a turn. Edges along the axes are exact.
 */
public final class Arc {
    /** All round, degrees. */
    public static final double FULL_DEG = 360;

    /** How near to an edge counts as on it, m: far above rounding, far below any cell. */
    static final double EDGE_M = 1e-9;

    private static final double HALF_DEG = 180;
    private static final double QUARTER_DEG = 90;

    private final double startDeg;
    private final double sweepDeg;
    private final double startX;
    private final double startY;
    private final double endX;
    private final double endY;

    private Arc(double startDeg, double sweepDeg) {
        this.startDeg = startDeg;
        this.sweepDeg = sweepDeg;
        double endDeg = (startDeg + sweepDeg) % FULL_DEG;
        this.startX = sinDeg(startDeg);
        this.startY = sinDeg(startDeg + QUARTER_DEG);
        this.endX = sinDeg(endDeg);
        this.endY = sinDeg(endDeg + QUARTER_DEG);
    }

    /**
     * An arc.
     *
     * @param startDeg azimuth of the first edge, any finite number
     * @param sweepDeg clockwise from the first edge, above 0 to 360
     * @throws IllegalArgumentException if a value is out of range
     */
    public static Arc of(double startDeg, double sweepDeg) {
        if (!Double.isFinite(startDeg) || !(sweepDeg > 0 && sweepDeg <= FULL_DEG)) {
            throw new IllegalArgumentException("an arc starts at any azimuth and sweeps above 0 to 360 degrees, not "
                    + startDeg + ", " + sweepDeg);
        }
        double turned = startDeg % FULL_DEG;
        return new Arc(turned < 0 ? turned + FULL_DEG : turned, sweepDeg);
    }

    /** Azimuth of the first edge, 0 to below 360. */
    public double startDeg() {
        return startDeg;
    }

    /** Degrees clockwise from the first edge to the second, above 0 to 360. */
    public double sweepDeg() {
        return sweepDeg;
    }

    /** Azimuth of its middle. */
    public double middleDeg() {
        return (startDeg + sweepDeg / 2) % FULL_DEG;
    }

    public boolean isFull() {
        return sweepDeg >= FULL_DEG;
    }

    /** Its share of a full turn, above 0 to 1. */
    public double share() {
        return sweepDeg / FULL_DEG;
    }

    /** The same arc turned clockwise. */
    public Arc turnedBy(double deg) {
        return of(startDeg + deg, sweepDeg);
    }

    /**
     * Whether a point lies in it.
     *
     * @param dx metres east of the head
     * @param dy metres north of the head
     */
    public boolean holds(double dx, double dy) {
        if (isFull()) {
            return true;
        }
        return sweepDeg == HALF_DEG
                ? pastHalf(dx, dy)
                : sweepDeg < HALF_DEG ? pastStart(dx, dy) && beforeEnd(dx, dy) : pastStart(dx, dy) || beforeEnd(dx, dy);
    }

    /** Within half a turn clockwise of the first edge, its line included. */
    private boolean pastStart(double dx, double dy) {
        return startY * dx - startX * dy >= -EDGE_M;
    }

    /** Within half a turn anticlockwise of the second edge, its line left out. */
    private boolean beforeEnd(double dx, double dy) {
        return endY * dx - endX * dy < -EDGE_M;
    }

    /** Within half a turn clockwise of the first edge; of its line, only the edge itself. */
    private boolean pastHalf(double dx, double dy) {
        double past = startY * dx - startX * dy;
        return past > EDGE_M || (past >= -EDGE_M && startX * dx + startY * dy > 0);
    }

    double startX() {
        return startX;
    }

    double startY() {
        return startY;
    }

    double endX() {
        return endX;
    }

    double endY() {
        return endY;
    }

    /** Sine of an angle in degrees, exact at multiples of 90. */
    static double sinDeg(double deg) {
        double quarters = Math.rint(deg / QUARTER_DEG);
        double rest = Math.toRadians(deg - QUARTER_DEG * quarters);
        return switch (Math.floorMod((long) quarters, 4)) {
            case 0 -> Math.sin(rest);
            case 1 -> Math.cos(rest);
            case 2 -> -Math.sin(rest);
            default -> -Math.cos(rest);
        };
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Arc other && startDeg == other.startDeg && sweepDeg == other.sweepDeg;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(startDeg) + Double.hashCode(sweepDeg);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s° + %s°", startDeg, sweepDeg);
    }
}
