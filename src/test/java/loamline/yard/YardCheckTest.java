package loamline.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.account.Problem;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.place.LonLat;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class YardCheckTest {
    /** A lot of 40 m by 30 m, turf over most of it. */
    private static final Boundary LOT = new Boundary("lot", "", square(0, 0, 40, 30), Extras.NONE);

    private static final Turf LAWN = turf("lawn", "lawn", square(1, 1, 39, 29));

    /** What is added to the lot and the lawn, and what the check says of it. */
    static Stream<Arguments> doubtful() {
        return Stream.of(
                arguments("a sound head", head(0.8, 10, 90), List.of()),
                arguments(
                        "turf of two points",
                        turf("x", "x", Outline.of(2, 2, 3, 3)),
                        List.of("error OUTLINE_TOO_FEW_POINTS")),
                arguments(
                        "turf of one point three times",
                        turf("x", "x", Outline.of(2, 2, 2, 2, 2, 2)),
                        List.of("error OUTLINE_TOO_FEW_POINTS")),
                arguments(
                        "an outline without points",
                        cover(new Outline(List.of())),
                        List.of("error OUTLINE_TOO_FEW_POINTS")),
                arguments("points on one line", cover(Outline.of(2, 2, 3, 3, 5, 5)), List.of("error OUTLINE_NO_AREA")),
                arguments(
                        "a bow-tie",
                        cover(Outline.of(2, 2, 4, 4, 4, 2, 2, 4)),
                        List.of("warning OUTLINE_SELF_CROSSING")),
                arguments(
                        "a point given twice",
                        cover(Outline.of(2, 2, 4, 2, 4, 2, 4, 4)),
                        List.of("info OUTLINE_POINT_REPEATED")),
                arguments(
                        "a hole beside its shell",
                        cover(withHole(square(2, 2, 4, 4), square(6, 6, 7, 7))),
                        List.of("warning OUTLINE_HOLE_OUTSIDE")),
                arguments(
                        "a hole of two points",
                        cover(withHole(square(2, 2, 4, 4), Outline.of(3, 3, 3.5, 3.5))),
                        List.of("warning OUTLINE_TOO_FEW_POINTS")),
                arguments(
                        "parts over each other",
                        cover(new Outline(Stream.of(square(2, 2, 4, 4), square(3, 3, 5, 5))
                                .flatMap(o -> o.parts().stream())
                                .toList())),
                        List.of("warning OUTLINE_PARTS_OVERLAP")),
                arguments("turf of the same zone twice", turf("x", "lawn", square(5, 5, 9, 9)), List.of()),
                arguments("turf of two zones", turf("x", "x", square(5, 5, 9, 9)), List.of("warning ZONES_OVERLAP")),
                arguments("turf that overlaps by a wobble", turf("x", "x", square(5, 28.999, 20, 29.5)), List.of()),
                arguments(
                        "turf half over the line",
                        turf("x", "lawn", square(39, 5, 41, 9)),
                        List.of("warning TURF_OUTSIDE_BOUNDARY")),
                arguments("turf over the line by a wobble", turf("x", "lawn", square(39, 5, 40.02, 9)), List.of()),
                arguments(
                        "a second lot",
                        new Boundary("x", "", square(50, 0, 60, 9), Extras.NONE),
                        List.of("warning SEVERAL_BOUNDARIES")),
                arguments(
                        "a neighbour's house",
                        building(square(50, 0, 60, 9)),
                        List.of("info BUILDING_OUTSIDE_BOUNDARY")),
                arguments("a house across the line", building(square(35, 0, 60, 9)), List.of()),
                arguments("a head on the verge", head(0.2, 10, 90), List.of("warning HEAD_OFF_TURF")),
                arguments(
                        "a head in the street",
                        head(-3, 10, 90),
                        List.of("warning HEAD_OUTSIDE_BOUNDARY", "warning HEAD_OFF_TURF")),
                arguments("an arc of nothing", head(10, 10, 0), List.of("error VALUE_OUT_OF_RANGE")),
                arguments("an arc of two turns", head(10, 10, 720), List.of("error VALUE_OUT_OF_RANGE")),
                arguments("a radius below 0", head("h", -1, 10), List.of("error VALUE_OUT_OF_RANGE")),
                arguments("a radius in feet", head("h", 45, 10), List.of("warning VALUE_UNLIKELY")),
                arguments("a flow of 0", head("h", 5, 0), List.of("error VALUE_OUT_OF_RANGE")),
                arguments("quality 0", trouble(0), List.of("error VALUE_OUT_OF_RANGE")),
                arguments("quality 9", trouble(9), List.of()),
                arguments("quality 10", trouble(10), List.of("error VALUE_OUT_OF_RANGE")),
                arguments(
                        "trouble of 20 %, as 20",
                        turf("x", OptionalDouble.of(20)), List.of("error VALUE_OUT_OF_RANGE")),
                arguments("no trouble", turf("x", OptionalDouble.of(0)), List.of()),
                arguments("a fence of one point", fence(List.of(), 5, 5), List.of("error LINE_TOO_SHORT")),
                arguments(
                        "a fence from a point to itself",
                        fence(List.of(), 5, 5, 5, 5),
                        List.of("error LINE_TOO_SHORT")),
                arguments("a gate in a fence", fence(List.of(gap(5, 1)), 5, 5, 15, 5), List.of()),
                arguments("a gate at its end", fence(List.of(gap(9.5, 1)), 5, 5, 15, 5), List.of()),
                arguments(
                        "a gate past its end",
                        fence(List.of(gap(9.8, 1)), 5, 5, 15, 5),
                        List.of("warning GATE_BEYOND_FENCE")),
                arguments(
                        "a gate before its start",
                        fence(List.of(gap(-1, 1)), 5, 5, 15, 5),
                        List.of("error GATE_BEYOND_FENCE")),
                arguments(
                        "a gate off a fence",
                        fence(List.of(gap(12, 1)), 5, 5, 15, 5),
                        List.of("error GATE_BEYOND_FENCE")),
                arguments(
                        "a gate without a width", fence(List.of(gap(5, 0)), 5, 5, 15, 5), List.of("error GATE_WIDTH")),
                arguments("a crown above the top", tree(10, 10, 8, 9), List.of("warning TREE_BASE_ABOVE_TOP")),
                arguments(
                        "a keep-away spot of one point",
                        new KeepAway("x", 1, "", new Polyline(List.of(new Point(5, 5))), Extras.NONE),
                        List.of()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("doubtful")
    void tellsWhatIsDoubtful(String name, Feature added, List<String> expected) {
        List<Problem> problems = YardCheck.of(yard(LOT, LAWN, added));
        assertThat(problems.stream().map(YardCheckTest::report)).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(problems)
                .allMatch(p ->
                        p.where().pointer().equals("/features/2") && p.message().contains(":"));
    }

    @Test
    void aYardWithoutTurfOrPropertyLineSaysSo() {
        assertThat(YardCheck.of(yard()).stream().map(YardCheckTest::report))
                .containsExactly("error NO_TURF", "info NO_BOUNDARY");
        assertThat(YardCheck.of(yard(LOT, LAWN))).isEmpty();
    }

    @Test
    void aTreeOrAHeadInsideTheHouseIsDoubted() {
        Building house = building(square(5, 5, 15, 15));
        assertThat(
                        YardCheck.of(yard(LOT, LAWN, house, tree(10, 10, 8, 2), head(6, 6, 90), tree(4.9, 10, 8, 2)))
                                .stream()
                                .map(p -> p.where().pointer() + " " + report(p)))
                .containsExactly("/features/4 warning HEAD_ON_BUILDING", "/features/3 warning TREE_ON_BUILDING");
    }

    @Test
    void twoHeadsOfOneNameAreDoubted() {
        assertThat(YardCheck.of(yard(
                                LOT, LAWN, head("h", 5, 10), head("h", 5, 10).withKey("y")))
                        .stream()
                        .map(YardCheckTest::report))
                .containsExactly("warning HEAD_ID_TWICE");
    }

    @Test
    void anOverlapTellsItsAreaInBothSystemsAndWhoGetsIt() {
        List<Problem> problems = YardCheck.of(yard(LOT, LAWN, turf("x", "back", square(5, 5, 9, 10))));
        // 20 m² are 215.28 ft² at 0.09290304 m²/ft², exact by the international foot
        assertThat(problems)
                .singleElement()
                .extracting(Problem::message)
                .asString()
                .contains("turf “back” overlaps turf “lawn” by 20.0 m² (215 ft²)")
                .contains("zone listed first");
    }

    @Test
    void aFaultIsNamedByItsSideAndInTheCoordinatesOfTheFile() {
        Outline crossing = Outline.of(0, 0, 30, 0, 30, 20, 28, 20, 30, 18, 28, 18, 0, 18);
        String local = YardCheck.of(yard(turf("x", "x", crossing))).get(0).message();
        assertThat(local).contains("in the north-east at [30.00, 18.00]");
        Yard onEarth = yard(turf("x", "x", crossing));
        onEarth = onEarth.withFrame(Frame.at(new LonLat(-83, 40)));
        // 30 m east and 18 m north of [-83, 40] on the ellipsoid: GeographicLib-Java 2.1
        String lon = "%.7f".formatted(Geodesic.WGS84.Direct(40, -83, 90, 30).lon2);
        String lat = "%.7f".formatted(Geodesic.WGS84.Direct(40, -83, 0, 18).lat2);
        assertThat(YardCheck.of(onEarth).get(0).message()).contains("in the north-east at [" + lon + ", " + lat + "]");
    }

    @Test
    void twoThousandFeaturesAreNoEffort() {
        List<Feature> features = new ArrayList<>(List.of(new Boundary("lot", "", square(0, 0, 500, 500), Extras.NONE)));
        for (int i = 0; i < 1000; i++) {
            double x = i % 32 * 15;
            double y = i / 32 * 15;
            features.add(turf("t" + i, "zone " + i, square(x, y, x + 15, y + 15)));
            features.add(head(x, y, 90).withKey("h" + i));
        }
        Yard yard = yard(features.toArray(Feature[]::new));
        List<Problem> problems = assertTimeout(Duration.ofSeconds(10), () -> YardCheck.of(yard));
        assertThat(problems.stream().map(YardCheckTest::report)).containsOnly("warning HEAD_ID_TWICE");
    }

    @Test
    void turfDrawnAThousandTimesOverEndsInACount() {
        Yard yard = yard(IntStream.range(0, 1000)
                .mapToObj(i -> turf("t" + i, "zone " + i, square(0, 0, 9, 9)))
                .toArray(Feature[]::new));
        List<Problem> problems = YardCheck.of(yard);
        assertThat(problems.stream().filter(p -> p.code().equals("ZONES_OVERLAP")))
                .hasSize(GroundCheck.MAX_OVERLAPS);
        assertThat(problems).last().returns("ZONES_OVERLAP_MORE", Problem::code);
    }

    private static String report(Problem problem) {
        return problem.severity().word() + " " + problem.code();
    }

    private static Yard yard(Feature... features) {
        return Yard.empty("", Frame.local()).withFeatures(List.of(features));
    }

    private static Outline square(double west, double south, double east, double north) {
        return Outline.of(west, south, east, south, east, north, west, north);
    }

    private static Outline withHole(Outline shell, Outline hole) {
        return new Outline(List.of(new Outline.Part(
                shell.parts().get(0).shell(), List.of(hole.parts().get(0).shell()))));
    }

    private static Turf turf(String key, String zone, Outline outline) {
        return new Turf(
                key, zone, "", OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), outline, Extras.NONE);
    }

    private static Turf turf(String key, OptionalDouble trouble) {
        return new Turf(
                key, "lawn", "", trouble, OptionalDouble.empty(), Optional.empty(), square(2, 2, 4, 4), Extras.NONE);
    }

    private static Cover cover(Outline outline) {
        return new Cover("x", Kind.BED, "", outline, Extras.NONE);
    }

    private static Building building(Outline outline) {
        return new Building("house", "", 3, 0, outline, Extras.NONE);
    }

    private static Trouble trouble(int quality) {
        return new Trouble("x", "", OptionalInt.of(quality), square(2, 2, 4, 4), Extras.NONE);
    }

    private static Barrier.Opening gap(double atM, double widthM) {
        return new Barrier.Opening(atM, widthM);
    }

    private static Barrier fence(List<Barrier.Opening> gates, double... xy) {
        List<Point> points = Outline.of(xy).parts().get(0).shell();
        return new Barrier("x", Kind.FENCE, 1.8, gates, true, new Polyline(points), Extras.NONE);
    }

    private static Tree tree(double x, double y, double heightM, double baseM) {
        return new Tree(
                "tree" + x,
                OptionalDouble.of(2),
                OptionalDouble.of(heightM),
                0.2,
                false,
                0.1,
                OptionalDouble.of(baseM),
                false,
                new Point(x, y),
                Extras.NONE);
    }

    private static Head head(double x, double y, double sweepDeg) {
        return head("h", x, y, sweepDeg, 5, 10);
    }

    private static Head head(String id, double radiusM, double flowLpm) {
        return head(id, 10, 10, 90, radiusM, flowLpm);
    }

    private static Head head(String id, double x, double y, double sweepDeg, double radiusM, double flowLpm) {
        return new Head(
                "x",
                id,
                "",
                Optional.empty(),
                OptionalDouble.of(radiusM),
                0,
                sweepDeg,
                OptionalDouble.of(flowLpm),
                Profile.Named.CONE,
                0,
                new Point(x, y),
                Extras.NONE);
    }
}
