package loamline.demo;

import java.util.List;
import loamline.geometry.Point;

/**
 * A parked car, for scale.
 *
 * @param at its middle
 * @param headingDeg where its bonnet points, degrees counter-clockwise from east
 * @param paint its colour
 */
record Car(Point at, double headingDeg, int paint) {
    private static final double HALF_LENGTH_M = 2.3;
    private static final double HALF_WIDTH_M = 0.93;
    private static final double BODY_M = 0.9;
    private static final double CABIN_M = 1.45;
    private static final int GLASS = 0x2E363B;

    /** Puts the car on a plate. */
    void park(Plate plate) {
        Axes axes = new Axes(at, Math.toRadians(headingDeg));
        List<Point> spine = List.of(axes.at(-HALF_LENGTH_M, 0), axes.at(HALF_LENGTH_M, 0));
        float[] colour = new float[3];
        plate.each(Plate.stroke(spine, 2 * HALF_WIDTH_M), (pixel, x, y, share) -> {
            double u = axes.u(x, y);
            double v = axes.v(x, y);
            if (!isBody(u / HALF_LENGTH_M, v / HALF_WIDTH_M)) {
                return;
            }
            Texture.set(colour, isGlass(u, Math.abs(v)) ? GLASS : paint, 1);
            plate.paint(pixel, colour);
            plate.aboveM[pixel] = (float) (u > -1.75 && u < 0.95 ? CABIN_M : BODY_M);
            double roll = 0.35 * v * v * v;
            plate.leanX[pixel] = (float) axes.east(0, roll);
            plate.leanY[pixel] = (float) axes.north(0, roll);
        });
    }

    /** A rectangle with round corners: a superellipse of the sixth degree. */
    private static boolean isBody(double shareU, double shareV) {
        double a = shareU * shareU;
        double b = shareV * shareV;
        return a * a * a + b * b * b <= 1;
    }

    private static boolean isGlass(double u, double v) {
        boolean screen = u > 0.4 && u < 0.9 || u > -1.7 && u < -1.25;
        boolean side = u > -1.2 && u < 0.3 && v > 0.7 && v < 0.84;
        return screen && v < 0.76 || side;
    }
}
