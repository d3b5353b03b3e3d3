package loamline.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.sis.referencing.operation.transform.DefaultMathTransformFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrsTest {
    /** 1e-9 degrees, a tenth of a millimetre: a null shift between GRS 80 and WGS 84 moves latitudes by that much. */
    private static final double DEGREES = 1.1e-9;

    @Test
    void theLibraryProjectsTheWorkedExampleOfTransverseMercator() throws Exception {
        // IOGP Guidance Note 7-2, method 9807: 50°30'N 0°30'E on Airy is E 577274.99, N 69740.50
        var builder = DefaultMathTransformFactory.provider().builder("Transverse Mercator");
        var p = builder.parameters();
        p.parameter("semi_major").setValue(6377563.396);
        p.parameter("semi_minor").setValue(6377563.396 * (1 - 1 / 299.32496));
        p.parameter("latitude_of_origin").setValue(49.0);
        p.parameter("central_meridian").setValue(-2.0);
        p.parameter("scale_factor").setValue(0.9996013);
        p.parameter("false_easting").setValue(400000.0);
        p.parameter("false_northing").setValue(-100000.0);
        double[] at = {0.5, 50.5};
        builder.create().transform(at, 0, at, 0, 1);
        assertThat(at[0]).isCloseTo(577274.99, within(0.005));
        assertThat(at[1]).isCloseTo(69740.50, within(0.005));
        // the same parameters in PROJ 9.1.1: 577274.9888, 69740.4971
        assertThat(at[0]).isCloseTo(577274.9888, within(1e-4));
        assertThat(at[1]).isCloseTo(69740.4971, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({ // computed with PROJ 9.1.1 from 39.9612 N 82.9988 W (EPSG:26917 from EPSG:4269)
        "32617, 329280.370387, 4425363.806071",
        "26917, 329280.370386, 4425363.805957",
        "3735, 1828678.222357, 714705.050975"
    })
    void eastingsAndNorthingsLeadBackToTheirPlace(int code, double easting, double northing) throws Exception {
        Crs crs = Crs.ofEpsg(code);
        assertThat(crs.epsg()).hasValue(code);
        assertClose(crs.toEarth(easting, northing), -82.9988, 39.9612);
    }

    @Test
    void webMercatorIsOnTheSphere() throws Exception {
        // worked point of EPSG method 1024, from memory: 24°22'54.433"N 100°20'00"W; PROJ 9.1.1 agrees to 0.005 m
        LonLat place = Crs.ofEpsg(3857).toEarth(-11169055.58, 2800000.00);
        assertThat(place.lonDeg()).isCloseTo(-(100 + 20 / 60.0), within(1e-7));
        assertThat(place.latDeg()).isCloseTo(24 + 22 / 60.0 + 54.433 / 3600, within(1e-7));
    }

    @Test
    void xIsAlwaysEast() throws Exception {
        // EPSG:2193 lists northing first, EPSG:4326 latitude first; computed with PROJ 9.1.1
        assertClose(Crs.ofEpsg(2193).toEarth(1570000, 5180000), 172.6287183595, -43.5323403823962);
        assertClose(Crs.ofEpsg(4326).toEarth(-83, 40), -83, 40);
        assertClose(
                Crs.ofWkt("GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
                                + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433],"
                                + "AXIS[\"Latitude\",NORTH],AXIS[\"Longitude\",EAST]]")
                        .toEarth(-83, 40),
                -83,
                40);
    }

    @Test
    void feetOfAnEsriFileAreUnderstood() throws Exception {
        Crs crs =
                Crs.ofWkt("PROJCS[\"NAD_1983_StatePlane_Ohio_South_FIPS_3402_Feet\",GEOGCS[\"GCS_North_American_1983\","
                        + "DATUM[\"D_North_American_1983\",SPHEROID[\"GRS_1980\",6378137.0,298.257222101]],"
                        + "PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]],"
                        + "PROJECTION[\"Lambert_Conformal_Conic\"],PARAMETER[\"False_Easting\",1968500.0],"
                        + "PARAMETER[\"False_Northing\",0.0],PARAMETER[\"Central_Meridian\",-82.5],"
                        + "PARAMETER[\"Standard_Parallel_1\",40.0333333333333],"
                        + "PARAMETER[\"Standard_Parallel_2\",38.7333333333333],"
                        + "PARAMETER[\"Latitude_Of_Origin\",38.0],UNIT[\"US survey foot\",0.304800609601219]]");
        assertClose(crs.toEarth(1828678.222357, 714705.050975), -82.9988, 39.9612);
        assertThat(crs.epsg()).isEmpty();
        assertThat(crs.accuracyM()).isEqualTo(4);
    }

    @Test
    void aTextThatNamesItsCodeMeansTheCode() throws Exception {
        assertThat(Crs.ofWkt(webMercator(",AUTHORITY[\"EPSG\",\"3857\"]")).toEarth(-1.166e7, 4.715e6))
                .isEqualTo(Crs.ofEpsg(3857).toEarth(-1.166e7, 4.715e6));
    }

    @Test
    void aTextWhoseSenseIsHiddenInAnExtensionIsRefused() {
        assertThatThrownBy(() -> Crs.ofWkt(webMercator("")))
                .isInstanceOf(PlaceException.class)
                .hasMessageContaining("WGS 84 / Pseudo-Mercator")
                .hasMessageContaining("EPSG code");
    }

    /** As GDAL writes it in WKT 1, where Mercator alone would mean the ellipsoid, 20 km further north. */
    private static String webMercator(String authority) {
        return "PROJCS[\"WGS 84 / Pseudo-Mercator\",GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\","
                + "SPHEROID[\"WGS 84\",6378137,298.257223563]],PRIMEM[\"Greenwich\",0],"
                + "UNIT[\"degree\",0.0174532925199433]],PROJECTION[\"Mercator_1SP\"],"
                + "PARAMETER[\"central_meridian\",0],PARAMETER[\"scale_factor\",1],PARAMETER[\"false_easting\",0],"
                + "PARAMETER[\"false_northing\",0],UNIT[\"metre\",1],AXIS[\"Easting\",EAST],AXIS[\"Northing\",NORTH],"
                + "EXTENSION[\"PROJ4\",\"+proj=merc +a=6378137 +b=6378137 +units=m\"]" + authority + "]";
    }

    @Test
    void anOldDatumSaysHowFarItMayBeOff() throws Exception {
        assertThat(Crs.ofEpsg(26713).accuracyM()).isBetween(5.0, 30.0);
        assertThat(Crs.ofWkt("GEOGCS[\"of a local survey\",DATUM[\"of a local survey\","
                                + "SPHEROID[\"Clarke 1866\",6378206.4,294.978698214]],PRIMEM[\"Greenwich\",0],"
                                + "UNIT[\"degree\",0.0174532925199433]]")
                        .accuracyM())
                .isGreaterThan(1000);
    }

    @Test
    void whatIsNoSystemIsRefused() {
        assertThatThrownBy(() -> Crs.ofEpsg(1))
                .isInstanceOf(PlaceException.class)
                .hasMessageContaining("EPSG:1 ");
        assertThatThrownBy(() -> Crs.ofWkt("UTM zone 17")).isInstanceOf(PlaceException.class);
        assertThatThrownBy(() -> Crs.ofWkt("")).isInstanceOf(PlaceException.class);
        assertThatThrownBy(() -> Crs.ofEpsg(5703)) // heights
                .isInstanceOf(PlaceException.class)
                .hasMessageContaining("not a coordinate reference system on the earth");
    }

    @Test
    void whatLiesOffTheEarthIsRefused() {
        assertThatThrownBy(() -> Crs.LON_LAT.toEarth(500000, 4e6))
                .isInstanceOf(PlaceException.class)
                .hasMessageContaining("is it the right coordinate reference system?");
        assertThatThrownBy(() -> Crs.ofEpsg(32617).toEarth(Double.NaN, 0)).isInstanceOf(PlaceException.class);
    }

    @Test
    void theDatabaseLeavesNoLogBehind() throws Exception {
        Crs.ofEpsg(32617);
        assertThat(Files.exists(Path.of("derby.log"))).isFalse();
    }

    private static void assertClose(LonLat place, double lonDeg, double latDeg) {
        assertThat(place.lonDeg()).isCloseTo(lonDeg, within(DEGREES));
        assertThat(place.latDeg()).isCloseTo(latDeg, within(DEGREES));
    }
}
