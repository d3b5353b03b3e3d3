package loamline.desk.map;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.tool.Guide;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.LonLat;
import loamline.scene.Layer;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.Extras;
import loamline.yard.KeepAway;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class MapModelTest {
    private static final Yard YARD = yard(
            turf("front", box(0, 0, 20, 20)),
            building(box(5, 5, 10, 10)),
            new KeepAway("pet", 3, "", new Point(15, 15), Extras.NONE),
            gate(0, 0));
    private static final Results RESULTS = Results.ground(YARD);
    private static final Backdrop IMAGE = new Backdrop(
            "a.png", 200, 100, new Backdrop.Placement(0.1, 0, -5, 0, -0.1, 9), 0, 1, List.of(), Extras.NONE);

    @Test
    void allLayersButTheThrowsAreSeenAtFirst() {
        MapLayers layers = new MapLayers();
        assertThat(layers.drawn()).contains(Layer.TURF, Layer.CORES).doesNotContain(Layer.THROWS);
        layers.show(MapLayer.CORES, false);
        layers.show(MapLayer.THROWS, true);
        assertThat(layers.drawn()).doesNotContain(Layer.CORES, Layer.WALK).contains(Layer.THROWS);
    }

    @Test
    void everyLayerOfTheSceneCanBeSwitched() {
        assertThat(java.util.Arrays.stream(MapLayer.values()).flatMap(layer -> layer.drawn().stream()))
                .containsExactlyInAnyOrder(Layer.values());
    }

    @Test
    void layersWithNothingToShowAreNotOffered() {
        MapLayers layers = new MapLayers();
        layers.look(YARD, Optional.empty(), Found.NOTHING);
        assertThat(layers.available().get())
                .containsExactlyInAnyOrder(MapLayer.OUTLINES, MapLayer.LABELS, MapLayer.SPOTS, MapLayer.CORES);
        layers.look(yard().withBackdrop(Optional.of(IMAGE)), Optional.empty(), Found.NOTHING);
        assertThat(layers.available().get()).containsExactly(MapLayer.IMAGE);
    }

    @Test
    void allLayersCanBeHidden() {
        MapLayers layers = new MapLayers();
        for (MapLayer layer : MapLayer.values()) {
            layers.show(layer, false);
        }
        assertThat(layers.drawn()).isEmpty();
        layers.show(MapLayer.LABELS, true);
        assertThat(layers.drawn()).containsExactly(Layer.LABELS);
    }

    @Test
    void aSelectedFeatureIsMarkedAlongItsOutline() {
        List<Guide> marks = SelectionMarks.of(
                RESULTS, List.of(), Selection.ofFeatures(List.of("building 5.0 5.0", "pet", "gone")), 0.1);
        assertThat(marks)
                .containsExactly(
                        new Guide.Line(
                                List.of(new Point(5, 5), new Point(10, 5), new Point(10, 10), new Point(5, 10)),
                                true,
                                Guide.Style.SELECTED),
                        new Guide.Circle(new Point(15, 15), 3, Guide.Style.SELECTED));
    }

    @Test
    void aSelectedZoneIsMarkedRoundItsNetTurf() {
        List<Guide> marks = SelectionMarks.of(RESULTS, List.of(), Selection.ofZone("front"), 0.1);
        assertThat(marks).hasSize(2).allMatch(mark -> mark instanceof Guide.Line line && line.closed());
    }

    @Test
    void theReadoutTellsThePlaceInShownUnits() {
        assertThat(ReadoutWords.place(new Point(3.048, -0.3048), UnitSystem.US)).isEqualTo("x 10.0 ft   y -1.0 ft");
        assertThat(ReadoutWords.place(new Point(3.048, -0.3048), UnitSystem.METRIC))
                .isEqualTo("x 3.05 m   y -0.30 m");
        assertThat(ReadoutWords.earth(new LonLat(-89.05, 40.35))).isEqualTo("40.350000° N, 89.050000° W");
    }

    @Test
    void theWalkIsSeenInThreeToSixSeconds() {
        WalkPace shortest = new WalkPace(List.of(line(0, 0, 10, 0)));
        WalkPace longest = new WalkPace(List.of(line(0, 0, 5000, 0)));
        assertThat(shortest.durationS()).isEqualTo(3);
        assertThat(longest.durationS()).isEqualTo(6);
    }

    @Test
    void theWalkGoesThroughAllBagsAndLooksAhead() {
        WalkPace pace = new WalkPace(List.of(line(0, 0, 10, 0), line(50, 0, 50, 30)));
        assertThat(pace.at(0)).isEqualTo(new WalkPace.Place(new Point(0, 0), 0));
        assertThat(pace.at(0.5).at()).isEqualTo(new Point(50, 10));
        assertThat(pace.at(0.5).headingDeg()).as("up the screen").isCloseTo(-90, within(1e-9));
        assertThat(pace.at(1).at()).isEqualTo(new Point(50, 30));
        assertThat(pace.at(7)).isEqualTo(pace.at(1));
    }

    private static Polyline line(double x0, double y0, double x1, double y1) {
        return new Polyline(List.of(new Point(x0, y0), new Point(x1, y1)));
    }

    @Test
    void aYardWithoutADrawingIsAsLargeAsItsImage() {
        assertThat(Extent.of(YARD.withBackdrop(Optional.of(IMAGE)))).isEqualTo(YARD.box());
        assertThat(Extent.of(yard().withBackdrop(Optional.of(IMAGE)))).contains(new Box(-5, -1, 15, 9));
        assertThat(Extent.of(yard())).isEmpty();
    }

    @Test
    void aPictureWithAMarginServesUntilThePanLeavesIt() {
        Viewport window = new Viewport(new Point(0, 0), 0.1, 800, 600);
        MapPicture.Ask ask =
                new MapPicture.Ask(4, window.grown(100), 1, PictureMakerTest.content(YARD, Optional.empty()));
        assertThat(ask.serves(4, window.moved(100, -100), 1)).isTrue();
        assertThat(ask.serves(4, window.moved(102, 0), 1)).isFalse();
        assertThat(ask.serves(5, window, 1)).as("other content").isFalse();
        assertThat(ask.serves(4, window, 2)).as("finer screen").isFalse();
        assertThat(ask.serves(4, window.zoomed(1.1, 0, 0), 1)).isFalse();
    }

    @Test
    void aNotchIsAStepAndATrackpadGoesByItsShare() {
        Camera camera = new Camera();
        camera.resize(800, 600);
        double before = camera.now().metresPerPx();
        camera.wheel(40, 100, 100);
        assertThat(camera.now().metresPerPx()).isCloseTo(before / 1.25, within(1e-12));
        for (int i = 0; i < 10; i++) {
            camera.wheel(-4, 100, 100);
        }
        assertThat(camera.now().metresPerPx()).isCloseTo(before, within(1e-12));
    }
}
