package loamline.sun;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;

/** Shadows as exact ground (round ones as polygons of many corners): the oracle of the sun maps. */
final class ShadowPolygons {
    private static final int CORNERS = 256;

    private ShadowPolygons() {}

    static Region of(Caster caster, SunPosition sun) {
        double east = sun.shadowEastM();
        double north = sun.shadowNorthM();
        double bottom = caster.bottomM();
        double top = caster.topM();
        if (caster instanceof Caster.Prism prism) {
            return swept(prism.corners(), bottom * east, bottom * north, top * east, top * north);
        }
        if (caster instanceof Caster.Cylinder c) {
            return Region.union(List.of(
                    ellipse(c.at().plus(bottom * east, bottom * north), 1, 0, c.radiusM(), c.radiusM()),
                    ellipse(c.at().plus(top * east, top * north), 1, 0, c.radiusM(), c.radiusM()),
                    band(c, east, north)));
        }
        Caster.Ellipsoid e = (Caster.Ellipsoid) caster;
        double middle = (top + bottom) / 2;
        double half = (top - bottom) / 2;
        double length = Math.hypot(east, north);
        // As the shadow of a sphere with heights scaled by r / half: long axis r / sin of the scaled elevation.
        double scaled = Math.atan(e.radiusM() / half / length);
        return ellipse(
                e.at().plus(middle * east, middle * north),
                east / length,
                north / length,
                e.radiusM() / Math.sin(scaled),
                e.radiusM());
    }

    private static Region band(Caster.Cylinder c, double east, double north) {
        double length = Math.hypot(east, north);
        double x = -north / length * c.radiusM();
        double y = east / length * c.radiusM();
        Point foot = c.at().plus(c.bottomM() * east, c.bottomM() * north);
        Point head = c.at().plus(c.topM() * east, c.topM() * north);
        return Region.of(Outline.of(List.of(foot.plus(x, y), head.plus(x, y), head.plus(-x, -y), foot.plus(-x, -y))));
    }

    private static Region swept(List<Point> ring, double x0, double y0, double x1, double y1) {
        List<Region> parts = new ArrayList<>();
        parts.add(Region.of(Outline.of(ring.stream().map(p -> p.plus(x0, y0)).toList())));
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            parts.add(Region.of(Outline.of(List.of(a.plus(x0, y0), b.plus(x0, y0), b.plus(x1, y1), a.plus(x1, y1)))));
        }
        return Region.union(parts);
    }

    private static Region ellipse(Point centre, double alongX, double alongY, double along, double across) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < CORNERS; i++) {
            double a = along * Math.cos(2 * Math.PI * i / CORNERS);
            double b = across * Math.sin(2 * Math.PI * i / CORNERS);
            ring.add(centre.plus(a * alongX - b * alongY, a * alongY + b * alongX));
        }
        return Region.of(Outline.of(ring));
    }

    /** A rectangle from the origin. */
    static Region yard(double widthM, double heightM) {
        return Region.of(Outline.of(0, 0, widthM, 0, widthM, heightM, 0, heightM));
    }

    /** Mean share of the sun on some ground, under the casters that let no light pass. */
    static double meanLight(Region ground, List<Caster> casters, SunPosition sun) {
        Region solid = Region.union(casters.stream()
                .filter(c -> c.light() == 0)
                .map(c -> of(c, sun))
                .toList());
        return solid.isEmpty() ? 1 : 1 - solid.intersection(ground).areaM2() / ground.areaM2();
    }
}
