package loamline.demo;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.yard.Head;

/** The ground a head throws on. */
final class Throws {
    /** A chord of this step is inside its arc by at most 1e-7 of the radius. */
    private static final double STEP_DEG = 0.05;

    /** What the chords of a dozen discs of 9 m may miss, m². */
    static final double AREA_TOLERANCE_M2 = 1e-4;

    private Throws() {}

    /** The sector of a head. */
    static Region of(Head head) {
        double radius = head.radiusM().orElseThrow();
        List<Point> ring = new ArrayList<>();
        if (head.arcSweepDeg() < 360) {
            ring.add(head.at());
        }
        long steps = Math.round(head.arcSweepDeg() / STEP_DEG);
        for (long i = 0; i <= steps; i++) {
            double azimuth = Math.toRadians(head.arcStartDeg() + head.arcSweepDeg() * i / steps);
            ring.add(head.at().plus(radius * Math.sin(azimuth), radius * Math.cos(azimuth)));
        }
        return Region.of(Outline.of(ring));
    }
}
