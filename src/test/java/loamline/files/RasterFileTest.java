package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import loamline.place.Affine;
import loamline.place.Frame;
import loamline.place.ImagePlace;
import loamline.place.LonLat;
import loamline.raster.GridSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RasterFileTest {
    private static final GridSpec GRID = new GridSpec(-1.5, 2, 0.5, 3, 2);
    private static final double[] VALUES = {1, 2.25, Double.NaN, 4, 5, 1e-7};
    private static final LonLat ORIGIN = new LonLat(-82.9988, 39.9612);

    @Test
    void aDrawingWithoutAPlaceIsAnAsciiGridWithNorthUp() {
        assertThat(RasterFile.endingFor(Frame.local())).isEqualTo(".asc");
        assertThat(new String(RasterFile.of(GRID, VALUES, Frame.local()), StandardCharsets.US_ASCII))
                .isEqualTo("ncols 3\nnrows 2\nxllcorner -1.5\nyllcorner 2.0\ncellsize 0.5\nNODATA_value -9999\n"
                        + "4.0 5.0 1.0E-7\n1.0 2.25 -9999\n");
    }

    @Test
    void aYardOnEarthIsAGeoTiffWithNorthUp() throws Exception {
        assertThat(RasterFile.endingFor(Frame.at(ORIGIN))).isEqualTo(".tif");
        Raster raster = raster(RasterFile.of(GRID, VALUES, Frame.at(ORIGIN)));
        assertThat(raster.getWidth()).isEqualTo(3);
        assertThat(raster.getHeight()).isEqualTo(2);
        assertThat(raster.getSampleFloat(0, 0, 0)).isEqualTo(4);
        assertThat(raster.getSampleFloat(2, 0, 0)).isEqualTo(1e-7f);
        assertThat(raster.getSampleFloat(1, 1, 0)).isEqualTo(2.25f);
        assertThat(raster.getSampleFloat(2, 1, 0)).isNaN();
    }

    @Test
    void itsCellsLieWhereTheGridLies(@TempDir Path folder) throws Exception {
        Path file = Files.write(folder.resolve("a.tif"), RasterFile.of(GRID, VALUES, Frame.at(ORIGIN)));
        Read<Imagery> read = Imagery.read(file);
        assertThat(read.problems()).isEmpty();
        ImagePlace place = read.value().flatMap(Imagery::place).orElseThrow();
        assertThat(place.toCrs()).isEqualTo(new Affine(0.5, 0, -1.5, 0, -0.5, 3));
        LonLat origin = place.crs().toEarth(0, 0);
        assertThat(origin.lonDeg()).isCloseTo(ORIGIN.lonDeg(), within(1e-10));
        assertThat(origin.latDeg()).isCloseTo(ORIGIN.latDeg(), within(1e-10));
        Affine toYard = place.onto(ORIGIN).toYard();
        assertThat(toYard.x(0, 0)).isCloseTo(-1.5, within(1e-5));
        assertThat(toYard.y(0, 0)).isCloseTo(3, within(1e-5));
    }

    @Test
    void theSameGridGivesTheSameBytes() {
        assertThat(RasterFile.of(GRID, VALUES, Frame.at(ORIGIN)))
                .isEqualTo(RasterFile.of(GRID, VALUES.clone(), Frame.at(ORIGIN)));
    }

    @Test
    void aLargeGridIsPackedInStrips() throws Exception {
        GridSpec large = new GridSpec(0, 0, 0.1, 700, 500);
        byte[] bytes = RasterFile.of(large, new double[large.size()], Frame.at(ORIGIN));
        assertThat(bytes.length).isLessThan(20_000);
        assertThat(raster(bytes).getHeight()).isEqualTo(500);
    }

    @Test
    void everyCellNeedsAValue() {
        assertThatThrownBy(() -> RasterFile.of(GRID, new double[5], Frame.local()))
                .hasMessage("5 values for 6 cells");
    }

    private static Raster raster(byte[] tiff) throws Exception {
        ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(tiff))) {
            reader.setInput(in);
            return reader.read(0).getData();
        } finally {
            reader.dispose();
        }
    }
}
