package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import loamline.account.Problem;
import loamline.geometry.Point;
import loamline.place.Affine;
import loamline.place.Crs;
import loamline.place.ImagePlace;
import loamline.place.LonLat;
import loamline.place.TiffFixture;
import loamline.yard.Backdrop;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImageryTest {
    private static final String UTM_13 =
            "PROJCS[\"WGS_1984_UTM_Zone_13N\",GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\","
                    + "SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],PRIMEM[\"Greenwich\",0.0],"
                    + "UNIT[\"Degree\",0.0174532925199433]],PROJECTION[\"Transverse_Mercator\"],"
                    + "PARAMETER[\"False_Easting\",500000.0],PARAMETER[\"False_Northing\",0.0],"
                    + "PARAMETER[\"Central_Meridian\",-105.0],PARAMETER[\"Scale_Factor\",0.9996],"
                    + "PARAMETER[\"Latitude_Of_Origin\",0.0],UNIT[\"Meter\",1.0]]";
    private static final String IN_METRES = "0.15\n0\n0\n-0.15\n519467.575\n4311669.675\n";
    private static final Affine TO_UTM = new Affine(0.15, 0, 519467.5, 0, -0.15, 4311669.75);

    @TempDir
    Path folder;

    private Path file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private Path picture(String name) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        String format = name.substring(name.lastIndexOf('.') + 1);
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), format, bytes);
        return file(name, bytes.toByteArray());
    }

    private void beside(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private static TiffFixture geoTiff() {
        return TiffFixture.plain(40, 30)
                .placed(0.15, 0.15, 519467.5, 4311669.75)
                .keys(1024, 1, 1025, 1, 3072, 32613);
    }

    private static ImagePlace placeOf(Read<Imagery> read) {
        assertThat(read.problems()).isEmpty();
        return read.value().flatMap(Imagery::place).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "yard.png, yard.pgw",
        "yard.jpg, yard.jgw",
        "yard.jpeg, yard.jpegw",
        "yard.tif, yard.tfw",
        "yard.png, yard.wld"
    })
    void aPictureWithAWorldFileAndAPrjIsPlaced(String image, String world) throws Exception {
        Path yard = picture(image);
        beside(world, IN_METRES);
        beside("yard.prj", UTM_13);
        ImagePlace place = placeOf(Imagery.read(yard));
        assertThat(place.widthPx()).isEqualTo(40);
        assertThat(place.heightPx()).isEqualTo(30);
        assertThat(place.toCrs()).isEqualTo(TO_UTM);
        // computed with PROJ 9.1.1; Apache SIS inverts the projection to 6 µm, 5e-11 degrees
        assertThat(place.at(0, 0).lonDeg()).isCloseTo(-104.775326940424, within(1e-10));
        assertThat(place.at(0, 0).latDeg()).isCloseTo(38.9537640765316, within(1e-10));
    }

    @Test
    void aGeoTiffNeedsNothingBeside() throws Exception {
        Path yard = file("yard.tif", geoTiff().bytes());
        beside("yard.tfw", "1\n0\n0\n-1\n0\n0\n");
        ImagePlace place = placeOf(Imagery.read(yard));
        assertThat(place.toCrs()).isEqualTo(TO_UTM);
        assertThat(place.crs().epsg()).hasValue(32613);
    }

    @Test
    void aSideFileOfGdalIsUnderstood() throws Exception {
        Path yard = picture("yard.png");
        beside(
                "yard.png.aux.xml",
                "<PAMDataset><SRS dataAxisToSRSAxisMapping=\"1,2\">" + UTM_13.replace("\"", "&quot;") + "</SRS>"
                        + "<GeoTransform> 519467.5, 0.15, 0, 4311669.75, 0, -0.15</GeoTransform></PAMDataset>");
        assertThat(placeOf(Imagery.read(yard)).toCrs()).isEqualTo(TO_UTM);
    }

    @Test
    void degreesAreRecognised() throws Exception {
        Path yard = picture("yard.png");
        beside("yard.pgw", "1e-6\n0\n0\n-1e-6\n-104.7753\n38.9537\n");
        Read<Imagery> read = Imagery.read(yard);
        assertThat(read.problems()).extracting(Problem::code).containsExactly("IMAGE_DEGREES_ASSUMED");
        LonLat first = read.value().orElseThrow().place().orElseThrow().at(0.5, 0.5);
        assertThat(first.lonDeg()).isCloseTo(-104.7753, within(1e-12));
        assertThat(first.latDeg()).isCloseTo(38.9537, within(1e-12));
    }

    @Test
    void numbersOfAnUnnamedSystemAreNotGuessed() throws Exception {
        Path yard = picture("yard.png");
        beside("yard.pgw", IN_METRES);
        Read<Imagery> read = Imagery.read(yard);
        assertThat(read.value().orElseThrow().place()).isEmpty();
        assertThat(read.problems()).extracting(Problem::code).containsExactly("IMAGE_SYSTEM_UNKNOWN");
        assertThat(placeOf(Imagery.read(yard, Optional.of(Crs.ofEpsg(32613)))).toCrs())
                .isEqualTo(TO_UTM);
    }

    @Test
    void metresRoundZeroAreNoDegrees() throws Exception {
        Path yard = picture("yard.png");
        beside("yard.pgw", "0.15\n0\n0\n-0.15\n0\n0\n");
        Read<Imagery> read = Imagery.read(yard);
        assertThat(read.problems()).extracting(Problem::code).containsExactly("IMAGE_SYSTEM_UNKNOWN");
        assertThat(read.value().orElseThrow().unnamed()).contains(new Affine(0.15, 0, -0.075, 0, -0.15, 0.075));
    }

    @Test
    void aPlainPictureHasASizeOnly() throws Exception {
        Read<Imagery> read = Imagery.read(picture("yard.jpg"));
        assertThat(read.value()).contains(new Imagery(40, 30, Optional.empty(), Optional.empty()));
        assertThat(read.problems()).extracting(Problem::code).containsExactly("IMAGE_WITHOUT_PLACE");
    }

    @ParameterizedTest
    @CsvSource({"50000, Zstandard", "50001, WebP", "34925, LZMA", "12345, method 12345"})
    void pixelsThatCannotBeUnpackedAreNamedAndThePlaceIsRead(int compression, String name) throws Exception {
        Read<Imagery> read =
                Imagery.read(file("yard.tif", geoTiff().shorts(259, compression).bytes()));
        assertThat(read.value().orElseThrow().place().orElseThrow().toCrs()).isEqualTo(TO_UTM);
        assertThat(read.problems()).extracting(Problem::code).containsExactly("IMAGE_PIXELS_UNREADABLE");
        assertThat(read.problems().get(0).message()).contains(name).contains("save it again");
    }

    @Test
    void jpegInTiffIsNoTrouble() throws Exception {
        assertThat(placeOf(Imagery.read(
                                file("yard.tif", geoTiff().shorts(259, 7).bytes())))
                        .toCrs())
                .isEqualTo(TO_UTM);
    }

    @Test
    void aBigTiffIsPlacedButCannotBeShown() throws Exception {
        Read<Imagery> read = Imagery.read(file("yard.tif", geoTiff().bigBytes()));
        assertThat(read.value().orElseThrow().place()).isPresent();
        assertThat(read.problems())
                .extracting(Problem::message)
                .singleElement()
                .asString()
                .contains("BigTIFF");
    }

    @Test
    void aDamagedSideFileIsSaidAndThePictureKept() throws Exception {
        Path yard = picture("yard.png");
        beside("yard.pgw", "not numbers");
        Read<Imagery> read = Imagery.read(yard);
        assertThat(read.value()).contains(new Imagery(40, 30, Optional.empty(), Optional.empty()));
        assertThat(read.problems()).extracting(Problem::code).containsExactly("IMAGE_PLACE_UNREADABLE");
        Files.delete(folder.resolve("yard.pgw"));
        beside("yard.png.aux.xml", "<!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/passwd'>]><SRS>&b;</SRS>");
        assertThat(Imagery.read(yard).problems()).extracting(Problem::code).containsExactly("IMAGE_PLACE_UNREADABLE");
    }

    @Test
    void coordinatesThatFitNoPlaceAreSaid() throws Exception {
        Path yard = picture("yard.png");
        beside("yard.pgw", IN_METRES);
        Read<Imagery> read = Imagery.read(yard, Optional.of(Crs.LON_LAT));
        assertThat(read.value().orElseThrow().place()).isEmpty();
        assertThat(read.problems()).extracting(Problem::code).containsExactly("IMAGE_PLACE_UNREADABLE");
    }

    @Test
    void whatIsNoImageIsRefused() throws Exception {
        assertThat(codes(file("notes.png", "bought two bags".getBytes(StandardCharsets.UTF_8))))
                .containsExactly("IMAGE_PIXELS_UNREADABLE");
        assertThat(codes(file("empty.tif", new byte[0]))).containsExactly("IMAGE_PIXELS_UNREADABLE");
        assertThat(codes(folder.resolve("nowhere.png"))).containsExactly("FILE_NOT_FOUND");
        assertThat(codes(folder)).containsExactly("FILE_IS_FOLDER");
    }

    private static List<String> codes(Path file) {
        Read<Imagery> read = Imagery.read(file);
        assertThat(read.value()).isEmpty();
        return read.problems().stream().map(Problem::code).toList();
    }

    @Test
    void brokenTagsLeadToProblemsAndNothingWorse() throws Exception {
        byte[] sound = geoTiff().bytes();
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            byte[] broken = sound.clone();
            int at = 1208 + random.nextInt(broken.length - 1208);
            broken[at] = (byte) random.nextInt(256);
            Read<Imagery> read = Imagery.read(file("broken.tif", broken));
            assertThat(read.value().isPresent() || !read.problems().isEmpty()).isTrue();
        }
    }

    @Test
    void theDemoYardLiesOnItsPicture() {
        Yard yard =
                YardFiles.read(Path.of("maps/plover-court.loam.json")).yard().orElseThrow();
        Backdrop.Placement drawn = yard.backdrop().orElseThrow().placement();
        ImagePlace place = placeOf(Imagery.read(Path.of("maps/plover-court.tif")));
        Read<Backdrop> read = Imagery.under(yard.frame().origin().orElseThrow(), "plover-court.tif", place);
        assertThat(read.problems()).isEmpty();
        Backdrop.Placement fitted = read.value().orElseThrow().placement();
        for (double column = 0; column <= 800; column += 400) {
            for (double row = 0; row <= 1024; row += 512) {
                assertThat(at(fitted, column, row).distanceTo(at(drawn, column, row)))
                        .isLessThan(1e-4);
            }
        }
    }

    private static Point at(Backdrop.Placement p, double column, double row) {
        return new Point(p.a() * column + p.b() * row + p.c(), p.d() * column + p.e() * row + p.f());
    }

    @Test
    void anImageThatBendsIsWarnedOf() throws Exception {
        double pixelM = 0.15 / Math.cos(Math.toRadians(40));
        ImagePlace place =
                new ImagePlace(15000, 15000, new Affine(pixelM, 0, -9239517, 0, -pixelM, 4866000), Crs.ofEpsg(3857));
        Read<Backdrop> read = Imagery.under(place.centre(), "county.tif", place);
        assertThat(read.value()).isPresent();
        assertThat(read.problems()).extracting(Problem::code).containsExactly("IMAGE_BENT");
        assertThat(read.problems().get(0).message()).containsPattern("by up to [0-9.]+ pixels \\([0-9.]+ m\\)");
    }
}
