package loamline.sun;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.yard.Panel;
import loamline.yard.Yard;

/**
 * Where a flat panel throws the sun's reflection on level ground, as a mirror does. Whether something stands in the way of
 * the light, before the panel or after it, is not looked at: it is where glare can be.
 *
 * @param panel key of the panel
 * @param sun where the sun stands
 * @param ground the lit quadrangle
 */
public record Glare(String panel, SunPosition sun, Outline ground) {
    /** Reflected light that falls less than this over 1 m lands too far away to matter. */
    static final double LEAST_FALL = 0.01;

    /** The reflections of all panels of a yard, panel by panel, each at every position at which there is one. */
    public static List<Glare> of(Yard yard, List<SunPosition> positions) {
        return yard.all(Panel.class)
                .flatMap(panel -> faces(panel).stream()
                        .flatMap(face -> positions.stream().flatMap(sun -> face.thrown(panel.key(), sun))))
                .toList();
    }

    private static List<Face> faces(Panel panel) {
        List<Point> base = panel.base().points();
        List<Face> faces = new ArrayList<>();
        for (int i = 1; i < base.size(); i++) {
            if (!base.get(i - 1).equals(base.get(i))) {
                faces.add(Face.of(panel, base.get(i - 1), base.get(i)));
            }
        }
        return faces;
    }

    /** A direction or an offset in space: east, north, up. */
    private record Vector(double x, double y, double z) {
        double dot(Vector other) {
            return x * other.x + y * other.y + z * other.z;
        }

        static Vector towards(SunPosition sun) {
            double azimuth = Math.toRadians(sun.azimuthDeg());
            double elevation = Math.toRadians(sun.elevationDeg());
            return new Vector(
                    Math.sin(azimuth) * Math.cos(elevation),
                    Math.cos(azimuth) * Math.cos(elevation),
                    Math.sin(elevation));
        }
    }

    /**
     * A flat rectangle over one side of a panel's base.
     *
     * @param normal of length 1, out of the face
     * @param rise from its lower to its upper edge
     */
    private record Face(Point from, Point to, double bottomM, Vector normal, Vector rise) {
        /** It faces the left side of the base; a positive tilt leans it back, so that it looks up. */
        static Face of(Panel panel, Point from, Point to) {
            double length = from.distanceTo(to);
            double leftX = -(to.y() - from.y()) / length;
            double leftY = (to.x() - from.x()) / length;
            double up = Math.sin(Math.toRadians(panel.tiltDeg()));
            double out = Math.cos(Math.toRadians(panel.tiltDeg()));
            return new Face(
                    from,
                    to,
                    panel.bottomM(),
                    new Vector(out * leftX, out * leftY, up),
                    new Vector(-up * leftX * panel.heightM(), -up * leftY * panel.heightM(), out * panel.heightM()));
        }

        Stream<Glare> thrown(String key, SunPosition sun) {
            Vector s = Vector.towards(sun);
            double front = s.dot(normal);
            Vector away =
                    new Vector(2 * front * normal.x - s.x, 2 * front * normal.y - s.y, 2 * front * normal.z - s.z);
            if (!sun.isUp() || front <= 0 || away.z > -LEAST_FALL) {
                return Stream.empty();
            }
            double top = bottomM + rise.z;
            return Stream.of(new Glare(
                    key,
                    sun,
                    Outline.of(List.of(
                            landed(from, bottomM, away),
                            landed(to, bottomM, away),
                            landed(to.plus(rise.x, rise.y), top, away),
                            landed(from.plus(rise.x, rise.y), top, away)))));
        }

        private static Point landed(Point above, double heightM, Vector away) {
            double far = heightM / -away.z;
            return above.plus(away.x * far, away.y * far);
        }
    }
}
