package loamline.yard;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.yard.Backdrop.Placement;
import org.junit.jupiter.api.Test;

class ImageEditsTest {
    /** 400 x 200 pixels of 0.1 m, its middle at (20, 10), nobody has measured it. */
    private static final Backdrop IMAGE =
            new Backdrop("a.png", 400, 200, new Placement(0.1, 0, 0, 0, -0.1, 20), 1, 1, List.of(), Extras.NONE);

    private static final KnownDistance TWICE = new KnownDistance(new Point(0, 0), new Point(100, 0), 20);

    private static Yard on(Backdrop image, Feature... features) {
        return yard(features).withBackdrop(Optional.of(image));
    }

    private static Backdrop imageOf(Yard yard) {
        return yard.backdrop().orElseThrow();
    }

    private static List<Point> corners(Yard yard, String key) {
        return yard.feature(key).orElseThrow().shape().orElseThrow().vertices().toList();
    }

    @Test
    void pixelsAndGroundGoBothWays() {
        Placement skew = new Placement(0.2, 0.01, 5, -0.02, -0.1, 7);
        Point back = skew.pixel(skew.ground(new Point(123.5, 45)));
        assertThat(back.distanceTo(new Point(123.5, 45))).isLessThan(1e-9);
    }

    @Test
    void aMeasuredImageKeepsItsMiddleAndTakesWhatIsDrawnAlong() {
        Turf turf = turf("front", box(20, 10, 24, 12));
        Yard after = ImageEdits.measured(on(IMAGE, turf), TWICE, true);
        assertThat(imageOf(after).placement().pixelM()).isCloseTo(0.2, within(1e-12));
        assertThat(imageOf(after).anchor().distanceTo(new Point(20, 10))).isLessThan(1e-9);
        assertThat(imageOf(after).isScaleSet()).isTrue();
        assertThat(corners(after, turf.key()))
                .containsExactly(new Point(20, 10), new Point(28, 10), new Point(28, 14), new Point(20, 14));
        assertThat(corners(ImageEdits.measured(on(IMAGE, turf), TWICE, false), turf.key()))
                .isEqualTo(corners(on(IMAGE, turf), turf.key()));
    }

    @Test
    void crownsAndGapsAreScaledButHeightsAreNot() {
        Tree tree = new Tree(
                "t",
                OptionalDouble.of(2),
                OptionalDouble.of(9),
                0.2,
                false,
                0.1,
                OptionalDouble.empty(),
                false,
                new Point(20, 10),
                Extras.NONE);
        Barrier fence = new Barrier(
                "b",
                Kind.FENCE,
                1.8,
                List.of(new Barrier.Opening(3, 1)),
                true,
                new Polyline(List.of(new Point(20, 10), new Point(28, 10))),
                Extras.NONE);
        Yard after = ImageEdits.measured(on(IMAGE, tree, fence), TWICE, true);
        Tree grown = after.all(Tree.class).findFirst().orElseThrow();
        assertThat(grown.crownRadiusM().orElseThrow()).isCloseTo(4, within(1e-12));
        assertThat(grown.heightM()).hasValue(9);
        Barrier longer = after.all(Barrier.class).findFirst().orElseThrow();
        assertThat(longer.gates().get(0).atM()).isCloseTo(6, within(1e-12));
        assertThat(longer.gates().get(0).widthM()).isCloseTo(2, within(1e-12));
        assertThat(longer.heightM()).isEqualTo(1.8);
    }

    @Test
    void theLastDistanceTakenOutLeavesTheScaleAsAGuess() {
        Yard measured = ImageEdits.measured(on(IMAGE), TWICE, true);
        Yard after = ImageEdits.forgotten(measured, 0, true);
        assertThat(imageOf(after).placement()).isEqualTo(imageOf(measured).placement());
        assertThat(imageOf(after).isScaleSet()).isFalse();
        assertThat(imageOf(after).knownDistances()).isEmpty();
    }

    @Test
    void aSecondDistanceIsFittedWithTheFirst() {
        KnownDistance longer = new KnownDistance(new Point(0, 0), new Point(0, 200), 41);
        Yard after = ImageEdits.measured(ImageEdits.measured(on(IMAGE), TWICE, true), longer, true);
        assertThat(imageOf(after).placement().pixelM()).isCloseTo(Math.sqrt(0.2 * 0.205), within(1e-12));
        Yard without = ImageEdits.forgotten(after, 1, true);
        assertThat(imageOf(without).placement().pixelM()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void anImageThatBringsItsPlaceIsCheckedAndNotMoved() {
        Backdrop placed = IMAGE.withDistances(List.of(), 0);
        Yard tied = Yard.empty("", Frame.at(new LonLat(-89, 40))).withBackdrop(Optional.of(placed));
        Yard after = ImageEdits.measured(tied, TWICE, true);
        assertThat(imageOf(after).placement()).isEqualTo(IMAGE.placement());
        assertThat(imageOf(after).scaleErrorRel()).isZero();
        assertThat(imageOf(after).knownDistances()).containsExactly(TWICE);
        assertThat(ImageEdits.turned(tied, 30, true)).isEqualTo(tied);
    }

    @Test
    void inAYardTiedToTheEarthWhatIsDrawnStaysWhereItIs() {
        Turf turf = turf("front", box(20, 10, 24, 12));
        Yard tied = Yard.empty("", Frame.at(new LonLat(-89, 40)))
                .withFeatures(List.of(turf))
                .withBackdrop(Optional.of(IMAGE));
        Yard after = ImageEdits.measured(tied, TWICE, true);
        assertThat(imageOf(after).placement().pixelM()).isCloseTo(0.2, within(1e-12));
        assertThat(after.features()).isEqualTo(tied.features());
    }

    @Test
    void aQuarterTurnTakesImageOutlinesAndArcsAlong() {
        Turf turf = turf("front", box(20, 10, 24, 12));
        Head head = new Head(
                "h",
                "h1",
                "v",
                Optional.empty(),
                OptionalDouble.of(4),
                300,
                90,
                OptionalDouble.empty(),
                Profile.Named.CONE,
                0,
                new Point(22, 10),
                Extras.NONE);
        Yard after = ImageEdits.turned(on(IMAGE, turf, head), 90, true);
        // east of the middle comes to lie south of it
        assertThat(corners(after, turf.key()))
                .containsExactly(new Point(20, 10), new Point(20, 6), new Point(22, 6), new Point(22, 10));
        assertThat(after.all(Head.class).findFirst().orElseThrow().arcStartDeg())
                .isCloseTo(30, within(1e-9));
        Point corner = imageOf(after).placement().ground(new Point(400, 100));
        assertThat(corner.distanceTo(new Point(20, -10))).isLessThan(1e-9);
    }

    @Test
    void whatIsDrawnStaysOnTheSamePixels() {
        Turf turf = turf("front", box(3, 4, 17, 12));
        Yard before = on(IMAGE, turf);
        Yard after = ImageEdits.turned(ImageEdits.measured(before, TWICE, true), -37, true);
        List<Point> was = corners(before, turf.key());
        List<Point> is = corners(after, turf.key());
        for (int i = 0; i < was.size(); i++) {
            Point pixel = imageOf(after).placement().pixel(is.get(i));
            assertThat(pixel.distanceTo(IMAGE.placement().pixel(was.get(i)))).isLessThan(1e-4);
        }
    }

    @Test
    void aYardWithoutAnImageStaysAsItIs() {
        Yard bare = yard();
        assertThat(ImageEdits.measured(bare, TWICE, true)).isEqualTo(bare);
        assertThat(ImageEdits.turned(bare, 10, true)).isEqualTo(bare);
    }
}
