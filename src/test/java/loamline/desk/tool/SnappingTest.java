package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import loamline.desk.tool.Input.Held;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.yard.Edits;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A centimetre of ground to a pixel: snaps reach 10 cm, directions are lent from 40 cm. */
class SnappingTest {
    private static final double METRES_PER_PX = 0.01;
    private static final Held SHIFT = new Held(true, false, false);
    private static final Held ALT = new Held(false, false, true);

    /** A house of 10 by 8 m, a fence across its north-east corner, a slanting wall, a tree. */
    private static final Snapping YARD = Snapping.over(yard());

    private static Yard yard() {
        Yard yard = Yard.empty("", Frame.local());
        yard = Edits.add(yard, NewFeatures.area(Kind.BUILDING, Outline.of(0, 0, 10, 0, 10, 8, 0, 8), yard));
        yard = Edits.add(yard, NewFeatures.line(Kind.FENCE, line(5, 6, 15, 6), yard));
        yard = Edits.add(yard, NewFeatures.line(Kind.WALL, line(20, 0, 24, 3), yard));
        return Edits.add(yard, NewFeatures.tree(new Point(30, 30), OptionalDouble.of(3), yard));
    }

    private static Polyline line(double x0, double y0, double x1, double y1) {
        return new Polyline(List.of(new Point(x0, y0), new Point(x1, y1)));
    }

    private static Snapped snap(double x, double y, List<Point> drawn) {
        return YARD.snap(new Point(x, y), Held.NONE, drawn, METRES_PER_PX);
    }

