package loamline.sampling.walk;

import loamline.geometry.Point;

/**
 * Where one stands to reach a stop.
 *
 * @param at on open ground or its edge; the stop itself if that cannot be reached
 * @param legM from there to the stop, m
 * @param standing whether the stop can be reached, and if not, why
 */
record Foothold(Point at, double legM, Ways.Standing standing) {
    boolean isOpen() {
        return standing == Ways.Standing.OPEN;
    }

    Foothold movedTo(Point place) {
        return new Foothold(place, legM, standing);
    }
}
