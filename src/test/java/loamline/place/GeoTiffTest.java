package loamline.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GeoTiffTest {
    private static final int MODEL = 1024;
    private static final int RASTER = 1025;
    private static final int GEOGRAPHIC = 2048;
    private static final int PROJECTED = 3072;

    private static GeoTiff read(TiffFixture tiff) throws Exception {
        return GeoTiff.read(TiffFixture.channel(tiff.bytes()));
    }

    private static TiffFixture utm() {
        return TiffFixture.plain(40, 30)
                .placed(0.15, 0.25, 519467.5, 4311669.75)
                .keys(MODEL, 1, RASTER, 1, PROJECTED, 32613);
    }

    @Test
    void sizePlaceAndSystemAreRead() throws Exception {
        GeoTiff tiff = read(utm());
        assertThat(tiff.widthPx()).isEqualTo(40);
        assertThat(tiff.heightPx()).isEqualTo(30);
        assertThat(tiff.toCrs()).contains(new Affine(0.15, 0, 519467.5, 0, -0.25, 4311669.75));
        assertThat(tiff.crs().orElseThrow().name()).isEqualTo("WGS 84 / UTM zone 13N");
        assertThat(tiff.crs().orElseThrow().epsg()).hasValue(32613);
    }

    @Test
    void aBigTiffIsRead() throws Exception {
        GeoTiff tiff = GeoTiff.read(TiffFixture.channel(utm().bigBytes()));
        assertThat(tiff.toCrs()).contains(new Affine(0.15, 0, 519467.5, 0, -0.25, 4311669.75));
    }

    @Test
    void aTieToTheMiddleOfAPixelIsHalfAPixelOffItsCorner() throws Exception {
        GeoTiff tiff = read(utm().keys(MODEL, 1, RASTER, 2, PROJECTED, 32613));
        assertThat(tiff.toCrs()).contains(new Affine(0.15, 0, 519467.5 - 0.075, 0, -0.25, 4311669.75 + 0.125));
    }

    @Test
    void degreesComeLongitudeFirst() throws Exception {
        GeoTiff tiff =
                read(TiffFixture.plain(40, 30).placed(1e-6, 1e-6, -83, 40).keys(MODEL, 2, RASTER, 1, GEOGRAPHIC, 4326));
        assertThat(tiff.toCrs()).contains(new Affine(1e-6, 0, -83, 0, -1e-6, 40));
        assertThat(tiff.crs().orElseThrow().toEarth(-83, 40)).isEqualTo(new LonLat(-83, 40));
    }

    @Test
    void aSystemThatListsNorthingsFirstIsNotTurned() throws Exception {
        GeoTiff tiff = read(TiffFixture.plain(40, 30)
                .placed(0.15, 0.15, 1570000, 5180000)
                .keys(MODEL, 1, RASTER, 1, PROJECTED, 2193));
        assertThat(tiff.toCrs()).contains(new Affine(0.15, 0, 1570000, 0, -0.15, 5180000));
        // computed with PROJ 9.1.1
        assertThat(tiff.crs().orElseThrow().toEarth(1570000, 5180000).latDeg())
                .isCloseTo(-43.5323403823962, within(1e-8));
    }

    @Test
    void aTurnedImageKeepsItsTurn() throws Exception {
        GeoTiff tiff = read(TiffFixture.plain(40, 30)
                .matrix(0.13, 0.075, 519467.5, 0.075, -0.13, 4311669.75)
                .keys(MODEL, 1, RASTER, 1, PROJECTED, 32613));
        assertThat(tiff.toCrs()).contains(new Affine(0.13, 0.075, 519467.5, 0.075, -0.13, 4311669.75));
    }

    @Test
    void heightsAreSetAside() throws Exception {
        GeoTiff tiff = read(utm().keys(MODEL, 1, RASTER, 1, PROJECTED, 32613, 4096, 5703));
        assertThat(tiff.toCrs()).contains(new Affine(0.15, 0, 519467.5, 0, -0.25, 4311669.75));
        assertThat(tiff.crs().orElseThrow().name()).isEqualTo("WGS 84 / UTM zone 13N");
    }

    @Test
    void compressionDoesNotMatter() throws Exception {
        assertThat(read(utm().shorts(259, 50000)).toCrs()).isPresent(); // Zstandard
        assertThat(read(utm().shorts(259, 7)).toCrs()).isPresent(); // JPEG
    }

    @Test
    void aPlainImageHasNoPlace() throws Exception {
        GeoTiff tiff = read(TiffFixture.plain(40, 30));
        assertThat(tiff).isEqualTo(new GeoTiff(40, 30, Optional.empty(), Optional.empty()));
    }

    @Test
    void aPlaceWithoutASystemIsKept() throws Exception {
        GeoTiff tiff = read(TiffFixture.plain(40, 30).placed(0.15, 0.15, 1000, 2000));
        assertThat(tiff.toCrs()).contains(new Affine(0.15, 0, 1000, 0, -0.15, 2000));
        assertThat(tiff.crs()).isEmpty();
    }

    @Test
    void controlPointsAreRefused() {
        TiffFixture tiff = TiffFixture.plain(40, 30)
                .doubles(
                        33922, 0, 0, 0, -83, 40, 0, 40, 0, 0, -82.9, 40.01, 0, 0, 30, 0, -83.01, 39.9, 0, 40, 30, 0,
                        -82.8, 39.8, 0)
                .keys(MODEL, 2, RASTER, 1, GEOGRAPHIC, 4326);
        assertThatThrownBy(() -> read(tiff)).isInstanceOf(PlaceException.class).hasMessageContaining("rectify");
    }

    @Test
    void whatIsNoTiffIsRefused() {
        assertThatThrownBy(() -> GeoTiff.read(TiffFixture.channel("P5 not a TIFF".getBytes(StandardCharsets.UTF_8))))
                .isInstanceOf(PlaceException.class);
        assertThatThrownBy(() -> GeoTiff.read(TiffFixture.channel(new byte[0]))).isInstanceOf(PlaceException.class);
    }

    @Test
    void brokenTagsLeadToARefusalAndNothingWorse() throws Exception {
        byte[] sound = utm().bytes();
        Random random = new Random(11);
        for (int i = 0; i < 300; i++) {
            byte[] broken = sound.clone();
            for (int flips = 0; flips < 3; flips++) {
                int at = random.nextInt(20) == 0 ? random.nextInt(8) : 1208 + random.nextInt(broken.length - 1208);
                broken[at] = (byte) random.nextInt(256);
            }
            try {
                GeoTiff.read(TiffFixture.channel(broken));
            } catch (PlaceException expected) {
                assertThat(expected).hasMessageNotContaining("null");
            }
        }
    }
}
