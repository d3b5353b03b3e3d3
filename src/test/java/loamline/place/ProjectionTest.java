package loamline.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import loamline.Laws;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas against GeographicLib (Karney 2013, J. Geodesy 87:43-55), the ellipsoidal reference. */
class ProjectionTest {
    private static final double AREA_TOLERANCE_REL = 1e-6;

    @Test
    void theWorkedLotInColumbusHasItsGeodesicArea() {
        // corners and area computed with GeographicLib-Java 2.1: 1200.001421 m²
        double[] lat = {39.9612, 39.961199999, 39.961470187, 39.961470188};
        double[] lon = {-82.9988, -82.998331847, -82.998331845, -82.9988};
        Projection projection = new Projection(new LonLat(-82.9988, 39.9612));
        double[] xy = new double[8];
        for (int i = 0; i < 4; i++) {
            Point p = projection.toYard(new LonLat(lon[i], lat[i]));
            xy[2 * i] = p.x();
            xy[2 * i + 1] = p.y();
        }
        assertThat(Region.of(Outline.of(xy)).areaM2()).isCloseTo(1200.001421, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 10, 10",
        "0, 400, 500",
        "20, 30, 40",
        "40, 10, 10",
        "40, 400, 500",
        "52, 1000, 200",
        "65, 10, 10",
        "65, 400, 500",
        "-33, 120, 80",
        "65, 1000, 200"
    })
    void areasAgreeWithTheEllipsoid(double latDeg, double widthM, double depthM) {
        LonLat origin = new LonLat(-104.775, latDeg);
        Projection projection = new Projection(origin);
        double[] xy = {0.31, 0, 1, 0.08, 0.93, 0.9, 0.4, 1, 0.45, 0.55, 0, 0.6};
        PolygonArea geodesic = new PolygonArea(Geodesic.WGS84, false);
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = (xy[i] - 0.5) * widthM;
            xy[i + 1] = (xy[i + 1] - 0.5) * depthM;
            LonLat corner = projection.toEarth(new Point(xy[i], xy[i + 1]));
            geodesic.AddPoint(corner.latDeg(), corner.lonDeg());
        }
        double expected = geodesic.Compute().area;
        double measured = Region.of(Outline.of(xy)).areaM2();
        assertThat(measured / expected).isCloseTo(1, within(AREA_TOLERANCE_REL));
    }

    @Property(seed = Laws.SEED, tries = 500)
    void aRoundTripOverTheEarthIsExact(
            @ForAll @DoubleRange(min = -2000, max = 2000) double x,
            @ForAll @DoubleRange(min = -2000, max = 2000) double y,
            @ForAll @DoubleRange(min = -80, max = 80) double latDeg,
            @ForAll @DoubleRange(min = -179.9, max = 179.9) double lonDeg) {
        Projection projection = new Projection(new LonLat(lonDeg, latDeg));
        Point p = Frame.onStep(new Point(x, y));
        assertThat(projection.toYard(projection.toEarth(p))).isEqualTo(p);
    }

    @Test
    void aYardOnTheAntimeridianHasPlacesOnBothSidesOfIt() {
        Projection projection = new Projection(new LonLat(179.9999, -17));
        assertThat(projection.toEarth(new Point(21, 0)).lonDeg()).isNegative();
        assertThat(projection.toEarth(new Point(-21, 0)).lonDeg()).isPositive();
        assertThat(projection.toYard(projection.toEarth(new Point(21, 3)))).isEqualTo(new Point(21, 3));
    }
}
