package loamline.water;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.Region;

/**
 * The ground a head reaches, as a region.
 *
 * <p>The rim is drawn as chords whose ends lie a little outside the circle and whose middles a little inside, so that
 * the region has the area of the arc and lies within {@link #CHORD_ERROR_M} of it everywhere.
 */
final class Reach {
    /** How far the drawn rim is off the circle, m: three millimetres, less than anybody sets a head to. */
    static final double CHORD_ERROR_M = 0.003;

    /** And as a share of the radius, for small circles: it keeps their water. */
    private static final double CHORD_ERROR_SHARE = 1 / 2000.0;

    /** Chords of the largest circle anybody has use for; more would not show. */
    private static final int MOST_CHORDS = 2000;

    private Reach() {}

    static Region of(HeadPattern head) {
        double sweep = Math.toRadians(head.arc().sweepDeg());
        // ends outside by r·a²/12, middles inside by r·a²/24, a the angle of a chord
        double errorShare = Math.min(CHORD_ERROR_SHARE, CHORD_ERROR_M / head.radiusM());
        double widest = Math.sqrt(12 * errorShare);
        int chords = (int) Math.max(3, Math.min(MOST_CHORDS, Math.ceil(sweep / widest)));
        double angle = sweep / chords;
        double radiusM = head.radiusM() * Math.sqrt(angle / Math.sin(angle));
        List<Point> ring = new ArrayList<>();
        if (!head.arc().isFull()) {
            ring.add(head.at());
        }
        for (int i = 0; i < chords + (head.arc().isFull() ? 0 : 1); i++) {
            double azimuthDeg = head.arc().startDeg() + head.arc().sweepDeg() * i / chords;
            ring.add(head.at().plus(radiusM * Arc.sinDeg(azimuthDeg), radiusM * Arc.sinDeg(azimuthDeg + 90)));
        }
        return Region.inside(ring);
    }
}
