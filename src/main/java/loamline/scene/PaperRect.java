package loamline.scene;

import java.util.List;
import loamline.geometry.Point;

/**
 * A rectangle on paper, millimetres from the upper left corner; y down.
 *
 * @param widthMm 0 or more
 * @param heightMm 0 or more
 */
public record PaperRect(double leftMm, double topMm, double widthMm, double heightMm) {
    /** @throws IllegalArgumentException if a side is negative or not finite */
    public PaperRect {
        if (!(widthMm >= 0 && heightMm >= 0 && Double.isFinite(leftMm + topMm + widthMm + heightMm))) {
            throw new IllegalArgumentException(
                    "no rectangle of " + widthMm + " x " + heightMm + " mm at " + leftMm + ", " + topMm);
        }
    }

    /** The rectangle of a size with its middle at a point. */
    public static PaperRect centred(Point middle, double widthMm, double heightMm) {
        return new PaperRect(middle.x() - widthMm / 2, middle.y() - heightMm / 2, widthMm, heightMm);
    }

    public double rightMm() {
        return leftMm + widthMm;
    }

    public double bottomMm() {
        return topMm + heightMm;
    }

    public Point corner() {
        return new Point(leftMm, topMm);
    }

    public Point centre() {
        return new Point(leftMm + widthMm / 2, topMm + heightMm / 2);
    }

    /** Whether the two share more than an edge. */
    public boolean overlaps(PaperRect other) {
        return leftMm < other.rightMm()
                && other.leftMm < rightMm()
                && topMm < other.bottomMm()
                && other.topMm < bottomMm();
    }

    /** Whether another lies inside, edges included. */
    public boolean contains(PaperRect other) {
        return other.leftMm >= leftMm
                && other.rightMm() <= rightMm()
                && other.topMm >= topMm
                && other.bottomMm() <= bottomMm();
    }

    public PaperRect moved(double dxMm, double dyMm) {
        return new PaperRect(leftMm + dxMm, topMm + dyMm, widthMm, heightMm);
    }

    /** Grown on every side; shrunk by a negative margin, to no less than nothing. */
    public PaperRect grown(double marginMm) {
        return centred(centre(), Math.max(0, widthMm + 2 * marginMm), Math.max(0, heightMm + 2 * marginMm));
    }

    /** The corners, clockwise from the upper left. */
    public List<Point> corners() {
        return List.of(
                corner(), corner().plus(widthMm, 0), corner().plus(widthMm, heightMm), corner().plus(0, heightMm));
    }

    /** Its outline. */
    public Path path() {
        return Path.closed(corners().toArray(Point[]::new));
    }
}
