package loamline.water;

/**
 * How water is computed.
 *
 * @param cellM side of a cell of the raster, m, above 0
 * @param obstacles whether buildings, walls and solid fences keep dry what lies behind them
 * @param yearMm depth that turf gets in a year, in the mean, mm; turns shares into volumes
 * @param driftM how far wind moves all water, m, 0 or more
 * @param driftToDeg the azimuth it moves to
 */
public record WaterOptions(double cellM, boolean obstacles, double yearMm, double driftM, double driftToDeg) {
    /** An inch a week for half the year: common practice, no source. */
    public static final double USUAL_YEAR_MM = 25.4 * 26;

    /** Cells of 0.1 m, nothing in the way, no wind. */
    public static final WaterOptions USUAL = new WaterOptions(0.1, false, USUAL_YEAR_MM, 0, 0);

    /** @throws IllegalArgumentException if a value is out of range */
    public WaterOptions {
        if (!(cellM > 0 && yearMm >= 0 && driftM >= 0)
                || !Double.isFinite(cellM + yearMm + driftM)
                || !Double.isFinite(driftToDeg)) {
            throw new IllegalArgumentException("no water with cells of " + cellM + " m, " + yearMm
                    + " mm a year, drift " + driftM + " m to " + driftToDeg);
        }
    }

    public WaterOptions withCellM(double changed) {
        return new WaterOptions(changed, obstacles, yearMm, driftM, driftToDeg);
    }

    public WaterOptions withObstacles(boolean changed) {
        return new WaterOptions(cellM, changed, yearMm, driftM, driftToDeg);
    }

    public WaterOptions withYearMm(double changed) {
        return new WaterOptions(cellM, obstacles, changed, driftM, driftToDeg);
    }

    /**
     * What if wind moved all water alike. Real wind also stretches and thins patterns, drops fine and high water
     * farther than coarse and low, and carries some off; so this shows where holes open first, not how even the lawn
     * gets.
     */
    public WaterOptions withDrift(double distanceM, double toDeg) {
        return new WaterOptions(cellM, obstacles, yearMm, distanceM, toDeg);
    }
}
