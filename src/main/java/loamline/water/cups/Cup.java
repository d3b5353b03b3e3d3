package loamline.water.cups;

import java.util.OptionalInt;
import loamline.geometry.Point;

/**
 * What one cup caught.
 *
 * @param name what is written on it
 * @param at where it stood
 * @param ml what was in it, millilitres, 0 or more
 * @param throatCm2 area of its opening, above 0
 * @param minutes how long the valve ran, above 0
 * @param line the line of the list it was read from, if it was
 */
public record Cup(String name, Point at, double ml, double throatCm2, double minutes, OptionalInt line) {
    /** The opening of usual cups, cm² (16.6 in²). */
    public static final double USUAL_THROAT_CM2 = 107.1;

    /** 10 mm of depth to a centimetre, 60 minutes to an hour. */
    private static final double MM_H_PER_CM_MIN = 600;

    /** @throws IllegalArgumentException if a value is out of range */
    public Cup {
        boolean sound = ml >= 0 && throatCm2 > 0 && minutes > 0 && Double.isFinite(ml + throatCm2 + minutes);
        if (!sound) {
            throw new IllegalArgumentException("a cup needs 0 ml or more, a throat and minutes above 0, not " + ml
                    + " ml, " + throatCm2 + " cm², " + minutes + " min");
        }
    }

    /** The rate it measured, mm/h. */
    public double rateMmH() {
        return rateMmH(ml);
    }

    /** The rate that an amount in this cup would mean, mm/h. */
    double rateMmH(double amountMl) {
        return MM_H_PER_CM_MIN * amountMl / (throatCm2 * minutes);
    }
}
