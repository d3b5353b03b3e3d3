package loamline.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.sampling.CorePlan;
import loamline.sun.Glare;
import loamline.sun.SunPosition;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.water.Gap;
import loamline.yard.Barrier;
import loamline.yard.Core;
import loamline.yard.Extras;
import loamline.yard.Kind;
import loamline.yard.Panel;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YardSceneTest {
    private static final Glare GLARE =
            new Glare("p", new SunPosition(Instant.EPOCH, 180, 40), Outline.of(2, 2, 8, 2, 8, 6, 2, 6));
    private static final TextMeasure TEXT = new EvenText();
    private static final Box GROUND = new Box(-2, -2, 32, 47);
    private static final Yard YARD = SampleYard.yard();
    private static final CorePlan PLAN = SamplePlan.twoBags();

    private static SceneOptions options(int denominator) {
        return SceneOptions.usual(View.of(GROUND, denominator), TEXT);
    }

    private static Scene scene(SceneOptions options) {
        return YardScene.of(YARD, Zones.of(YARD), Optional.of(PLAN), options);
    }

    private static List<String> words(Scene scene, Layer layer) {
        return scene.layer(layer).stream()
                .filter(mark -> mark instanceof Mark.Words)
                .map(mark -> ((Mark.Words) mark).run().words())
                .toList();
    }

    private static Stream<Mark.Stamp> stamps(Scene scene, Layer layer) {
        return scene.layer(layer).stream()
                .filter(mark -> mark instanceof Mark.Stamp)
                .map(mark -> (Mark.Stamp) mark);
    }

    @Test
    void everyCoreIsDrawnOnceAtItsPlace() {
        Scene scene = scene(options(200));
        List<Point> planned =
                PLAN.mainCores().stream().map(CorePlan.PlannedCore::at).toList();
        assertThat(stamps(scene, Layer.CORES).map(Mark.Stamp::at)).containsExactlyElementsOf(planned);
        assertThat(words(scene, Layer.CORES))
                .containsExactlyElementsOf(PLAN.mainCores().stream()
                        .map(core -> core.id().substring(1))
                        .toList());
    }

    @Test
    void everySpareIsDrawnOnceAndSmallerThanACore() {
        Scene scene = scene(options(200));
        assertThat(stamps(scene, Layer.SPARES)).hasSize(24);
        assertThat(words(scene, Layer.SPARES)).hasSize(24).contains("1", "12");
        double spareMm = stamps(scene, Layer.SPARES)
                .mapToDouble(YardSceneTest::widthMm)
                .max()
                .orElseThrow();
        double coreMm = stamps(scene, Layer.CORES)
                .mapToDouble(YardSceneTest::widthMm)
                .min()
                .orElseThrow();
        assertThat(spareMm).isLessThan(0.8 * coreMm);
    }

    private static double widthMm(Mark.Stamp stamp) {
        double right = stamp.path().points().mapToDouble(Point::x).max().orElse(0);
        return right - stamp.path().points().mapToDouble(Point::x).min().orElse(0);
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 150, 200, 300, 500, 1000})
    void labelsNeverTouchEachOtherOrACore(int denominator) {
        Scene scene = scene(options(denominator));
        List<PaperRect> taken = new ArrayList<>(signRooms(scene));
        assertThat(words(scene, Layer.LABELS)).contains("House");
        for (PaperRect room : labelRooms(scene)) {
            assertThat(taken).noneMatch(room::overlaps);
            taken.add(room);
        }
    }

    /** Letters as they are drawn, halo left off, so that the lines of one label may meet. */
    private static List<PaperRect> labelRooms(Scene scene) {
        return scene.layer(Layer.LABELS).stream()
                .map(mark -> {
                    Mark.Words words = (Mark.Words) mark;
                    Point at = scene.view().onPaper(words.at());
                    Run run = words.run().moved(at.x(), at.y());
                    double capMm = TEXT.capHeightMm(run.type());
                    return new PaperRect(
                            run.at().x(), run.at().y() - capMm, TEXT.widthMm(run.words(), run.type()), capMm);
                })
                .toList();
    }

    private static List<PaperRect> signRooms(Scene scene) {
        return Stream.of(Layer.CORES, Layer.SPARES)
                .flatMap(layer -> stamps(scene, layer))
                .map(stamp -> {
                    Point at = scene.view().onPaper(stamp.at());
                    List<Point> points = stamp.path().points().toList();
                    double left = points.stream().mapToDouble(Point::x).min().orElseThrow();
                    double top = points.stream().mapToDouble(Point::y).min().orElseThrow();
                    double right = points.stream().mapToDouble(Point::x).max().orElseThrow();
                    double bottom = points.stream().mapToDouble(Point::y).max().orElseThrow();
                    return new PaperRect(at.x() + left, at.y() + top, right - left, bottom - top);
                })
                .toList();
    }

    @Test
    void chevronsLieOnTheRouteAndPointAlongIt() {
        Scene scene = scene(options(200));
        List<Mark.Stamp> chevrons = stamps(scene, Layer.WALK).toList();
        assertThat(chevrons).hasSizeGreaterThan(20);
        for (Mark.Stamp chevron : chevrons) {
            List<Point> corners = chevron.path().points().toList();
            Point back = corners.get(0).towards(corners.get(2), 0.5);
            Heading drawn = Heading.from(
                    new Point(back.x(), -back.y()),
                    new Point(corners.get(1).x(), -corners.get(1).y()));
            assertThat(legs()).anyMatch(leg -> lies(chevron.at(), leg) && agree(drawn, Heading.along(leg, 0)));
        }
    }

    private static List<Polyline> legs() {
        List<Polyline> legs = new ArrayList<>();
        for (CorePlan.Walk walk : PLAN.walks()) {
            List<Point> turns = walk.path().points();
            for (int i = 1; i < turns.size(); i++) {
                legs.add(new Polyline(List.of(turns.get(i - 1), turns.get(i))));
            }
        }
        return legs;
    }

    private static boolean lies(Point p, Polyline leg) {
        return leg.nearestTo(p).distanceTo(p) < 1e-9;
    }

    private static boolean agree(Heading a, Heading b) {
        return a.x() * b.x() + a.y() * b.y() > 1 - 1e-9;
    }

    @Test
    void noChevronTouchesACore() {
        Scene scene = scene(options(200));
        double reachM = scene.view().metres(CoreSigns.CORE_MM);
        assertThat(stamps(scene, Layer.WALK).map(Mark.Stamp::at))
                .noneMatch(at ->
                        PLAN.mainCores().stream().anyMatch(core -> core.at().distanceTo(at) < reachM));
    }

    @Test
    void aLoggedCoreIsFilledAndARefusedOneStruckThrough() {
        SceneOptions options = options(200).with(Map.of("A1", CoreState.LOGGED, "A2", CoreState.REFUSED));
        List<Mark.Stamp> cores = stamps(scene(options), Layer.CORES).toList();
        assertThat(cores).hasSize(25);
        assertThat(cores.get(0).paint().fill()).contains(Palette.LIGHT.of(Role.INK));
        assertThat(cores.get(1).paint().fill()).contains(Palette.LIGHT.of(Role.PANEL));
        assertThat(cores.get(2).at()).isEqualTo(cores.get(1).at());
        assertThat(cores.get(2).path().steps()).hasSize(2);
    }

    @Test
    void everyBagHasItsOwnShape() {
        List<Path> shapes = stamps(scene(options(200)), Layer.CORES)
                .map(Mark.Stamp::path)
                .distinct()
                .toList();
        assertThat(shapes)
                .containsExactly(CoreShape.DISC.path(CoreSigns.CORE_MM), CoreShape.SQUARE.path(CoreSigns.CORE_MM));
    }

    @Test
    void aGateIsAGapBetweenTwoPosts() {
        Polyline line = new Polyline(List.of(new Point(0, 0), new Point(10, 0)));
        Barrier fence = new Barrier("f", Kind.FENCE, 1.8, List.of(new Barrier.Opening(4, 2)), true, line, Extras.NONE);
        Yard yard = Yard.empty("", Frame.local()).withFeatures(List.of(fence));
        Scene scene = YardScene.of(yard, List.of(), Optional.empty(), options(200));
        assertThat(stamps(scene, Layer.BARRIERS).map(Mark.Stamp::at)).containsExactly(new Point(3, 0), new Point(5, 0));
        assertThat(scene.layer(Layer.BARRIERS).stream()
                        .filter(mark -> mark instanceof Mark.Drawn)
                        .flatMap(mark -> ((Mark.Drawn) mark).path().points()))
                .noneMatch(p -> p.x() > 3.001 && p.x() < 4.999);
    }

    @Test
    void aLayerThatIsNotWantedLeavesNoMark() {
        for (Layer layer : Layer.values()) {
            Set<Layer> others = EnumSet.complementOf(EnumSet.of(layer));
            assertThat(scene(options(200).with(others)).layers()).doesNotContainKey(layer);
        }
        Grid rate = Grid.of(new GridSpec(0, 0, 1, 30, 45), values -> {});
        Shown everything = new Shown(
                Optional.of(PLAN),
                Optional.of(Shading.of(rate, Ramp.CIVIDIS, Measure.DEPTH_RATE, UnitSystem.US)),
                List.of(new Gap("g1", Region.of(Outline.of(3, 3, 8, 3, 8, 8)), "Front")),
                Optional.empty(),
                List.of(GLARE));
        SceneOptions all = options(200).with(EnumSet.allOf(Layer.class));
        assertThat(YardScene.of(YARD, Zones.of(YARD), everything, all).layers().keySet())
                .containsExactlyElementsOf(EnumSet.complementOf(EnumSet.of(Layer.CUPS)));
    }

    @Test
    void aCupTestStandsInThePlaceOfCores() {
        CupMap cups = new CupMap("1", List.of(new CupMap.Cup("7", "12", new Point(5, 5), false)), List.of());
        Scene scene = YardScene.of(YARD, Zones.of(YARD), Shown.of(cups, Optional.empty()), options(200));
        assertThat(words(scene, Layer.CUPS)).contains("7", "12");
        assertThat(scene.layers()).doesNotContainKeys(Layer.CORES, Layer.WALK);
    }

    @Test
    void aPanelHasRaysOutOfItsFaceAndItsGlareIsNamed() {
        Polyline base = new Polyline(List.of(new Point(0, 0), new Point(10, 0)));
        Panel panel = new Panel("p", 1.2, 0, 0, base, Extras.NONE);
        Yard yard = Yard.empty("", Frame.local()).withFeatures(List.of(panel));
        Shown shown = new Shown(Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of(GLARE));
        Scene scene = YardScene.of(yard, List.of(), shown, options(200));
        assertThat(scene.layer(Layer.BARRIERS).stream()
                        .flatMap(mark -> ((Mark.Drawn) mark).path().points())
                        .mapToDouble(Point::y))
                .allMatch(y -> y >= 0)
                .anyMatch(y -> y > 0);
        assertThat(scene.layer(Layer.GLARE)).hasSize(4);
        assertThat(words(scene, Layer.LABELS)).containsExactly("glare");
        assertThat(Legend.ofAmounts(yard, shown, options(200)))
                .extracting(Legend.Entry::words)
                .containsExactly("glare", "panel, its face");
    }

    @Test
    void aHoleIsNamedByItsArea() {
        Gap hole = new Gap("g1", Region.of(new Box(3, 30, 9, 36).outline()), "Back west");
        Scene scene = YardScene.of(YARD, Zones.of(YARD), Shown.of(Optional.empty(), List.of(hole)), options(200));
        assertThat(words(scene, Layer.LABELS)).contains("388 ft²");
        assertThat(scene.layer(Layer.HOLES)).hasSize(3);
    }

    @Test
    void withoutAPlanTheYardsOwnCoresAreDrawn() {
        Core core = new Core("k", "B7", "B", "Front", new Point(3, 4), false, Extras.NONE);
        Yard yard = Yard.empty("", Frame.local()).withFeatures(List.of(core));
        Scene scene = YardScene.of(yard, List.of(), Optional.empty(), options(200));
        assertThat(stamps(scene, Layer.CORES).map(Mark.Stamp::at)).containsExactly(new Point(3, 4));
        assertThat(words(scene, Layer.CORES)).containsExactly("7");
    }

    @Test
    void anEmptyYardIsAnEmptyMap() {
        Yard nothing = Yard.empty("", Frame.local());
        assertThat(YardScene.of(nothing, List.of(), Optional.empty(), options(200))
                        .marks())
                .isEmpty();
    }

    @Test
    void everyZoneIsNamedWithItsArea() {
        assertThat(words(scene(options(150)), Layer.LABELS))
                .contains("Front", "Back west", "Back east", "2,329 ft²", "Start", "pet spot", "thin, dry by noon");
    }

    @Test
    void theSameYardGivesTheSameScene() {
        assertThat(scene(options(200))).isEqualTo(scene(options(200)));
    }

    @Test
    void theScaleDecidesWhatAMillimetreIs() {
        View view = View.of(GROUND, 250);
        assertThat(view.onPaper(new Point(-2, 47))).isEqualTo(new Point(0, 0));
        assertThat(view.onPaper(new Point(23, 47)).x()).isCloseTo(100, offset(1e-9));
        assertThat(view.onGround(view.onPaper(new Point(5, 6))).distanceTo(new Point(5, 6)))
                .isLessThan(1e-12);
    }
}
