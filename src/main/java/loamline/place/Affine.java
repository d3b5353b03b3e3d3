package loamline.place;

/**
 * From the pixels of an image to the axes of a plane: x = a·column + b·row + c, y = d·column + e·row + f.
 *
 * <p>Column and row count pixels from the image's upper left corner, so the middle of the first pixel is (0.5, 0.5).
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
    /** @throws IllegalArgumentException if a number is not finite or the pixels have no area */
    public Affine {
        double area = a * e - b * d;
        if (!(Double.isFinite(area) && Double.isFinite(c) && Double.isFinite(f) && area != 0)) {
            throw new IllegalArgumentException(
                    "pixels without an area: [" + a + " " + b + " " + c + "; " + d + " " + e + " " + f + "]");
        }
    }

    public double x(double column, double row) {
        return a * column + b * row + c;
    }

    public double y(double column, double row) {
        return d * column + e * row + f;
    }

    /** Side of a square of the same area as one pixel, in units of the plane. */
    public double pixelSide() {
        return Math.sqrt(Math.abs(a * e - b * d));
    }
}
