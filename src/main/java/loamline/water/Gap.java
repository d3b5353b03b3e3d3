package loamline.water;

import loamline.geometry.Point;
import loamline.geometry.Region;

/**
 * Turf in one piece that no head reaches.
 *
 * @param id g1 the largest, then g2 …
 * @param ground the piece, never empty
 * @param zone the zone that has most of it
 */
public record Gap(String id, Region ground, String zone) {
    public double areaM2() {
        return ground.areaM2();
    }

    /** Centre of gravity; it may lie outside a crooked piece. */
    public Point centroid() {
        return ground.centroid().orElseThrow();
    }
}
