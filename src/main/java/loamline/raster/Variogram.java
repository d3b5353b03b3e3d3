package loamline.raster;

/**
 * Half the mean squared difference of two values, by their distance. It is 0 at distance 0 and {@code nugget} just
 * beyond.
 *
 * @param nugget in squared units of the values, 0 or more
 * @param sill what is added to the nugget far away; for {@link Shape#LINEAR} at the distance {@code rangeM}
 * @param rangeM the distance in the shape's formula, m, above 0; only for {@link Shape#SPHERICAL} is it where the curve
 *     ends
 */
public record Variogram(Shape shape, double nugget, double sill, double rangeM) {
    /** How the curve rises; u is distance over range. */
    public enum Shape {
        /** 1.5 u − 0.5 u³ up to 1. */
        SPHERICAL,
        /** 1 − exp(−u). */
        EXPONENTIAL,
        /** 1 − exp(−u²). */
        GAUSSIAN,
        /** u. */
        LINEAR;

        double at(double u) {
            return switch (this) {
                case SPHERICAL -> u < 1 ? 1.5 * u - 0.5 * u * u * u : 1;
                case EXPONENTIAL -> 1 - Math.exp(-u);
                case GAUSSIAN -> 1 - Math.exp(-u * u);
                case LINEAR -> u;
            };
        }
    }

    /** @throws IllegalArgumentException if a value is out of range */
    public Variogram {
        if (!(nugget >= 0) || !(sill >= 0) || !(nugget + sill > 0) || !(rangeM > 0)) {
            throw new IllegalArgumentException(
                    "no variogram of nugget " + nugget + ", sill " + sill + ", range " + rangeM + " m");
        }
    }

    /** Its value at a distance of 0 or more, m. */
    public double at(double distanceM) {
        return distanceM == 0 ? 0 : nugget + sill * shape.at(distanceM / rangeM);
    }

    /** The share of the whole that distance explains, 0 to 1. */
    public double structuredShare() {
        return sill / (nugget + sill);
    }
}
