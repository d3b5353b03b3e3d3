package loamline.desk.trace;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import loamline.desk.session.AtOnce;
import loamline.desk.session.Session;
import loamline.desk.tool.AssistTool;
import loamline.desk.tool.AssistTracer;
import loamline.desk.tool.Input;
import loamline.desk.tool.NorthTool;
import loamline.desk.tool.ScaleTool;
import loamline.desk.tool.ToolChoice;
import loamline.desk.tool.ToolHost;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.Feature;
import loamline.yard.ImageEdits;
import loamline.yard.Kind;
import loamline.yard.KnownDistance;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TraceModelTest {
    private static final AssistTracer.Found SQUARE =
            new AssistTracer.Found(Outline.of(0, 0, 3, 0, 3, 3, 0, 3), 9, List.of("The north side is not clear."));

    @TempDir
    private Path folder;

    private final Session session = new Session(Yard.empty("", Frame.local()), AtOnce.work());
    private final ToolHost host = new ToolHost(session, ToolChoice.GATE.tool());
    private final TraceModel model = new TraceModel(session, host, asked -> SQUARE);

    private Path picture(String name) throws IOException {
        Path file = folder.resolve(name);
        ImageIO.write(new BufferedImage(80, 60, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
        return file;
    }

    private void beside(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private TraceState state() {
        return model.state().get();
    }

    private TraceState.Image image() {
        return state().image().orElseThrow();
    }

    private Backdrop backdrop() {
        return session.history().get().now().backdrop().orElseThrow();
    }

    private void draw(Feature... features) {
        session.edit("draw", session.history().get().now().withFeatures(List.of(features)));
    }

    private void measure(double px, double lengthM) {
        Yard now = session.history().get().now();
        session.edit(
                "set scale",
                ImageEdits.measured(now, new KnownDistance(new Point(0, 0), new Point(px, 0), lengthM), true));
    }

    @Test
    void anEmptyYardSaysSo() {
        assertThat(state().isEmpty()).isTrue();
        assertThat(state().image()).isEmpty();
        assertThat(state().result()).isEqualTo("No turf yet");
    }

    @Test
    void aPlainPictureIsFittedToFortyMetresAndNeedsAScale() throws IOException {
        model.open(picture("yard.png"));
        assertThat(backdrop().placement().pixelM()).isCloseTo(0.5, within(1e-12));
        assertThat(backdrop().anchor().distanceTo(new Point(0, 0))).isLessThan(1e-9);
        assertThat(image().needsScale()).isTrue();
        assertThat(image().words()).isEqualTo("yard.png, 80 × 60 px");
        assertThat(image().scale().line()).startsWith("Scale not set");
        assertThat(model.said().get()).contains("measure a distance");
        assertThat(session.history().get().undoLabel()).contains("place image");
    }

    @Test
    void aDistanceSetsTheScaleAndTwoShowWhatIsLeft() throws IOException {
        model.open(picture("yard.png"));
        measure(50, 10);
        assertThat(model.said().get()).isBlank();
        assertThat(image().needsScale()).isFalse();
        assertThat(image().scale().line()).isEqualTo("Scale from one distance, ± 2.8 %");
        measure(60, 12.6);
        assertThat(image().scale().rows())
                .containsExactly(
                        new ScaleWords.Row("32.8 ft", "+2.5 %", true), new ScaleWords.Row("41.3 ft", "−2.4 %", true));
        assertThat(image().scale().warning()).contains("measure a third");
        measure(70, 14);
        assertThat(image().scale().warning()).startsWith("41.3 ft is off most, by −3.2 %");
        model.forget(1);
        assertThat(image().scale().warning()).isEmpty();
        assertThat(image().why()).isPresent();
        assertThat(session.history().get().undoLabel()).contains("remove known distance");
    }

    @Test
    void aPlacedImageTiesAnEmptyYardToTheEarth() throws IOException {
        Path file = picture("yard.png");
        beside("yard.pgw", "0.000002\n0\n0\n-0.0000015\n-89.05\n40.35\n");
        model.open(file);
        assertThat(session.history().get().now().frame().origin()).isPresent();
        assertThat(backdrop().anchor().distanceTo(new Point(0, 0))).isLessThan(0.01);
        assertThat(image().canTurn()).isFalse();
        assertThat(image().scale().line()).isEqualTo("Scale and place from the image");
        // pixels of 0.170 by 0.167 m there: 80 and 60 of them
        measure(80, 13.6);
        assertThat(image().scale().line()).isEqualTo("Scale from the image, checked");
    }

    @Test
    void aPlacedImageIsOfferedByScaleWhereSomethingIsDrawnWithoutAPlace() throws IOException {
        draw(building(box(100, 0, 110, 8)));
        Path file = picture("yard.png");
        beside("yard.pgw", "0.000002\n0\n0\n-0.0000015\n-89.05\n40.35\n");
        model.open(file);
        assertThat(state().image()).isEmpty();
        assertThat(model.offering().get()).isTrue();
        assertThat(model.said().get()).contains("drawn without one");
        model.acceptOffer();
        assertThat(backdrop().anchor().distanceTo(new Point(105, 4))).isLessThan(1e-9);
        assertThat(image().needsScale()).isTrue();
        assertThat(model.offering().get()).isFalse();
    }

    @Test
    void coordinatesWithoutASystemAreTakenAsMetres() throws IOException {
        Path file = picture("yard.png");
        beside("yard.pgw", "0.15\n0\n0\n-0.15\n519467.575\n4311669.675\n");
        model.open(file);
        assertThat(backdrop().placement().pixelM()).isCloseTo(0.15, within(1e-12));
        assertThat(backdrop().anchor().distanceTo(new Point(0, 0))).isLessThan(1e-9);
        assertThat(model.said().get()).contains("taken as metres");
    }

    @Test
    void whatIsNoImageIsSaidAndChangesNothing() throws IOException {
        beside("notes.png", "bought two bags");
        model.open(folder.resolve("notes.png"));
        assertThat(state().isEmpty()).isTrue();
        assertThat(model.said().get()).contains("no image");
        model.open(folder.resolve("nowhere.png"));
        assertThat(model.said().get()).isNotBlank();
        assertThat(TraceModel.isImage(Path.of("a/Yard.TIFF"))).isTrue();
        assertThat(TraceModel.isImage(Path.of("a/yard.loam.json"))).isFalse();
    }

    @Test
    void opacityIsOneEditHoweverLongTheSliderMoves() throws IOException {
        model.open(picture("yard.png"));
        int steps = session.history().get().steps().size();
        model.showOpacity(0.6);
        model.showOpacity(0.4);
        assertThat(image().opacity()).isEqualTo(0.4);
        model.setOpacity(0.3);
        assertThat(session.history().get().steps()).hasSize(steps + 1);
        assertThat(backdrop().opacity()).isEqualTo(0.3);
    }

    @Test
    void theToolsForScaleAndNorthGoByWhatIsChosen() throws IOException {
        model.open(picture("yard.png"));
        model.measure();
        assertThat(host.current().get()).isEqualTo(ScaleTool.of(true));
        model.alongDrawn().set(false);
        assertThat(host.current().get()).isEqualTo(ScaleTool.of(false));
        model.turnNorth();
        assertThat(host.current().get()).isEqualTo(NorthTool.of(false));
    }

    @Test
    void theAssistedToolGoesByTheSheetAndTellsItsDoubts() throws IOException {
        model.open(picture("yard.png"));
        model.assistWith(old -> new AssistTool.Settings(Kind.PAVING, 0.7));
        model.assist();
        assertThat(state().assist()).contains(new AssistTool.Settings(Kind.PAVING, 0.7));
        host.send(new Input.Press(new Point(1, 1), 1, Input.Held.NONE), 0.05);
        assertThat(state().doubts()).containsExactly("The north side is not clear.");
        model.assistWith(old -> new AssistTool.Settings(Kind.BED, old.tolerance()));
        assertThat(state().assist()).contains(new AssistTool.Settings(Kind.BED, 0.7));
        host.send(new Input.Key(Input.KeyName.ENTER, Input.Held.NONE), 0.05);
        assertThat(session.history().get().undoLabel()).contains("trace bed");
    }

    @Test
    void theResultIsTheTurfItsErrorAndItsParts() {
        Yard yard = yard(turf("front", box(0, 0, 20, 20)), turf("back", box(0, 30, 20, 50)));
        assertThat(TraceResult.of(Zones.of(yard), UnitSystem.METRIC)).isEqualTo("800 m² turf ± 6 in 2 parts");
        assertThat(TraceResult.of(Zones.of(yard(turf("front", box(0, 0, 20, 20)))), UnitSystem.US))
                .startsWith("4,3")
                .endsWith(" in 1 part")
                .contains(" ft² turf ± ");
    }
}
