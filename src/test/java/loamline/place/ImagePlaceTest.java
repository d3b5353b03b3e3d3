package loamline.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import loamline.geometry.Point;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;

class ImagePlaceTest {
    @Test
    void anImageInDegreesLiesWhereItsCornersLie() throws Exception {
        ImagePlace image = new ImagePlace(400, 200, new Affine(2e-6, 0, -83, 0, -1e-6, 40), Crs.LON_LAT);
        assertThat(image.at(0, 0)).isEqualTo(new LonLat(-83, 40));
        assertThat(image.centre().lonDeg()).isCloseTo(-82.9996, within(1e-12));
        assertThat(image.centre().latDeg()).isCloseTo(39.9999, within(1e-12));
    }

    @Test
    void aFitKeepsGeodesicDistances() throws Exception {
        // pixels that are not square, turned by 30°, in UTM 2° off the central meridian
        double cos = Math.cos(Math.toRadians(30));
        double sin = Math.sin(Math.toRadians(30));
        Affine toUtm = new Affine(0.15 * cos, 0.2 * sin, 329280.37, 0.15 * sin, -0.2 * cos, 4425363.806);
        ImagePlace image = new ImagePlace(2000, 1500, toUtm, Crs.ofEpsg(32617));
        ImagePlace.Fit fit = image.onto(image.centre());
        // across s metres, x off its central meridian, the scale of UTM changes by s·x/R²: no affine map can follow
        double changeOfScale = 300 * 171e3 / (6.37e6 * 6.37e6);
        double[][] ends = {{0, 0, 2000, 0}, {0, 0, 0, 1500}, {0, 1500, 2000, 0}};
        for (double[] e : ends) {
            LonLat from = image.at(e[0], e[1]);
            LonLat to = image.at(e[2], e[3]);
            double geodesicM = Geodesic.WGS84.Inverse(from.latDeg(), from.lonDeg(), to.latDeg(), to.lonDeg()).s12;
            double planeM = onPlane(fit, e[0], e[1]).distanceTo(onPlane(fit, e[2], e[3]));
            assertThat(planeM / geodesicM).isCloseTo(1, within(changeOfScale));
        }
        assertThat(onPlane(fit, 1000, 750).distanceTo(new Point(0, 0))).isLessThan(1e-3);
        assertThat(fit.residualPx()).isLessThan(ImagePlace.MAX_RESIDUAL_PX);
    }

    @Test
    void aFitTurnsByTheConvergenceOfTheMeridians() throws Exception {
        // tan γ = tan(λ − λ0) · sin φ on the sphere (derived), clockwise; the ellipsoid adds 1e-5 of it at 2°
        ImagePlace image =
                new ImagePlace(300, 300, new Affine(0.15, 0, 329280.37, 0, -0.15, 4425363.806), Crs.ofEpsg(32617));
        LonLat centre = image.centre();
        double expected =
                -Math.atan(Math.tan(Math.toRadians(centre.lonDeg() + 81)) * Math.sin(Math.toRadians(centre.latDeg())));
        Affine toYard = image.onto(centre).toYard();
        assertThat(Math.atan2(toYard.d(), toYard.a())).isCloseTo(expected, within(1e-4 * Math.abs(expected)));
    }

    @Test
    void aFitMayLieOffTheMiddleOfTheImage() throws Exception {
        ImagePlace image =
                new ImagePlace(300, 300, new Affine(0.15, 0, 329280.37, 0, -0.15, 4425363.806), Crs.ofEpsg(32617));
        LonLat corner = image.at(0, 300);
        assertThat(onPlane(image.onto(corner), 0, 300).distanceTo(new Point(0, 0)))
                .isLessThan(1e-5);
    }

    @Test
    void aLargeImageInWebMercatorBendsVisibly() throws Exception {
        // over s metres north–south the scale changes by s·tan φ / R, so the middle of the image is off by s²·tan φ /
        // 8R
        double pixelM = 0.15 / Math.cos(Math.toRadians(40));
        Affine toMercator = new Affine(pixelM, 0, -9239517, 0, -pixelM, 4866000);
        ImagePlace small = new ImagePlace(1000, 1000, toMercator, Crs.ofEpsg(3857));
        ImagePlace large = new ImagePlace(15000, 15000, toMercator, Crs.ofEpsg(3857));
        assertThat(small.onto(small.centre()).residualPx()).isLessThan(ImagePlace.MAX_RESIDUAL_PX);
        ImagePlace.Fit fit = large.onto(large.centre());
        double bowM = 2250.0 * 2250 * Math.tan(Math.toRadians(39.9)) / 8 / 6371000;
        assertThat(fit.residualPx()).isGreaterThan(ImagePlace.MAX_RESIDUAL_PX);
        assertThat(fit.residualM()).isBetween(bowM / 3, bowM * 3);
    }

    @Test
    void anImageOfNothingCannotBe() {
        Affine toCrs = new Affine(1, 0, 0, 0, -1, 0);
        assertThatThrownBy(() -> new ImagePlace(0, 10, toCrs, Crs.LON_LAT)).hasMessageContaining("0 x 10");
        assertThatThrownBy(() -> new Affine(0, 0, 1, 1, 1, 1)).hasMessageContaining("without an area");
        assertThatThrownBy(() -> new Affine(1, 0, Double.NaN, 0, 1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anImageOffTheEarthIsRefused() {
        ImagePlace image = new ImagePlace(300, 300, new Affine(0.15, 0, 329280.37, 0, -0.15, 4425363.806), Crs.LON_LAT);
        assertThatThrownBy(image::centre).isInstanceOf(PlaceException.class);
    }

    private static Point onPlane(ImagePlace.Fit fit, double column, double row) {
        return new Point(fit.toYard().x(column, row), fit.toYard().y(column, row));
    }
}
