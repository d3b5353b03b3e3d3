package loamline.place;

/**
 * A place on the earth, WGS 84.
 *
 * @param lonDeg degrees east, -180 to 180
 * @param latDeg degrees north, -90 to 90
 */
public record LonLat(double lonDeg, double latDeg) {
    /** @throws IllegalArgumentException if NaN or off the earth; {@link #isOnEarth} asks first */
    public LonLat {
        if (!isOnEarth(lonDeg, latDeg)) {
            throw new IllegalArgumentException("longitude " + lonDeg + " (-180 to 180), latitude " + latDeg
                    + " (-90 to 90): not a place on the earth");
        }
    }

    /** Whether both numbers are in range; false for NaN. */
    public static boolean isOnEarth(double lonDeg, double latDeg) {
        return Math.abs(lonDeg) <= 180 && Math.abs(latDeg) <= 90;
    }

    /** A longitude, or a difference of two, brought into -180 to 180 by a whole turn; at most one turn away. */
    public static double wrapped(double lonDeg) {
        if (lonDeg > 180) {
            return lonDeg - 360;
        }
        return lonDeg < -180 ? lonDeg + 360 : lonDeg;
    }
}
