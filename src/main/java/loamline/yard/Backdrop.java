package loamline.yard;

import java.util.List;
import loamline.geometry.Point;

/**
 * The aerial image under the outlines.
 *
 * @param file path of the image, relative to the project file where possible
 * @param widthPx pixels
 * @param heightPx pixels
 * @param placement from pixels to the yard's plane
 * @param scaleErrorRel standard error of the scale as a share of it; 0 where the image brings its own place, {@link
 *     #SCALE_NOT_SET} while nobody has measured it
 * @param opacity 0 (not seen) to 1
 * @param knownDistances what was measured on it, in the order measured
 * @param extras what a file said beyond this
 */
public record Backdrop(
        String file,
        int widthPx,
        int heightPx,
        Placement placement,
        double scaleErrorRel,
        double opacity,
        List<KnownDistance> knownDistances,
        Extras extras) {
    /** The error of a scale that is only a guess: as large as the scale itself. */
    public static final double SCALE_NOT_SET = 1;

    public Backdrop {
        knownDistances = List.copyOf(knownDistances);
    }

    /**
     * x = a·column + b·row + c and y = d·column + e·row + f, metres; column and row count pixels from the
     * image's upper left corner (not from the middle of the first pixel).
     */
    public record Placement(double a, double b, double c, double d, double e, double f) {
        /** Side of a square of the same area as one pixel, m. */
        public double pixelM() {
            return Math.sqrt(Math.abs(determinant()));
        }

        private double determinant() {
            return a * e - b * d;
        }

        /** The place on the ground of a place in pixels, x the column and y the row. */
        public Point ground(Point pixel) {
            return new Point(a * pixel.x() + b * pixel.y() + c, d * pixel.x() + e * pixel.y() + f);
        }

        /** The other way round: the place in pixels of a place on the ground. */
        public Point pixel(Point ground) {
            double x = ground.x() - c;
            double y = ground.y() - f;
            return new Point((e * x - b * y) / determinant(), (a * y - d * x) / determinant());
        }

        /** The image made larger by a factor above 0 about a place that stays. */
        Placement scaled(double factor, Point about) {
            return new Placement(
                    factor * a,
                    factor * b,
                    about.x() + factor * (c - about.x()),
                    factor * d,
                    factor * e,
                    about.y() + factor * (f - about.y()));
        }

        /** The image turned clockwise about a place that stays. */
        Placement turned(double clockwiseDeg, Point about) {
            double cos = Math.cos(Math.toRadians(clockwiseDeg));
            double sin = Math.sin(Math.toRadians(clockwiseDeg));
            double x = c - about.x();
            double y = f - about.y();
            return new Placement(
                    cos * a + sin * d,
                    cos * b + sin * e,
                    about.x() + cos * x + sin * y,
                    cos * d - sin * a,
                    cos * e - sin * b,
                    about.y() + cos * y - sin * x);
        }
    }

    /** Whether its scale is more than a guess. */
    public boolean isScaleSet() {
        return scaleErrorRel < SCALE_NOT_SET;
    }

    /** The place on the ground of its middle: what stays when it is scaled or turned. */
    public Point anchor() {
        return placement.ground(new Point(widthPx / 2.0, heightPx / 2.0));
    }

    /** A distance on it as it is placed now, m. */
    public double placedM(KnownDistance distance) {
        return placement.ground(distance.from()).distanceTo(placement.ground(distance.to()));
    }

    /** The same image under another path. */
    public Backdrop withFile(String changed) {
        return new Backdrop(changed, widthPx, heightPx, placement, scaleErrorRel, opacity, knownDistances, extras);
    }

    public Backdrop withPlacement(Placement changed) {
        return new Backdrop(file, widthPx, heightPx, changed, scaleErrorRel, opacity, knownDistances, extras);
    }

    public Backdrop withOpacity(double changed) {
        return new Backdrop(file, widthPx, heightPx, placement, scaleErrorRel, changed, knownDistances, extras);
    }

    /** The same image with other distances, and the error of the scale that they leave. */
    public Backdrop withDistances(List<KnownDistance> changed, double scaleError) {
        return new Backdrop(file, widthPx, heightPx, placement, scaleError, opacity, changed, extras);
    }
}
