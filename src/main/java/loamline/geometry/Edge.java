package loamline.geometry;

/**
 * A straight piece of border with two sides, each of which may lie on open ground.
 *
 * @param from one end
 * @param to the other end
 * @param openLeft whether the ground on the left of the way from one to the other is open
 * @param openRight whether the ground on the right is
 */
public record Edge(Point from, Point to, boolean openLeft, boolean openRight) {

    /** Its length, m. */
    public double lengthM() {
        return from.distanceTo(to);
    }

    /** The place on the edge that is nearest to a point: one of the ends, or the foot of the perpendicular. */
    public Point nearestTo(Point p) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double along = (p.x() - from.x()) * dx + (p.y() - from.y()) * dy;
        double squared = dx * dx + dy * dy;
        if (along <= 0) {
            return from;
        }
        return along >= squared ? to : from.towards(to, along / squared);
    }

    /** Distance from a point to the edge, m. */
    public double distanceTo(Point p) {
        return nearestTo(p).distanceTo(p);
    }

    /** The same edge, with its ends in order of x, then y. */
    Edge upright() {
        boolean inOrder = from.x() < to.x() || (from.x() == to.x() && from.y() <= to.y());
        return inOrder ? this : new Edge(to, from, openRight, openLeft);
    }

    /** The same sides on other ends. */
    public Edge with(Point newFrom, Point newTo) {
        return new Edge(newFrom, newTo, openLeft, openRight);
    }
}
