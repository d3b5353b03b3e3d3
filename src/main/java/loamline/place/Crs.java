package loamline.place;

import java.util.OptionalInt;
import org.apache.sis.metadata.iso.citation.Citations;
import org.apache.sis.referencing.CRS;
import org.apache.sis.referencing.CommonCRS;
import org.apache.sis.referencing.IdentifiedObjects;
import org.apache.sis.referencing.crs.AbstractCRS;
import org.apache.sis.referencing.cs.AxesConvention;
import org.apache.sis.referencing.operation.CoordinateOperationFinder;
import org.apache.sis.referencing.operation.DefaultCoordinateOperationFactory;
import org.apache.sis.referencing.operation.transform.MathTransforms;
import org.apache.sis.util.Utilities;
import org.opengis.metadata.Identifier;
import org.opengis.referencing.crs.CoordinateReferenceSystem;
import org.opengis.referencing.crs.ProjectedCRS;
import org.opengis.referencing.crs.SingleCRS;
import org.opengis.referencing.datum.Ellipsoid;
import org.opengis.referencing.datum.GeodeticDatum;
import org.opengis.referencing.operation.CoordinateOperation;
import org.opengis.referencing.operation.MathTransform;
import org.opengis.referencing.operation.TransformException;
import org.opengis.util.FactoryException;

/**
 * A coordinate reference system of maps and images, with its way to WGS 84.
 *
 * <p>Axes are always those of a map: x to the east, y to the north, in the system's own unit (metres, feet, degrees),
 * whatever order the system's definition states.
 */
public final class Crs {
    /** Longitude and latitude of WGS 84, in degrees. */
    public static final Crs LON_LAT = new Crs("WGS 84", OptionalInt.of(4326), MathTransforms.identity(2), 0);

    /** How far modern datums lie from WGS 84, m: what EPSG states for NAD83 (operation 1188). */
    private static final double MODERN_DATUM_M = 4;

    /** What Apache SIS states where no shift is known: no more than the size of the shifts that there are. */
    private static final double UNKNOWN_DATUM_M = 3000;

    private static final double MODERN_SEMI_MAJOR_M = 6378137;

    /** Between WGS 84 and GRS 80 the inverse flattenings differ by 1.5e-6, to older ellipsoids by 0.04 or more. */
    private static final double SAME_INVERSE_FLATTENING = 1e-3;

    private final String name;
    private final OptionalInt epsg;
    private final MathTransform toEarth;
    private final double accuracyM;

    private Crs(String name, OptionalInt epsg, MathTransform toEarth, double accuracyM) {
        this.name = name;
        this.epsg = epsg;
        this.toEarth = toEarth;
        this.accuracyM = accuracyM;
    }

    /**
     * The system with an EPSG code. Opens the {@link EpsgDatabase}: seconds the first time.
     *
     * @throws PlaceException if there is no such system, or it does not lie on the ground
     */
    public static Crs ofEpsg(int code) throws PlaceException {
        EpsgDatabase.keepQuiet();
        try {
            return of(CRS.forCode("EPSG:" + code));
        } catch (FactoryException e) {
            throw new PlaceException("EPSG:" + code + " is not a known coordinate reference system", e);
        }
    }

    /**
     * The system that a well-known text describes: WKT 2 (ISO 19162), WKT 1 or the dialect of ESRI's .prj files.
     *
     * <p>A text that names its EPSG code means that code: the wording of WKT 1 cannot express some systems (Web Mercator
     * is one) and is then wrong by kilometres.
     *
     * @throws PlaceException if the text cannot be understood
     */
    public static Crs ofWkt(String text) throws PlaceException {
        EpsgDatabase.keepQuiet();
        try {
            CoordinateReferenceSystem worded = CRS.fromWKT(text);
            Identifier code = IdentifiedObjects.getIdentifier(worded, Citations.EPSG);
            if (code != null) {
                return ofEpsg(Integer.parseInt(code.getCode()));
            }
            if (text.contains("EXTENSION[")) {
                throw new PlaceException("the coordinate reference system “" + nameOf(worded)
                        + "” is described by a private extension; give its EPSG code instead");
            }
            return of(worded);
        } catch (FactoryException | RuntimeException e) { // SIS answers some broken texts with unchecked exceptions
            throw new PlaceException("the description of the coordinate reference system cannot be understood", e);
        }
    }

