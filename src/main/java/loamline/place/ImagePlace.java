package loamline.place;

import loamline.geometry.Point;

/**
 * Where an image lies on the earth.
 *
 * @param widthPx at least 1
 * @param heightPx at least 1
 * @param toCrs from pixels to the axes of the system: x to the east, y to the north
 * @param crs the system
 */
public record ImagePlace(int widthPx, int heightPx, Affine toCrs, Crs crs) {
    /** How far an affine fit may miss before it shows, in pixels. */
    public static final double MAX_RESIDUAL_PX = 0.1;

    /** Steps a side of the net on which the residual is measured. */
    private static final int CHECK_STEPS = 8;

    /** @throws IllegalArgumentException if the image has no pixels */
    public ImagePlace {
        if (widthPx < 1 || heightPx < 1) {
            throw new IllegalArgumentException("an image of " + widthPx + " x " + heightPx + " pixels");
        }
    }

    /**
     * An image laid onto a yard's plane.
     *
     * @param toYard from pixels to metres east and north
     * @param residualM how far the plane misses the image's own place at worst, m
     */
    public record Fit(Affine toYard, double residualM) {
        /** The same in pixels. */
        public double residualPx() {
            return residualM / toYard.pixelSide();
        }
    }

    /** The place of the image's middle. */
    public LonLat centre() throws PlaceException {
        return at(widthPx / 2.0, heightPx / 2.0);
    }

    /** The place of a point of the image, counted in pixels from its upper left corner. */
    public LonLat at(double column, double row) throws PlaceException {
        return crs.toEarth(toCrs.x(column, row), toCrs.y(column, row));
    }

    /**
     * Lays the image onto the plane of a yard: least squares over its corners, the middles of its sides and its centre.
     * The residual is the curvature of the image's own plane against the yard's, measured on a finer net: millimetres
     * for an image of a few hundred metres.
     *
     * @throws PlaceException if a corner of the image is no place on the earth, or too far from the yard
     */
    public Fit onto(LonLat origin) throws PlaceException {
        Projection projection = new Projection(origin);
        Affine fit = fit(projection);
        return new Fit(fit, residualM(fit, projection));
    }

    private Point onPlane(Projection projection, double column, double row) throws PlaceException {
        LonLat place = at(column, row);
        try {
            return projection.toYard(place);
        } catch (IllegalArgumentException e) {
            throw new PlaceException("the image lies too far from the yard to be drawn on its plane", e);
        }
    }

    /** On a net from -1 to 1, symmetric about 0, the normal equations of least squares are diagonal. */
    private Affine fit(Projection projection) throws PlaceException {
        Sums x = new Sums();
        Sums y = new Sums();
        for (int down = -1; down <= 1; down++) {
            for (int across = -1; across <= 1; across++) {
                Point p = onPlane(projection, (1 + across) * widthPx / 2.0, (1 + down) * heightPx / 2.0);
                x.add(p.x(), across, down);
                y.add(p.y(), across, down);
            }
        }
        return new Affine(
                x.perSpan() * 2 / widthPx,
                x.perDrop() * 2 / heightPx,
                x.atCorner(),
                y.perSpan() * 2 / widthPx,
                y.perDrop() * 2 / heightPx,
                y.atCorner());
    }

    /** Sums over the nine points of the net. */
    private static final class Sums {
        private double plain;
        private double across;
        private double down;

        private void add(double value, int atAcross, int atDown) {
            plain += value;
            across += value * atAcross;
            down += value * atDown;
        }

        private double perSpan() {
            return across / 6;
        }

        private double perDrop() {
            return down / 6;
        }

        private double atCorner() {
            return plain / 9 - perSpan() - perDrop();
        }
    }

    private double residualM(Affine fit, Projection projection) throws PlaceException {
        double worst = 0;
        for (int down = 0; down <= CHECK_STEPS; down++) {
            for (int across = 0; across <= CHECK_STEPS; across++) {
                double column = (double) widthPx * across / CHECK_STEPS;
                double row = (double) heightPx * down / CHECK_STEPS;
                Point there = onPlane(projection, column, row);
                worst = Math.max(worst, there.distanceTo(new Point(fit.x(column, row), fit.y(column, row))));
            }
        }
        return worst;
    }
}
