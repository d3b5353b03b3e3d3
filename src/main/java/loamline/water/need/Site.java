package loamline.water.need;

/**
 * Where on the earth the water evaporates.
 *
 * @param latitudeDeg degrees, north positive, -90 to 90
 * @param elevationM above sea level, m, -500 to 9000
 */
public record Site(double latitudeDeg, double elevationM) {
    /** The radiation equations are weak nearer to the poles: FAO-56, chapter 3. */
    static final double WEAK_BEYOND_DEG = 55;

    public Site {
        require("latitudeDeg", latitudeDeg, -90, 90);
        require("elevationM", elevationM, -500, 9000);
    }

    private static void require(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " = " + value + " must be " + least + " to " + most);
        }
    }

    double latitudeRad() {
        return Math.toRadians(latitudeDeg);
    }
}
