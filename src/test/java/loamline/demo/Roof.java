package loamline.demo;

import loamline.geometry.Point;

/**
 * One roof with a straight ridge, seen by the painter as a height; where roofs meet, the higher one shows.
 *
 * @param centre below the middle of the ridge
 * @param alongM length from eave to eave in the ridge's direction, m
 * @param acrossM length from eave to eave across the ridge, m
 * @param ridgeDeg direction of the ridge, degrees counter-clockwise from east
 * @param eaveHeightM height of the eaves, m
 * @param pitch rise over run
 * @param hipped whether the ends slope too
 * @param material shingle or metal
 * @param tone brightness, 1 is the material's own
 */
record Roof(
        Point centre,
        double alongM,
        double acrossM,
        double ridgeDeg,
        double eaveHeightM,
        double pitch,
        boolean hipped,
        Material material,
        double tone) {
    /** A roof over an upright rectangle, its ridge along the longer side. */
    static Roof over(double west, double south, double east, double north, double eaveHeightM, double pitch) {
        double width = east - west;
        double depth = north - south;
        Point centre = new Point((west + east) / 2, (south + north) / 2);
        return width >= depth
                ? new Roof(centre, width, depth, 0, eaveHeightM, pitch, false, Material.SHINGLE, 1)
                : new Roof(centre, depth, width, 90, eaveHeightM, pitch, false, Material.SHINGLE, 1);
    }

    /** Axes along and across the ridge, from its middle. */
    Axes axes() {
        return new Axes(centre, Math.toRadians(ridgeDeg));
    }

    Roof withHips() {
        return new Roof(centre, alongM, acrossM, ridgeDeg, eaveHeightM, pitch, true, material, tone);
    }

    Roof of(Material other, double otherTone) {
        return new Roof(centre, alongM, acrossM, ridgeDeg, eaveHeightM, pitch, hipped, other, otherTone);
    }
}
