package loamline.demo;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.place.LonLat;
import loamline.place.Projection;
import loamline.yard.Backdrop;

/**
 * Where a north-up picture lies on the UTM grid of WGS 84, and in the yard's plane, which is turned against
 * that grid by the meridians' convergence.
 *
 * @param epsg code of the UTM zone
 * @param eastM easting of the upper left corner
 * @param northM northing of the upper left corner
 * @param pixelM side of a pixel, grid metres
 * @param width pixels
 * @param height pixels
 * @param toPixel from the yard's plane to columns and rows
 */
record Grid(int epsg, double eastM, double northM, double pixelM, int width, int height, AffineTransform toPixel) {
    private static final double SCALE_ON_MERIDIAN = 0.9996;
    private static final double FALSE_EASTING_M = 500_000;

    /** Widths are multiples of this, as TIFF wants of its blocks. */
    private static final int TILE = 16;

    /** Over this reach the grid is straight to a tenth of a millimetre. */
    private static final double REACH_M = 50;

    /** The grid of a picture of a yard north of the equator that shows at least what its scenery asks for. */
    static Grid of(DemoYard demo) {
        LonLat origin = demo.yard().frame().origin().orElseThrow();
        int zone = (int) Math.floor((origin.lonDeg() + 180) / 6) + 1;
        Projection meridian = new Projection(new LonLat(zone * 6 - 183, 0));
        AffineTransform toUtm = affine(new Projection(origin), meridian);
        Box view = demo.scenery().view();
        Box utm = Box.around(Stream.of(
                                new Point(view.minX(), view.minY()),
                                new Point(view.maxX(), view.minY()),
                                new Point(view.maxX(), view.maxY()),
                                new Point(view.minX(), view.maxY()))
                        .map(p -> apply(toUtm, p)))
                .orElseThrow();
        double pixelM = demo.scenery().pixelM();
        double eastM = Math.floor(utm.minX());
        double northM = Math.ceil(utm.maxY());
        int width = TILE * (int) Math.ceil((utm.maxX() - eastM) / pixelM / TILE);
        int height = (int) Math.ceil((northM - utm.minY()) / pixelM);
        AffineTransform toPixel = new AffineTransform(1 / pixelM, 0, 0, -1 / pixelM, -eastM / pixelM, northM / pixelM);
        toPixel.concatenate(toUtm);
        return new Grid(32600 + zone, eastM, northM, pixelM, width, height, toPixel);
    }

    private static AffineTransform affine(Projection yard, Projection meridian) {
        Point o = utm(yard, meridian, new Point(0, 0));
        Point x = utm(yard, meridian, new Point(REACH_M, 0));
        Point y = utm(yard, meridian, new Point(0, REACH_M));
        return new AffineTransform(
                (x.x() - o.x()) / REACH_M,
                (x.y() - o.y()) / REACH_M,
                (y.x() - o.x()) / REACH_M,
                (y.y() - o.y()) / REACH_M,
                o.x(),
                o.y());
    }

    private static Point utm(Projection yard, Projection meridian, Point p) {
        Point fromMeridian = meridian.toYard(yard.toEarth(p));
        return new Point(FALSE_EASTING_M + SCALE_ON_MERIDIAN * fromMeridian.x(), SCALE_ON_MERIDIAN * fromMeridian.y());
    }

    private static Point apply(AffineTransform transform, Point p) {
        double[] xy = {p.x(), p.y()};
        transform.transform(xy, 0, xy, 0, 1);
        return new Point(xy[0], xy[1]);
    }

    /** From pixels to the yard's plane. */
    Backdrop.Placement placement() {
        try {
            AffineTransform back = toPixel.createInverse();
            return new Backdrop.Placement(
                    back.getScaleX(),
                    back.getShearX(),
                    back.getTranslateX(),
                    back.getShearY(),
                    back.getScaleY(),
                    back.getTranslateY());
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("pixels of no size", e);
        }
    }
}
