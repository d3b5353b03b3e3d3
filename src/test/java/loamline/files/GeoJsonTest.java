package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Panel;
import loamline.yard.Profile;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;
import loamline.yard.Unknown;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class GeoJsonTest {
    private final Read<Yard> everyKind = resource("every-kind.geojson");
    private final Yard yard = everyKind.value().orElseThrow();

    @Test
    void givenPropertiesAreTakenAndMissingOnesGetTheirDefaults() {
        Turf front = at(1, Turf.class);
        assertThat(front.zone()).isEqualTo("front");
        assertThat(front.grass()).isEqualTo("tall fescue");
        assertThat(front.trouble()).hasValue(0.25);
        assertThat(front.slopePct()).hasValue(4);
        assertThat(front.bag()).contains("A");
        assertThat(at(2, Turf.class))
                .returns("turf", Turf::zone)
                .returns(OptionalDouble.empty(), Turf::trouble)
                .returns(Optional.empty(), Turf::bag);
        assertThat(at(6, Barrier.class)).returns(0.6, Barrier::heightM).returns(false, Barrier::solid);
        assertThat(at(7, Tree.class))
                .returns(0.2, Tree::trunkRadiusM)
                .returns(false, Tree::evergreen)
                .returns(0.1, Tree::transmission)
                .returns(OptionalDouble.empty(), Tree::baseM)
                .returns(false, Tree::cylinder);
        assertThat(at(8, Tree.class))
                .returns(0.4, Tree::trunkRadiusM)
                .returns(true, Tree::evergreen)
                .returns(OptionalDouble.of(0), Tree::baseM)
                .returns(true, Tree::cylinder);
        assertThat(at(13, KeepAway.class)).returns(1.0, KeepAway::radiusM).returns("buried line", KeepAway::reason);
        assertThat(at(14, Trouble.class)).returns(OptionalInt.of(4), Trouble::quality);
    }

    @Test
    void feetAreAsGoodAsMetres() {
        assertThat(at(3, Building.class).heightM()).isEqualTo(3.048);
        assertThat(at(7, Tree.class).crownRadiusM()).hasValue(4.572);
        assertThat(at(9, Head.class).radiusM()).hasValue(9.144);
        assertThat(at(5, Barrier.class).gates())
                .containsExactly(new Barrier.Opening(3.048, 1, new Extras(java.util.Map.of("latch", "left"))));
    }

    @Test
    void headsAreNamedByTheirOrderUnlessTheyHaveAName() {
        assertThat(yard.all(Head.class).map(Head::id)).containsExactly("h1", "h3", "h4");
    }

    @Test
    void aProfileIsAWordOrAListOfDepths() {
        assertThat(yard.all(Head.class).map(Head::profile))
                .containsExactly(new Profile.Measured(List.of(1.0, 0.8, 0.3)), Profile.Named.CONE, Profile.Named.RING);
        assertThat(at(9, Head.class))
                .returns(Optional.of(HeadClass.ROTOR), Head::headClass)
                .returns("1", Head::valve);
    }

    @Test
    void anIdIsTheKeyAndEveryKeyIsUnique() {
        assertThat(yard.features().get(0).key()).isEqualTo("7");
        assertThat(yard.features().get(17).key()).isEqualTo("f17");
        assertThat(yard.features().stream().map(Feature::key)).doesNotHaveDuplicates();
    }

    @Test
    void whatIsNotKnownIsToldOnceAndKept() {
        assertThat(everyKind.problems().stream().map(p -> p.line("f").replaceFirst(" [^ ]*$", "")))
                .hasSize(everyKind.problems().size());
        assertThat(everyKind.problems().stream()
                        .map(p -> p.severity().word() + " " + p.where().pointer() + " " + p.code()))
                .containsExactlyInAnyOrder(
                        "warning /features/16/properties/heightM HEIGHT_ASSUMED",
                        "info /features/17 DUPLICATE_ID",
                        "info /features/1/geometry/coordinates/0/0 ALTITUDE_DROPPED",
                        "info /features/1/properties/mower UNKNOWN_PROPERTY",
                        "info /features/5/properties/gates/0/latch UNKNOWN_PROPERTY",
                        "info /features/17/properties/kind UNKNOWN_KIND",
                        "info /survey UNKNOWN_PROPERTY");
        assertThat(everyKind.problems())
                .anyMatch(
                        p -> p.code().equals("ALTITUDE_DROPPED") && p.message().contains("5 times"));
        assertThat(yard.extras().members()).containsOnlyKeys("survey");
        assertThat(at(17, Unknown.class).extras().members())
                .containsOnlyKeys("type", "properties", "geometry", "season");
    }

    @Test
    void ringsMayRunEitherWayAndNeedNotBeClosed() {
        assertThat(((Outline) at(0, Boundary.class).outline()).parts().get(0).shell())
                .hasSize(4);
        Outline front = at(1, Turf.class).outline();
        assertThat(front.parts().get(0).shell()).hasSize(4);
        assertThat(front.parts().get(0).holes().get(0)).hasSize(3);
        assertThat(at(2, Turf.class).outline().parts()).hasSize(2);
    }

    @Test
    void theOriginIsTheMiddleOfTheBoxToFiveDecimals() {
        assertThat(yard.frame()).isEqualTo(Frame.at(new LonLat(-82.9987, 39.9612)));
    }

    @Test
    void theLotHasItsAreaOnTheEllipsoid() {
        // computed with GeographicLib-Java 2.1
        double expected = geodesicAreaM2(-82.9990, -82.9984, 39.9610, 39.9614);
        double measured = Region.of(at(0, Boundary.class).outline()).areaM2();
        assertThat(measured).isCloseTo(expected, within(1e-6 * expected));
    }

    private static double geodesicAreaM2(double west, double east, double south, double north) {
        var area = new net.sf.geographiclib.PolygonArea(net.sf.geographiclib.Geodesic.WGS84, false);
        area.AddPoint(south, west);
        area.AddPoint(south, east);
        area.AddPoint(north, east);
        area.AddPoint(north, west);
        return area.Compute().area;
    }

    @Test
    void aPanelWithoutAHeightGetsOneAndAWarning() {
        assertThat(at(16, Panel.class).heightM()).isEqualTo(Panel.DEFAULT_HEIGHT_M);
    }

    @Test
    void theWrittenFileIsAsExpectedByteForByte() {
        assertThat(GeoJson.write(yard)).isEqualTo(text("every-kind-written.geojson"));
        assertThat(ProjectFile.write(yard)).isEqualTo(text("every-kind.loam.json"));
    }

    @Test
    void writtenShellsRunCounterclockwiseAndHolesClockwise() {
        Outline clockwise = new Outline(List.of(new Outline.Part(
                List.of(new Point(0, 0), new Point(0, 9), new Point(9, 9), new Point(9, 0)),
                List.of(List.of(new Point(1, 1), new Point(2, 1), new Point(2, 2))))));
        Yard drawn = Yard.empty("", Frame.local()).withFeatures(List.of(new Boundary("b", "", clockwise, Extras.NONE)));
        String written = GeoJson.write(drawn);
        assertThat(written)
                .contains("[[0.0, 0.0], [9.0, 0.0], [9.0, 9.0], [0.0, 9.0], [0.0, 0.0]]")
                .contains("[[1.0, 1.0], [2.0, 2.0], [2.0, 1.0], [1.0, 1.0]]")
                .contains("\"loamlineReversed\": [0, 1]");
        assertThat(read(written).value()).contains(drawn);
    }

    @Test
    void localMetresAreTakenAsTheyAre() {
        Read<Yard> read = read("{\"type\":\"FeatureCollection\",\"loamlineFrame\":\"local-metres\",\"features\":["
                + "{\"type\":\"Feature\",\"properties\":{\"kind\":\"gate\"},"
                + "\"geometry\":{\"type\":\"Point\",\"coordinates\":[0.1,-5000.0000001]}}]}");
        assertThat(read.value().orElseThrow().frame()).isEqualTo(Frame.local());
        assertThat(read.value().orElseThrow().features().get(0).shape()).contains(new Point(0.1, -5000.0000001));
        assertThat(read.problems()).isEmpty();
    }

    @Test
    void aYardOnBothSidesOfTheAntimeridianStaysInOnePiece() {
        Read<Yard> read = read(
                "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"kind\":\"fence\"},"
                        + "\"geometry\":{\"type\":\"LineString\",\"coordinates\":[[179.9999,-17],[-179.9999,-17]]}}]}");
        assertThat(read.problems()).isEmpty();
        Yard fiji = read.value().orElseThrow();
        // 0.0002° along the parallel: 21.297 m by GeographicLib-Java 2.1 (Geodesic.WGS84.Inverse)
        double lengthM = net.sf.geographiclib.Geodesic.WGS84.Inverse(-17, 179.9999, -17, -179.9999).s12;
        assertThat(fiji.all(Barrier.class).findFirst().orElseThrow().line().lengthM())
                .isCloseTo(lengthM, within(1e-5));
        assertThat(read(GeoJson.write(fiji)).value()).contains(fiji);
    }

    @Test
    void bothUnitsAtOnceGiveMetresAndAWarning() {
        Read<Yard> read = read("{\"type\":\"FeatureCollection\",\"loamlineFrame\":\"local-metres\",\"features\":["
                + "{\"type\":\"Feature\",\"properties\":{\"kind\":\"keepaway\",\"radiusM\":2,\"radiusFt\":3},"
                + "\"geometry\":{\"type\":\"Point\",\"coordinates\":[0,0]}}]}");
        assertThat(read.value()
                        .orElseThrow()
                        .all(KeepAway.class)
                        .findFirst()
                        .orElseThrow()
                        .radiusM())
                .isEqualTo(2);
        assertThat(read.problems()).singleElement().returns("LENGTH_TWICE", p -> p.code());
    }

    @Test
    void everyKindHasACodec() {
        for (Kind kind : Kind.values()) {
            assertThat(FeatureCodecs.of(kind).names().ours()).contains("kind");
        }
    }

    private <T extends Feature> T at(int index, Class<T> type) {
        return type.cast(yard.features().get(index));
    }

    private static Read<Yard> read(String text) {
        try {
            return GeoJson.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Read<Yard> resource(String name) {
        return read(text(name));
    }

    private static String text(String name) {
        try (InputStream in = Objects.requireNonNull(GeoJsonTest.class.getResourceAsStream("yard/" + name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
