package loamline.files;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static loamline.files.Inputs.bytes;
import static loamline.files.Inputs.collection;
import static loamline.files.Inputs.feature;
import static loamline.files.Inputs.gate;
import static loamline.files.Inputs.geometry;
import static loamline.files.Inputs.read;
import static loamline.files.Inputs.reports;
import static loamline.files.Inputs.turf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.Collections;
import java.util.stream.Stream;
import loamline.account.Problem;
import loamline.place.LonLat;
import loamline.yard.Unknown;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** No input ends in an exception, runs on or fills the memory; each tells what is wrong and where. */
class HostileInputTest {
    private static final String SQUARE = "[[[-82.99,39.96],[-82.989,39.96],[-82.989,39.961],[-82.99,39.961]]]";

    /** Files that are of no use as a whole, with the report line after the file's name. */
    static Stream<Arguments> useless() {
        return Stream.of(
                arguments("nothing", bytes(""), " FILE_EMPTY"),
                arguments("blanks", bytes(" \n\n\t "), " FILE_EMPTY"),
                arguments("more blanks than are looked at", bytes(" ".repeat(500)), " FILE_EMPTY"),
                arguments("a picture", new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}, ":1 NOT_JSON"),
                arguments("NULs", new byte[1000], ":1 NOT_JSON"),
                arguments("XML", bytes("<?xml version=\"1.0\"?><kml/>"), ":1 NOT_JSON"),
                arguments("a lone number", bytes("5"), ":1 NOT_JSON"),
                arguments("a list", bytes("[[1,2]]"), ":1 NOT_JSON"),
                arguments("late junk", bytes(" ".repeat(500) + "true"), ":1 NOT_JSON"),
                arguments("UTF-16 with a mark", "{}".getBytes(UTF_16), ":1 ENCODING_NOT_UTF8"),
                arguments("UTF-16 without", "{}".getBytes(UTF_16LE), ":1 ENCODING_NOT_UTF8"),
                arguments("Latin-1", "{\"name\":\n\"Gräser\"}".getBytes(ISO_8859_1), ":2 JSON_MALFORMED"),
                arguments(
                        "cut in a list",
                        bytes("{\n\"type\":\"FeatureCollection\",\n\"features\":[{"),
                        ":3 JSON_CUT_OFF"),
                arguments("cut in a text", bytes("{\"type\":\"Featu"), ":1 JSON_CUT_OFF"),
                arguments("cut in a number", bytes("{\"a\":1."), ":1 JSON_MALFORMED"),
                arguments("a missing comma", bytes("{\"a\":1\n\"b\":2}"), ":2 JSON_MALFORMED"),
                arguments("two values", bytes("{}\n{}"), ":2 JSON_MALFORMED"),
                arguments("a raw line feed in a text", bytes("{\"a\":\"b\nc\"}"), ":1 JSON_MALFORMED"),
                arguments("half an escape", bytes("{\"a\":\"\\u12\"}"), ":1 JSON_MALFORMED"),
                arguments("deep lists", bytes("{\"a\":" + "[".repeat(101) + "]".repeat(101) + "}"), ":1 JSON_TOO_DEEP"),
                arguments("deep objects", bytes("{\"a\":".repeat(200) + "1" + "}".repeat(200)), ":1 JSON_TOO_DEEP"),
                arguments("a number of 2,000 digits", bytes("{\"a\":" + "9".repeat(2000) + "}"), ":1 JSON_TOO_LARGE"),
                arguments("no type", bytes("{}"), ":/type NOT_A_COLLECTION"),
                arguments("a lone feature", bytes("{\"type\":\"Feature\"}"), ":/type NOT_A_COLLECTION"),
                arguments(
                        "a lone geometry",
                        bytes("{\"type\":\"Point\",\"coordinates\":[1,2]}"),
                        ":/type NOT_A_COLLECTION"),
                arguments(
                        "a type that is no text",
                        bytes("{\"type\":[\"FeatureCollection\"]}"),
                        ":/type NOT_A_COLLECTION"),
                arguments(
                        "another frame", collection("", "\"loamlineFrame\":\"feet\""), ":/loamlineFrame FRAME_UNKNOWN"),
                arguments(
                        "another reference system",
                        collection("", "\"crs\":{\"properties\":{\"name\":\"EPSG:3857\"}}"),
                        ":/crs CRS_NOT_WGS84"),
                arguments(
                        "a project without a schema",
                        bytes("{\"format\":\"loamline-yard\"}"),
                        ":/schema SCHEMA_MISSING"),
                arguments(
                        "a project of schema 0",
                        bytes("{\"format\":\"loamline-yard\",\"schema\":0}"),
                        ":/schema SCHEMA_MISSING"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("useless")
    void aUselessFileIsRefused(String name, byte[] content, String report) {
        Read<Yard> read = read(content);
        assertThat(read.value()).isEmpty();
        assertThat(reports(read)).contains("error f" + report);
    }

    /** Features that are wrong in one way, with the report line; a sound one stands after each. */
    static Stream<Arguments> wrongFeatures() {
        return Stream.of(
                arguments("null", "null", "/features/0 WRONG_TYPE"),
                arguments("7", "7", "/features/0 WRONG_TYPE"),
                arguments("no type", "{\"geometry\":null}", "/features/0/type FEATURE_TYPE"),
                arguments("a geometry for a feature", "{\"type\":\"Point\"}", "/features/0/type FEATURE_TYPE"),
                arguments("no geometry", turf("null"), "/features/0/geometry GEOMETRY_MISSING"),
                arguments("a geometry that is a list", turf("[]"), "/features/0/geometry WRONG_TYPE"),
                arguments("a geometry without a type", turf("{}"), "/features/0/geometry/type GEOMETRY_TYPE"),
                arguments("a point for turf", turf(geometry("Point", "[1,2]")), "/features/0 GEOMETRY_TYPE"),
                arguments(
                        "a collection of geometries",
                        turf("{\"type\":\"GeometryCollection\",\"geometries\":[]}"),
                        "/features/0/geometry/type GEOMETRY_TYPE"),
                arguments(
                        "several lines in one",
                        feature("fence", geometry("MultiLineString", "[[[1,2],[3,4]],[[5,6],[7,8]]]")),
                        "/features/0/geometry/type GEOMETRY_TYPE"),
                arguments(
                        "no coordinates",
                        turf("{\"type\":\"Polygon\"}"),
                        "/features/0/geometry/coordinates WRONG_TYPE"),
                arguments(
                        "a line of no points",
                        feature("wall", geometry("LineString", "[]")),
                        "/features/0/geometry/coordinates GEOMETRY_EMPTY"),
                arguments(
                        "too flat",
                        turf(geometry("Polygon", "[[-82.99,39.96]]")),
                        "/features/0/geometry/coordinates/0/0 POSITION_WRONG"),
                arguments(
                        "too deep",
                        turf(geometry("Polygon", "[" + SQUARE + "]")),
                        "/features/0/geometry/coordinates/0/0 POSITION_WRONG"),
                arguments("one number", gate("[1]"), "/features/0/geometry/coordinates POSITION_WRONG"),
                arguments("text for numbers", gate("[\"1\",\"2\"]"), "/features/0/geometry/coordinates POSITION_WRONG"),
                arguments("NaN", gate("[NaN,2]"), "/features/0/geometry/coordinates POSITION_WRONG"),
                arguments("Infinity", gate("[1,-Infinity]"), "/features/0/geometry/coordinates POSITION_WRONG"),
                arguments("null for a number", gate("[1,null]"), "/features/0/geometry/coordinates POSITION_WRONG"),
                arguments("beyond all numbers", gate("[1,1e999]"), "/features/0/geometry/coordinates POSITION_WRONG"),
                arguments(
                        "an exponent without end",
                        gate("[1,1e999999999]"),
                        "/features/0/geometry/coordinates POSITION_WRONG"),
                arguments(
                        "swapped, off the earth",
                        gate("[39.96,-112.99]"),
                        "/features/0/geometry/coordinates POSITION_OFF"),
                arguments(
                        "swapped, on the earth",
                        gate("[39.96,-52.99]"),
                        "/features/0/geometry/coordinates FEATURE_FAR_AWAY"),
                arguments(
                        "swapped, in the ice", gate("[38.95,-77.04]"), "/features/0/geometry/coordinates POSITION_OFF"),
                arguments("metres", gate("[500000,4300000]"), "/features/0/geometry/coordinates POSITION_OFF"),
                arguments("at the pole", gate("[10,90]"), "/features/0/geometry/coordinates POSITION_OFF"),
                arguments("in another country", gate("[10,52]"), "/features/0/geometry/coordinates FEATURE_FAR_AWAY"),
                arguments(
                        "the second corner of a hole",
                        turf(geometry(
                                "Polygon",
                                SQUARE.replaceFirst("]]$", "],[[-82.99,39.96],[1,2,3,4],[]]]")
                                        .replace("[1,2,3,4]", "{}"))),
                        "/features/0/geometry/coordinates/1/1 POSITION_WRONG"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrongFeatures")
    void aWrongFeatureIsToldKeptAndPassedOver(String name, String feature, String report) {
        Read<Yard> read =
                read(collection(feature + "," + turf(geometry("Polygon", SQUARE)) + "," + gate("[-82.99,39.96]")));
        assertThat(reports(read)).contains("error f:" + report);
        Yard yard = read.value().orElseThrow();
        assertThat(yard.features()).hasSize(3).first().isInstanceOf(Unknown.class);
        assertThat(yard.features().subList(1, 3)).noneMatch(f -> f instanceof Unknown);
        assertThat(read(bytes(GeoJson.write(yard))).value()).contains(yard);
        assertThat(read(bytes(ProjectFile.write(yard))).value()).contains(yard);
    }

    /** Properties of the wrong type, with the report line; the feature is read with what is left. */
    static Stream<Arguments> wrongProperties() {
        return Stream.of(
                arguments("building", "\"heightM\":\"3\"", "/heightM WRONG_TYPE"),
                arguments("building", "\"heightM\":NaN", "/heightM WRONG_TYPE"),
                arguments("building", "\"heightFt\":[]", "/heightFt WRONG_TYPE"),
                arguments("building", "\"heightM\":1e999", "/heightM NUMBER_TOO_LARGE"),
                arguments("building", "\"name\":true", "/name WRONG_TYPE"),
                arguments("turf", "\"zone\":{}", "/zone WRONG_TYPE"),
                arguments("trouble", "\"quality\":4.5", "/quality WRONG_TYPE"),
                arguments("trouble", "\"quality\":1e12", "/quality WRONG_TYPE"),
                arguments("fence", "\"solid\":\"yes\"", "/solid WRONG_TYPE"),
                arguments("fence", "\"gates\":3", "/gates WRONG_TYPE"),
                arguments("fence", "\"gates\":[{\"atM\":1,\"widthM\":1},7]", "/gates/1 GATE_INCOMPLETE"),
                arguments("fence", "\"gates\":[{\"atM\":1}]", "/gates/0 GATE_INCOMPLETE"),
                arguments("tree", "\"foliage\":\"needles\"", "/foliage WRONG_TYPE"),
                arguments("head", "\"class\":\"cannon\"", "/class WRONG_TYPE"),
                arguments("head", "\"profile\":[0,0]", "/profile WRONG_TYPE"),
                arguments("head", "\"profile\":[1,null]", "/profile WRONG_TYPE"),
                arguments("head", "\"profile\":\"spiral\"", "/profile WRONG_TYPE"));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("wrongProperties")
    void aWrongPropertyIsToldAndTheFeatureRead(String kind, String property, String report) {
        String coordinates = kind.equals("fence") ? "[[-82.99,39.96],[-82.989,39.96]]" : "[-82.99,39.96]";
        boolean isOutline = !kind.equals("fence") && !kind.equals("tree") && !kind.equals("head");
        String geometry = isOutline
                ? geometry("Polygon", SQUARE)
                : geometry(kind.equals("fence") ? "LineString" : "Point", coordinates);
        Read<Yard> read = read(collection(feature(kind + "\"," + property + ",\"x\":\"", geometry)));
        assertThat(reports(read)).contains("error f:/features/0/properties" + report);
        assertThat(read.value().orElseThrow().features())
                .singleElement()
                .matches(f -> f.kind().isPresent());
    }

    @Test
    void everyProblemIsListed() {
        Read<Yard> read = read(
                collection(gate("[1]") + "," + gate("[2]") + "," + turf(geometry("Polygon", "[[[1],[2],[-82,39]]]"))));
        assertThat(reports(read))
                .contains(
                        "error f:/features/0/geometry/coordinates POSITION_WRONG",
                        "error f:/features/1/geometry/coordinates POSITION_WRONG",
                        "error f:/features/2/geometry/coordinates/0/0 POSITION_WRONG",
                        "error f:/features/2/geometry/coordinates/0/1 POSITION_WRONG");
    }

    @Test
    void aThousandWrongCornersAreNotAThousandLines() {
        String ring = String.join(",", Collections.nCopies(1000, "[1]"));
        Read<Yard> read =
                read(collection(gate("[-82.99,39.96]") + "," + turf(geometry("Polygon", "[[" + ring + "]]"))));
        assertThat(read.problems()).hasSize(Coordinates.MAX_LISTED + 1);
        assertThat(read.problems()).last().returns("POSITION_MORE", Problem::code);
    }

    @Test
    void aFloodOfProblemsEndsInACount() {
        String flood = String.join(",", Collections.nCopies(ProblemLog.MAX_LISTED + 5, "7"));
        Read<Yard> read = read(collection(flood));
        assertThat(read.problems()).hasSize(ProblemLog.MAX_LISTED + 1);
        assertThat(read.problems()).last().matches(Problem::isError).returns("MORE_PROBLEMS", Problem::code);
    }

    @Test
    void theHintSaysThatLongitudeComesFirst() {
        String[][] homesAndSwapped = {
            {"[-82.99,39.96]", "[39.96,-82.99]"}, {"[-112.9,39.9]", "[39.9,-112.9]"}, {"[5.1,52.1]", "[52.1,5.1]"}
        };
        for (String[] pair : homesAndSwapped) {
            String home = gate(pair[0]);
            assertThat(read(collection(home + "," + home + "," + gate(pair[1]))).problems())
                    .singleElement()
                    .matches(p -> p.isError() && p.message().contains("longitude comes first"))
                    .matches(p -> p.where().pointer().startsWith("/features/2/"));
        }
    }

    @Test
    void aYardOfWhichNothingCanBePlacedIsNone() {
        Read<Yard> read = read(collection(gate("[39.96,-82.99]") + "," + gate("[39.96,-82.99]")));
        assertThat(read.value()).isEmpty();
        assertThat(reports(read))
                .containsExactly(
                        "error f:/features/0/geometry/coordinates POSITION_OFF",
                        "error f:/features/1/geometry/coordinates POSITION_OFF",
                        "error f:/features NO_PLACE");
    }

    @Test
    void unknownKindsAloneKeepTheYardWhereTheyAre() {
        Read<Yard> read = read(collection(feature("pond", geometry("Point", "[-82.99,39.96]"))));
        Yard yard = read.value().orElseThrow();
        assertThat(yard.frame().origin()).contains(new LonLat(-82.99, 39.96));
        assertThat(GeoJson.write(yard)).contains("[-82.99, 39.96]").contains("pond");
    }

    @Test
    void anEmptyCollectionIsAnErrorButAYard() {
        Read<Yard> read = read(collection(""));
        assertThat(reports(read)).containsExactly("error f:/features NO_FEATURES");
        assertThat(read.value().orElseThrow().features()).isEmpty();
    }

    @Test
    void ofMembersOfOneNameTheLastCounts() {
        Read<Yard> read = read(collection(gate("[-82.99,39.96]"), "\"name\":\"a\",\"name\":\"b\""));
        assertThat(reports(read)).containsExactly("warning f:/name DUPLICATE_MEMBER");
        assertThat(read.value().orElseThrow().name()).isEqualTo("b");
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        String text = "\uFEFF" + new String(collection(gate("[-82.99,39.96]")), UTF_8);
        assertThat(read(bytes(text)).problems()).isEmpty();
    }

    @Test
    void aYardFiveKilometresWideIsDoubted() {
        assertThat(reports(read(collection(gate("[-82.99,39.96]") + "," + gate("[-82.99,40.01]")))))
                .containsExactly("warning f YARD_WIDE");
        assertThat(reports(
                        read(collection(gate("[0,0]") + "," + gate("[6000,0]"), "\"loamlineFrame\":\"local-metres\""))))
                .containsExactly("warning f YARD_WIDE");
    }

    @Test
    void doubtfulOutlinesAreReadAsDrawn() {
        String bowTie = "[[[0,0],[10,10],[10,0],[0,10],[0,0]]]";
        String line = "[[[0,0],[10,10]]]";
        String repeated = "[[[0,0],[0,0],[10,0],[10,0],[0,10]]]";
        for (String rings : new String[] {bowTie, line, repeated}) {
            Read<Yard> read = read(collection(turf(geometry("Polygon", rings)), "\"loamlineFrame\":\"local-metres\""));
            assertThat(read.problems()).isEmpty();
            assertThat(read.value().orElseThrow().features()).noneMatch(f -> f instanceof Unknown);
        }
    }

    @Test
    void whatIsNestedTooDeepIsNotKept() {
        String deep = "[".repeat(60) + "]".repeat(60);
        Read<Yard> read =
                read(collection(feature("gate\",\"deep\":" + deep + ",\"x\":\"", geometry("Point", "[-82.99,39.96]"))
                        + "," + feature("pond\",\"deep\":" + deep + ",\"x\":\"", "null")));
        assertThat(reports(read))
                .contains(
                        "warning f:/features/0/properties/deep MEMBER_TOO_DEEP",
                        "error f:/features/1 FEATURE_TOO_DEEP");
        assertThat(read(bytes(GeoJson.write(read.value().orElseThrow()))).value())
                .isEqualTo(read.value());
    }
}
