package loamline.place;

import loamline.geometry.Point;
import org.apache.sis.referencing.operation.transform.DefaultMathTransformFactory;
import org.opengis.parameter.ParameterValueGroup;
import org.opengis.referencing.operation.MathTransform;
import org.opengis.referencing.operation.TransformException;
import org.opengis.util.FactoryException;

/**
 * WGS 84 to a yard's plane and back.
 *
 * <p>Transverse Mercator by series (Apache SIS; EPSG method 9807). Good to a micrometre within 2 km of the
 * origin and 80° of latitude: {@code toYard(toEarth(p))} is {@code p} for every p on {@link Frame#onStep}.
 */
public final class Projection {
    private static final double WGS84_SEMI_MAJOR_M = 6378137.0;
    private static final double WGS84_FLATTENING = 1 / 298.257223563;

    /** Metres of meridian in a degree, near enough for one correcting step. */
    private static final double METRES_PER_DEGREE = Math.toRadians(WGS84_SEMI_MAJOR_M);

    private final MathTransform toPlane;
    private final MathTransform toEarth;

    /** @param origin the place of x = 0, y = 0 */
    public Projection(LonLat origin) {
        try {
            var builder = DefaultMathTransformFactory.provider().builder("Transverse Mercator");
            ParameterValueGroup p = builder.parameters();
            p.parameter("semi_major").setValue(WGS84_SEMI_MAJOR_M);
            p.parameter("semi_minor").setValue(WGS84_SEMI_MAJOR_M * (1 - WGS84_FLATTENING));
            p.parameter("central_meridian").setValue(origin.lonDeg());
            p.parameter("latitude_of_origin").setValue(origin.latDeg());
            p.parameter("scale_factor").setValue(1.0);
            toPlane = builder.create();
            toEarth = toPlane.inverse();
        } catch (FactoryException | TransformException e) {
            throw new IllegalStateException("no transverse Mercator round " + origin, e);
        }
    }

    /** The place on the plane, on a step of {@link Frame#STEPS_PER_M}. */
    public Point toYard(LonLat place) {
        double[] xy = apply(toPlane, place.lonDeg(), place.latDeg());
        return Frame.onStep(new Point(xy[0], xy[1]));
    }

    /** The place on the earth, degrees to 12 decimals (0.1 µm). */
    public LonLat toEarth(Point p) {
        double[] first = apply(toEarth, p.x(), p.y());
        double[] back = apply(toPlane, first[0], first[1]);
        double lat = first[1] + (p.y() - back[1]) / METRES_PER_DEGREE;
        double lon = first[0] + (p.x() - back[0]) / (METRES_PER_DEGREE * Math.cos(Math.toRadians(first[1])));
        return new LonLat(LonLat.wrapped(twelveDecimals(lon)), twelveDecimals(lat));
    }

    private static double twelveDecimals(double degrees) {
        return Math.rint(degrees * 1e12) / 1e12;
    }

    private static double[] apply(MathTransform transform, double a, double b) {
        try {
            double[] in = {a, b};
            double[] out = new double[2];
            transform.transform(in, 0, out, 0, 1);
            return out;
        } catch (TransformException e) {
            throw new IllegalArgumentException(a + ", " + b + " is out of reach of the yard's plane", e);
        }
    }
}
