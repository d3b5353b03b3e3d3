package loamline.sun;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loamline.geometry.Point;

/** Shadow casters and suns for tests. */
final class Scenes {
    private static final Instant ANY = Instant.EPOCH;

    private Scenes() {}

    static SunPosition sun(double azimuthDeg, double elevationDeg) {
        return new SunPosition(ANY, azimuthDeg, elevationDeg);
    }

    /** The sun at an hour angle (hours after noon), for a latitude and a declination in degrees. */
    static SunPosition sun(double latitudeDeg, double declinationDeg, double hours) {
        double lat = Math.toRadians(latitudeDeg);
        double dec = Math.toRadians(declinationDeg);
        double h = Math.toRadians(15 * hours);
        double up = Math.sin(lat) * Math.sin(dec) + Math.cos(lat) * Math.cos(dec) * Math.cos(h);
        double east = -Math.cos(dec) * Math.sin(h);
        double north = Math.cos(lat) * Math.sin(dec) - Math.sin(lat) * Math.cos(dec) * Math.cos(h);
        double azimuth = Math.toDegrees(Math.atan2(east, north));
        return sun(azimuth < 0 ? azimuth + 360 : azimuth, Math.toDegrees(Math.asin(up)));
    }

    static Caster.Prism box(double x0, double y0, double x1, double y1, double heightM) {
        return new Caster.Prism(
                List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)), 0, heightM, 0);
    }

    static Caster.Prism screen(double x0, double y0, double x1, double y1, double heightM, double light) {
        return new Caster.Prism(List.of(new Point(x0, y0), new Point(x1, y1)), 0, heightM, light);
    }

    /** So many casters of all sorts in a yard of so many metres. */
    static List<Caster> random(long seed, int count, double widthM, double heightM) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Caster> casters = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point at = new Point(random.nextDouble(widthM), random.nextDouble(heightM));
            double top = 1 + random.nextDouble(9);
            double bottom = random.nextDouble(top);
            double light = random.nextBoolean() ? 0 : random.nextDouble();
            casters.add(
                    switch (i % 5) {
                        case 0 -> new Caster.Prism(polygon(random, at), 0, top, 0);
                        case 1 -> new Caster.Cylinder(at, 0.2 + random.nextDouble(4), bottom, top, light);
                        case 2 -> new Caster.Ellipsoid(at, 0.5 + random.nextDouble(4), bottom, top, light);
                        case 3 -> new Caster.Prism(polygon(random, at), top, top, 0);
                        default ->
                            new Caster.Prism(
                                    List.of(at, at.plus(random.nextDouble(-9, 9), random.nextDouble(-9, 9))),
                                    0,
                                    top,
                                    light);
                    });
        }
        return casters;
    }

    /** Corners on a circle, either way round. */
    private static List<Point> polygon(SplittableRandom random, Point at) {
        int corners = random.nextInt(3, 8);
        double radius = 1 + random.nextDouble(5);
        double start = random.nextDouble(6);
        int way = random.nextBoolean() ? 1 : -1;
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = start + way * 2 * Math.PI * i / corners;
            ring.add(at.plus(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        return ring;
    }
}