    /** @throws PlaceException if the system has no horizontal part, or no way leads from it to WGS 84 */
    static Crs of(CoordinateReferenceSystem system) throws PlaceException {
        EpsgDatabase.keepQuiet();
        SingleCRS horizontal = CRS.getHorizontalComponent(system);
        if (horizontal == null) {
            throw new PlaceException("“" + nameOf(system) + "” is not a coordinate reference system on the earth");
        }
        try {
            SingleCRS base = horizontal instanceof ProjectedCRS map ? map.getBaseCRS() : horizontal;
            CoordinateReferenceSystem degrees = AbstractCRS.castOrCopy(base).forConvention(AxesConvention.NORMALIZED);
            MathTransform toDegrees = withinDatum(
                    AbstractCRS.castOrCopy(horizontal).forConvention(AxesConvention.DISPLAY_ORIENTED), degrees);
            if (Utilities.equalsIgnoreMetadata(degrees, CommonCRS.WGS84.normalizedGeographic())) {
                return new Crs(nameOf(horizontal), codeOf(horizontal), toDegrees, 0);
            }
            CoordinateOperation shift = CRS.findOperation(
                    degrees, CommonCRS.WGS84.normalizedGeographic(), CRS.getGeographicBoundingBox(horizontal));
            return new Crs(
                    nameOf(horizontal),
                    codeOf(horizontal),
                    MathTransforms.concatenate(toDegrees, shift.getMathTransform()),
                    accuracyM(base, shift));
        } catch (FactoryException e) {
            throw new PlaceException("no way is known from “" + nameOf(horizontal) + "” to longitude and latitude", e);
        }
    }

    /** A change of axes, units and projection; found without the database, which takes seconds to search. */
    private static MathTransform withinDatum(CoordinateReferenceSystem from, CoordinateReferenceSystem to)
            throws FactoryException {
        return new CoordinateOperationFinder(null, DefaultCoordinateOperationFactory.provider(), null)
                .createOperation(from, to)
                .getMathTransform();
    }

    private static String nameOf(CoordinateReferenceSystem system) {
        return system.getName().getCode();
    }

    private static OptionalInt codeOf(SingleCRS system) {
        Identifier code = IdentifiedObjects.getIdentifier(system, Citations.EPSG);
        return code == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(code.getCode()));
    }

    private static double accuracyM(SingleCRS base, CoordinateOperation shift) {
        double accuracy = CRS.getLinearAccuracy(shift);
        double statedM = Double.isNaN(accuracy) ? UNKNOWN_DATUM_M : accuracy;
        boolean modern = base.getDatum() instanceof GeodeticDatum datum && isModern(datum.getEllipsoid());
        return modern ? Math.min(statedM, MODERN_DATUM_M) : statedM;
    }

    private static boolean isModern(Ellipsoid ellipsoid) {
        double wgs84 = CommonCRS.WGS84.ellipsoid().getInverseFlattening();
        return ellipsoid.getSemiMajorAxis() == MODERN_SEMI_MAJOR_M
                && Math.abs(ellipsoid.getInverseFlattening() - wgs84) < SAME_INVERSE_FLATTENING;
    }

    /** What the system is called. */
    public String name() {
        return name;
    }

    /** Its EPSG code, where the system states one. */
    public OptionalInt epsg() {
        return epsg;
    }

    /**
     * How well places in this system are known in WGS 84, m: 0 if they are the same, 4 for modern datums, thousands if
     * the datum is old and not named. It moves a yard as a whole and does not change its shape.
     */
    public double accuracyM() {
        return accuracyM;
    }

    /**
     * The place on the earth.
     *
     * @param x to the east, in the system's unit
     * @param y to the north, in the system's unit
     * @throws PlaceException if the system does not reach there
     */
    public LonLat toEarth(double x, double y) throws PlaceException {
        double[] at = {x, y};
        try {
            toEarth.transform(at, 0, at, 0, 1);
        } catch (TransformException e) {
            throw new PlaceException(outside(x, y), e);
        }
        if (!LonLat.isOnEarth(at[0], at[1])) {
            throw new PlaceException(outside(x, y));
        }
        return new LonLat(at[0], at[1]);
    }

    private String outside(double x, double y) {
        return x + ", " + y + " is no place in “" + name + "”; is it the right coordinate reference system?";
    }
}