    private static List<Point> points(String drawn) {
        return drawn == null
                ? List.of()
                : Arrays.stream(drawn.split(","))
                        .map(pair -> pair.strip().split(" "))
                        .map(pair -> new Point(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])))
                        .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // pointer | drawn | word | where
                "9.95 8.06 | | corner | 10 8",
                "30.03 29.96 | | point | 30 30",
                "3.2 -0.07 | | edge | 3.2 0",
                "0.04 0.09 | | corner | 0 0",
                "-0.08 4 | | edge | 0 4",
                // the closing side of a ring is an edge too
                "0.05 5 | | edge | 0 5",
                "9.93 6.05 | | crossing | 10 6",
                // a corner wins over a nearer edge
                "9.92 0 | | corner | 10 0",
                "3 -0.11 | | | 3 -0.11",
                "40 40 | | | 40 40",
                // the last side, 4 east
                "44.06 47 | 40 40, 44 40 | right angle | 44 47",
                "47 40.08 | 40 40, 44 40 | straight on | 47 40",
                "44.2 47 | 40 40, 44 40 | | 44.2 47",
                // closing
                "40.05 39.97 | 40 40, 44 40, 44 47 | close | 40 40",
                "40.05 39.97 | 40 40, 44 40 | straight on | 40.05 40",
                "40.04 47.05 | 40 40, 44 40, 44 47 | right angle, in line with the start | 40 47",
                "40.06 43 | 40 40, 44 40, 43 45 | in line with the start | 40 43",
                "41 39.95 | 40 40, 44 40, 43 45 | in line with the start | 41 40",
                // square to a first side that slants: 3, 4 -> through the start along -4, 3
                "36.05 43.02 | 40 40, 43 44, 39 49 | in line with the start | 36.0224 42.9832",
                // off a wall at a right angle, and along it
                "18.86 4.89 | 22 1.5 | | 18.86 4.89",
                "19.03 5.46 | 22 1.5 | right angle | 19.03 5.46",
                "22.3 1.8 | 20.4 0.3 | edge | 22.336 1.752",
                "24.26 3.17 | | in line | 24.248 3.186",
                "22.25 2.04 | 20.62 0.84 | parallel | 22.2392 2.0544",
                // right angle meets an edge
                "4.04 0.05 | 9 -3, 4 -3 | right angle, edge | 4 0",
            })
    void thePointerIsDrawnToWhatIsThere(String pointer, String drawn, String word, String where) {
        Point from = points(pointer).get(0);
        Snapped snapped = snap(from.x(), from.y(), points(drawn));

        assertThat(snapped.word()).isEqualTo(word == null ? "" : word);
        assertThat(snapped.at().distanceTo(points(where).get(0))).isLessThan(1e-9);
    }

    @ParameterizedTest
    @CsvSource({"44.5, 47, 44, 47", "47, 43.4, 47.2, 43.2", "37, 39, 37, 40", "41, 36.5, 40.75, 36.75"})
    void shiftKeepsToEightDirections(double x, double y, double atX, double atY) {
        Snapped snapped = YARD.snap(new Point(x, y), SHIFT, points("50 50, 44 40"), METRES_PER_PX);

        assertThat(snapped.word()).isEqualTo("45°");
        assertThat(snapped.at().distanceTo(new Point(atX, atY))).isLessThan(1e-9);
    }

    @Test
    void shiftStopsAtTheEdgeItMeets() {
        Snapped snapped = YARD.snap(new Point(3.7, -0.05), SHIFT, points("3 -5"), METRES_PER_PX);

        assertThat(snapped.word()).isEqualTo("45°, edge");
        assertThat(snapped.at().distanceTo(new Point(3, 0))).isLessThan(1e-12);
    }

    @Test
    void shiftBeforeAnythingIsDrawnSnapsAsUsual() {
        assertThat(YARD.snap(new Point(9.95, 8.06), SHIFT, List.of(), METRES_PER_PX))
                .isEqualTo(snap(9.95, 8.06, List.of()));
    }

    @Test
    void altLeavesThePointerAlone() {
        Point pointer = new Point(9.99, 8.01);
        Snapped snapped = YARD.snap(pointer, ALT, points("9 9"), METRES_PER_PX);

        assertThat(snapped).isEqualTo(Snapped.free(pointer));
        assertThat(snapped.guides()).isEmpty();
    }

    @Test
    void theLastPlaceIsNeverOffered() {
        assertThat(snap(10.02, 8.02, points("10 8")).at()).isNotEqualTo(new Point(10, 8));
    }

    @Test
    void aSnapShowsWhatItGoesBy() {
        assertThat(snap(44.06, 47, points("40 40, 44 40")).guides())
                .containsExactly(
                        new Guide.Line(points("40 40, 44 40"), false, Guide.Style.HELP),
                        new Guide.Snap(new Point(44, 47), "right angle"));
        assertThat(snap(40.06, 43, points("40 40, 44 40, 43 45")).guides())
                .contains(new Guide.Line(points("40 40, 40 43"), false, Guide.Style.HELP));
    }

    @Test
    void reachIsKeptInPixels() {
        Point pointer = new Point(10.5, 8.5);
        assertThat(YARD.snap(pointer, Held.NONE, List.of(), 0.01).word()).isEmpty();
        assertThat(YARD.snap(pointer, Held.NONE, List.of(), 0.1).at()).isEqualTo(new Point(10, 8));
    }

    @Test
    void itIsMadeAgainOnlyForAnotherYard() {
        Yard yard = yard();
        Snapping snapping = Snapping.over(yard);

        assertThat(snapping.current(yard)).isSameAs(snapping);
        assertThat(snapping.current(yard.withFeatures(List.of())).snap(new Point(0.01, 0), Held.NONE, List.of(), 0.01))
                .isEqualTo(Snapped.free(new Point(0.01, 0)));
    }

    @Test
    void twoThousandFeaturesDoNotSlowTheMouse() {
        Yard empty = Yard.empty("", Frame.local());
        List<Feature> beds = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            Outline outline = Outline.of(Rings.circle(new Point(i % 50 * 3, Math.floorDiv(i, 50) * 3), 1.6));
            beds.add(NewFeatures.area(Kind.BED, outline, empty).withKey("bed" + i));
        }
        Snapping snapping = Snapping.over(empty.withFeatures(beds));
        List<Point> drawn = points("10 10, 60 10, 60 70");

        // 200 moves, from the zoom of a bed to that of a block of houses, with 16 ms a frame
        assertTimeout(Duration.ofMillis(200 * 16), () -> {
            for (int i = 0; i < 200; i++) {
                snapping.snap(new Point(i * 0.75, i * 0.6), Held.NONE, drawn, 0.005 * (1 << (i % 8)));
            }
        });
    }
}
