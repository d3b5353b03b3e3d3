package loamline.sun;

import java.util.List;
import loamline.geometry.Point;

/**
 * A thing that stands in the sun's way.
 *
 * <p>Heights in m above the ground, the bottom 0 or more and not above the top; light is the share of the sun that
 * passes, 0 (none) to 1.
 */
sealed interface Caster {
    double bottomM();

    double topM();

    double light();

    /** An upright thing over a convex footprint: three corners or more, or two for a screen without thickness. */
    record Prism(List<Point> corners, double bottomM, double topM, double light) implements Caster {
        public Prism {
            corners = List.copyOf(corners);
            requireSense(bottomM, topM, light);
            if (corners.size() < 2) {
                throw new IllegalArgumentException("a prism needs at least two corners");
            }
        }
    }

    /** An upright cylinder. */
    record Cylinder(Point at, double radiusM, double bottomM, double topM, double light) implements Caster {
        public Cylinder {
            requireSense(bottomM, topM, light);
        }
    }

    /** A solid of revolution, an ellipse seen from the side, a circle from above. */
    record Ellipsoid(Point at, double radiusM, double bottomM, double topM, double light) implements Caster {
        public Ellipsoid {
            requireSense(bottomM, topM, light);
        }
    }

    private static void requireSense(double bottomM, double topM, double light) {
        if (!(bottomM >= 0 && topM >= bottomM && Double.isFinite(topM) && light >= 0 && light <= 1)) {
            throw new IllegalArgumentException(
                    "no shadow caster from " + bottomM + " to " + topM + " m that passes " + light + " of the light");
        }
    }
}
