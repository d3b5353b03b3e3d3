package loamline.sampling.strata;

/**
 * A place to push the probe when a stratum's core is refused.
 *
 * @param stratum the stratum it stands in
 * @param xM easting, m
 * @param yM northing, m
 */
public record Spare(int stratum, double xM, double yM) {}
