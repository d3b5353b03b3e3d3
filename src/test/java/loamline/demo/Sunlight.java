package loamline.demo;

/** Light on the plate: sun on what faces it and is not shaded, sky on everything; full sun on flat ground is 1. */
final class Sunlight {
    private static final float[] SKY = {0.40f, 0.43f, 0.50f};
    private static final double LIFT_M = 0.12;

    private final Plate plate;
    private final double east;
    private final double north;
    private final double up;

    Sunlight(Plate plate, double azimuthDeg, double elevationDeg) {
        this.plate = plate;
        double azimuth = Math.toRadians(azimuthDeg);
        double elevation = Math.toRadians(elevationDeg);
        east = StrictMath.sin(azimuth) * StrictMath.cos(elevation);
        north = StrictMath.cos(azimuth) * StrictMath.cos(elevation);
        up = StrictMath.sin(elevation);
    }

    /** Multiplies all colours by the light that falls there. */
    void shine() {
        float[] sun = softened(lit());
        for (int pixel = 0; pixel < sun.length; pixel++) {
            double lx = plate.leanX[pixel];
            double ly = plate.leanY[pixel];
            double lz = Math.sqrt(1 - lx * lx - ly * ly);
            double facing = Math.max(0, lx * east + ly * north + lz * up) / up;
            for (int band = 0; band < 3; band++) {
                double light = SKY[band] * (0.55 + 0.45 * lz) + (1 - SKY[band]) * facing * sun[pixel];
                plate.rgb[3 * pixel + band] *= (float) light;
            }
        }
    }

    /** 1 where the way to the sun is free, 0 where something higher stands in it. */
    private float[] lit() {
        double[] step = plate.direction(east, north);
        double length = StrictMath.hypot(step[0], step[1]);
        double dx = step[0] / length;
        double dy = step[1] / length;
        double riseM = plate.pixelM() * up / StrictMath.hypot(east, north);
        float highest = 0;
        for (float h : plate.aboveM) {
            highest = Math.max(highest, h);
        }
        float[] lit = new float[plate.aboveM.length];
        for (int row = 0; row < plate.height; row++) {
            for (int column = 0; column < plate.width; column++) {
                lit[row * plate.width + column] = free(column, row, dx, dy, riseM, highest) ? 1 : 0;
            }
        }
        return lit;
    }

    private boolean free(int column, int row, double dx, double dy, double riseM, float highest) {
        double rayM = plate.aboveM[row * plate.width + column] + LIFT_M;
        double x = column + 0.5;
        double y = row + 0.5;
        while (rayM < highest) {
            x += dx;
            y += dy;
            rayM += riseM;
            if (x < 0 || y < 0 || x >= plate.width || y >= plate.height) {
                return true;
            }
            int pixel = (int) y * plate.width + (int) x;
            if (plate.aboveM[pixel] > rayM && plate.belowM[pixel] < rayM) {
                return false;
            }
        }
        return true;
    }

    /** The sun's disc blurs the edge of a shadow. */
    private float[] softened(float[] lit) {
        return Blur.once(Blur.once(lit, plate.width, 1), plate.width, 1);
    }
}
