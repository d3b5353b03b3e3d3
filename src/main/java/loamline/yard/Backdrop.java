package loamline.yard;

/**
 * The aerial image under the outlines.
 *
 * @param file path of the image, relative to the project file where possible
 * @param widthPx pixels
 * @param heightPx pixels
 * @param placement from pixels to the yard's plane
 * @param scaleErrorRel standard error of the scale as a share of it; 0 where the image brings its own place
 * @param opacity 0 (not seen) to 1
 * @param extras what a file said beyond this
 */
public record Backdrop(
        String file,
        int widthPx,
        int heightPx,
        Placement placement,
        double scaleErrorRel,
        double opacity,
        Extras extras) {

    /**
     * x = a·column + b·row + c and y = d·column + e·row + f, metres; column and row count pixels from the
     * image's upper left corner (not from the middle of the first pixel).
     */
    public record Placement(double a, double b, double c, double d, double e, double f) {
        /** Side of a square of the same area as one pixel, m. */
        public double pixelM() {
            return Math.sqrt(Math.abs(a * e - b * d));
        }
    }

    /** The same under another path. */
    public Backdrop withFile(String changed) {
        return new Backdrop(changed, widthPx, heightPx, placement, scaleErrorRel, opacity, extras);
    }
}
