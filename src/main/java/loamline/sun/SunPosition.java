package loamline.sun;

import java.time.Instant;

/**
 * Where the sun stands.
 *
 * @param utc when
 * @param azimuthDeg direction of the sun, degrees clockwise from north, 0 to 360
 * @param elevationDeg height of its centre above a flat horizon, degrees, without refraction; below 0 at night
 */
public record SunPosition(Instant utc, double azimuthDeg, double elevationDeg) {
    /** @throws IllegalArgumentException if an angle is out of range */
    public SunPosition {
        if (!(azimuthDeg >= 0 && azimuthDeg <= 360 && Math.abs(elevationDeg) <= 90)) {
            throw new IllegalArgumentException(
                    "no sun at azimuth " + azimuthDeg + " (0 to 360), elevation " + elevationDeg + " (-90 to 90)");
        }
    }

    public boolean isUp() {
        return elevationDeg > 0;
    }

    /** Whether it stands in the east, so that the day has its noon before it. */
    public boolean isMorning() {
        return azimuthDeg < 180;
    }

    /** How far east the shadow of a thing 1 m high reaches, m; only while the sun is up. */
    double shadowEastM() {
        return -Math.sin(Math.toRadians(azimuthDeg)) / Math.tan(Math.toRadians(elevationDeg));
    }

    /** How far north it reaches, m. */
    double shadowNorthM() {
        return -Math.cos(Math.toRadians(azimuthDeg)) / Math.tan(Math.toRadians(elevationDeg));
    }
}
