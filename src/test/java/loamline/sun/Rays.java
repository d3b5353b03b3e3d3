package loamline.sun;

import java.util.List;
import loamline.geometry.Point;

/** The slow, obvious twin of {@link ShadowBand}: one way to the sun against one caster. */
final class Rays {
    private Rays() {}

    /** Share of the sun that reaches a point of the ground. */
    static double light(Point ground, SunPosition sun, List<Caster> casters) {
        return casters.stream()
                .mapToDouble(caster -> meets(ground, sun, caster) ? caster.light() : 1)
                .reduce(1, (a, b) -> a * b);
    }

    /** Whether the edge of a shadow lies nearer than a distance. */
    static boolean isNearAnEdge(Point p, SunPosition sun, List<Caster> casters, double m) {
        double here = light(p, sun, casters);
        return List.of(p.plus(m, 0), p.plus(-m, 0), p.plus(0, m), p.plus(0, -m)).stream()
                .anyMatch(beside -> light(beside, sun, casters) != here);
    }

    private static boolean meets(Point p, SunPosition sun, Caster caster) {
        double azimuth = Math.toRadians(sun.azimuthDeg());
        double x = Math.sin(azimuth);
        double y = Math.cos(azimuth);
        double slope = Math.tan(Math.toRadians(sun.elevationDeg()));
        double enter = caster.bottomM() / slope;
        double leave = caster.topM() / slope;
        Point low = p.plus(x * enter, y * enter);
        Point high = p.plus(x * leave, y * leave);
        if (caster instanceof Caster.Cylinder c) {
            return distance(c.at(), low, high) <= c.radiusM();
        }
        if (caster instanceof Caster.Prism prism) {
            return prism.corners().size() == 2
                    ? crosses(low, high, prism.corners().get(0), prism.corners().get(1))
                    : cuts(low, high, prism.corners());
        }
        Caster.Ellipsoid e = (Caster.Ellipsoid) caster;
        // |((p + t u − c) / r, (t slope − middle) / half)| = 1 as a quadratic in t.
        double half = (e.topM() - e.bottomM()) / 2;
        double ox = (p.x() - e.at().x()) / e.radiusM();
        double oy = (p.y() - e.at().y()) / e.radiusM();
        double oz = -(e.topM() + e.bottomM()) / 2 / half;
        double dx = x / e.radiusM();
        double dy = y / e.radiusM();
        double dz = slope / half;
        double a = dx * dx + dy * dy + dz * dz;
        double b = ox * dx + oy * dy + oz * dz;
        return b * b - a * (ox * ox + oy * oy + oz * oz - 1) >= 0;
    }

    private static double distance(Point p, Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double along = ((p.x() - from.x()) * dx + (p.y() - from.y()) * dy) / (dx * dx + dy * dy);
        double share = Double.isNaN(along) ? 0 : Math.max(0, Math.min(1, along));
        return p.distanceTo(from.towards(to, share));
    }

    private static double side(Point from, Point to, Point p) {
        return (to.x() - from.x()) * (p.y() - from.y()) - (to.y() - from.y()) * (p.x() - from.x());
    }

    private static boolean crosses(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
    }

    private static boolean cuts(Point low, Point high, List<Point> ring) {
        boolean inside = true;
        boolean crossed = false;
        double turn = side(ring.get(0), ring.get(1), ring.get(2));
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.get(i);
            Point to = ring.get((i + 1) % ring.size());
            inside &= side(from, to, low) * turn >= 0;
            crossed |= crosses(low, high, from, to);
        }
        return inside || crossed;
    }
}
