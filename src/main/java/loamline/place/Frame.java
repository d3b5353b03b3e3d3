package loamline.place;

import java.util.Optional;
import loamline.geometry.Point;

/**
 * The yard's plane: x metres east, y metres north.
 *
 * <p>Tied to the earth, it touches the ellipsoid at its origin: transverse Mercator of WGS 84, scale 1 at the
 * origin's meridian. Within 1 km of the origin, areas agree with the ellipsoid to 3e-8 (scale error x²/2R²).
 *
 * @param origin the place of x = 0, y = 0; empty for a drawing that has a scale but no place
 */
public record Frame(Optional<LonLat> origin) {
    /** Places from the earth are kept in steps of a micrometre, which makes a round trip exact. */
    public static final double STEPS_PER_M = 1e6;

    /** The plane of a drawing without a place. */
    public static Frame local() {
        return new Frame(Optional.empty());
    }

    /** A plane tied to the earth. */
    public static Frame at(LonLat origin) {
        return new Frame(Optional.of(origin));
    }

    /** A point moved to the nearest step of 1 / {@link #STEPS_PER_M} metres. */
    public static Point onStep(Point p) {
        return new Point(Math.rint(p.x() * STEPS_PER_M) / STEPS_PER_M, Math.rint(p.y() * STEPS_PER_M) / STEPS_PER_M);
    }
}
