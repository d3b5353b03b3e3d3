package loamline.yard;

import loamline.geometry.Point;

/**
 * A distance on the ground that somebody measured, and its two ends on the image.
 *
 * @param from in pixels: x is the column and y the row, counted from the image's upper left corner, y down
 * @param to likewise, another place
 * @param lengthM the length on the ground, m, above 0
 */
public record KnownDistance(Point from, Point to, double lengthM) {
    /** @throws IllegalArgumentException if the ends are one place or the length is not above 0 and finite */
    public KnownDistance {
        if (from.equals(to) || !(lengthM > 0) || !Double.isFinite(lengthM)) {
            throw new IllegalArgumentException("no distance of " + lengthM + " m from " + from + " to " + to
                    + ": it needs two ends and a length above 0");
        }
    }

    /** Its length on the image, px. */
    public double lengthPx() {
        return from.distanceTo(to);
    }
}
