package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.desk.tool.ToolChoice.Variant;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.units.UnitSystem;
import loamline.yard.Building;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Tree;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DrawTest {
    private static final Yard EMPTY = Yard.empty("", Frame.local());

    private static ToolScript with(ToolChoice choice) {
        return new ToolScript(choice.tool(), EMPTY);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                // three ways to end
                "click 0 0; click 4 0; click 4 3; enter | 0 0, 4 0, 4 3",
                "click 0 0; click 4 0; click 4 3; click 0 0 | 0 0, 4 0, 4 3",
                "click 0 0; click 4 0; click 4 3; click 0.05 0.05 | 0 0, 4 0, 4 3",
                "click 0 0; click 4 0; double 4 3 | 0 0, 4 0, 4 3",
                // two clicks in one place are one corner
                "click 0 0; click 4 0; click 4 0; click 4 3; enter | 0 0, 4 0, 4 3",
                // steps back
                "click 0 0; click 4 0; click 9 9; backspace; click 4 3; enter | 0 0, 4 0, 4 3",
                "click 0 0; click 4 0; click 9 9; escape; click 4 3; enter | 0 0, 4 0, 4 3",
                // typed sizes
                "click 0 0; move 9 0; type 4; enter; move 4 9; type 3; enter; enter | 0 0, 4 0, 4 3",
                "click 0 0; type 4 < 90; enter; type 3<0; enter; enter | 0 0, 4 0, 4 3",
                "click 0 0; type 4; tab; type 90; enter; type 300 cm@0; enter; enter | 0 0, 4 0, 4 3",
                "click 0 0; type 49; backspace; type <90; enter; click 4 3; enter | 0 0, 4 0, 4 3",
                "click 0 0; type 9 < 1; escape; click 4 0; click 4 3; enter | 0 0, 4 0, 4 3",
                "click 0 0; type 4; click 7 0; click 4 3; enter | 0 0, 4 0, 4 3",
                "click 0 0; type <90; click 4 1; click 4 3; enter | 0 0, 4 0, 4 3",
                // snaps: right angle, and in line with the start
                "click 0 0; click 4 0; click 4.03 3; enter | 0 0, 4 0, 4 3",
                "click 0 0; click 4 0; click 4 3; click 0.07 3.04; click 0 0 | 0 0, 4 0, 4 3, 0 3",
                "click 0 0; click 4 0; click 4.03 3 +alt; enter | 0 0, 4 0, 4.03 3",
                "click 0 0; click 4 1 +shift; click 6 3 +shift; enter | 0 0, 4 0, 6.5 2.5",
                // the next of its kind
                "click 0 0; click 4 0; double 4 3; click 9 0; click 9 5; double 5 5 | 0 0, 4 0, 4 3 / 9 0, 9 5, 5 5",
            })
    void anOutlineIsDrawnCornerByCorner(String steps, String drawn) {
        ToolScript script = with(ToolChoice.BED).run(steps);

        assertThat(script.drawn()).isEqualTo(drawn);
        assertThat(script.said).isEmpty();
    }

    @Test
    void anOutlineTakesAClickACornerAndOneKeyToEnd() {
        ToolScript script = with(ToolChoice.TURF).run("click 0 0; click 4 0; click 4 3; click 0 3; enter");

        assertThat(script.edits).containsExactly("add turf");
        assertThat(script.inputs).isEqualTo(4 * 2 + 1);
        assertThat(script.selection.keys()).containsExactly(script.last().key());
        assertThat(script.isDone).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "BED | click 0 0; enter | set two more",
                "BED | click 0 0; click 4 0; enter | set one more",
                "BED | click 0 0; double 4 0 | set one more",
                "BED | click 0 0; click 4 0; click 9 0; enter | encloses no ground",
                "BED | click 0 0; click 4 0; click 9 0; click 0 0 | encloses no ground",
                "FENCE | click 0 0; enter | set its end",
                "BED | click 0 0; move 1 0; type 3 pints; enter | not a unit",
                "BED | click 0 0; type 3; enter | Point the way",
                "BED | click 0 0; move 1 0; type 0; enter | above 0",
                "BED | click 0 0; move 1 0; type 3 pints; click 1 1 | not a unit",
                "BED | click 0 0; click 4 0; type t | before another tool",
                "BED | type r; click 0 0; enter | set its other end",
                "BED | type r; click 0 0; click 4 0; enter | needs a width",
                "BED | type c; click 0 0; enter | needs a radius",
                "BED | type c; double 0 0 | needs a radius",
                "HEAD | click 0 0; click 4 0; type 361; enter | 1° to 360°",
                "HEAD | click 0 0; click 4 0; type 9 m; enter | not a unit",
            })
    void whatIsMissingIsSaidAndNothingIsLost(ToolChoice choice, String steps, String words) {
        ToolScript script = with(choice).run(steps);

        assertThat(script.said).singleElement().asString().contains(words);
        assertThat(script.yard).isEqualTo(EMPTY);
        assertThat(((Draw) script.tool).places()).isNotEmpty();
        assertThat(script.run("escape; escape; escape; escape; escape; escape").isDone)
                .isTrue();
    }

    @Test
    void aClosingClickThatEnclosesNothingIsTakenBack() {
        ToolScript script = with(ToolChoice.BED).run("click 0 0; click 4 0; click 9 0; click 0 0; click 9 5; enter");

        assertThat(script.drawn()).isEqualTo("0 0, 4 0, 9 0, 9 5");
    }

    @Test
    void outlinesThatCrossAreSaidAtOnceAndDrawnAllTheSame() {
        ToolScript script = with(ToolChoice.BED).run("click 0 0; click 4 4; click 4 0; click 0 4");
        assertThat(script.said).containsExactly("This side crosses another. Backspace takes it back.");

        script.run("enter");
        assertThat(script.drawn()).isEqualTo("0 0, 4 4, 4 0, 0 4");
        assertThat(script.said).hasSize(2).last().asString().contains("crosses itself");
    }

    @Test
    void escapeStepsBackOnceATime() {
        ToolScript script = with(ToolChoice.BED).run("click 0 0; click 4 0; type 12 < 3");

        script.run("escape");
        assertThat(((Draw) script.tool).typing()).isEqualTo(Typing.NONE);
        assertThat(((Draw) script.tool).places()).hasSize(2);
        script.run("escape; escape");
        assertThat(((Draw) script.tool).places()).isEmpty();
        assertThat(script.isDone).isFalse();
        assertThat(script.run("escape").isDone).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"enter", "backspace", "tab", "delete", "left", "type 5", "type t", "type f", "type +"})
    void withNothingDrawnKeysAreLeftToTheMap(String step) {
        assertThat(with(ToolChoice.FENCE).run(step).wasUsed).isFalse();
    }

    @Test
    void theSecondClickOfADoubleClickThatClosedStartsNothing() {
        ToolScript script = with(ToolChoice.BED).run("click 0 0; click 4 0; click 4 3; double 0 0");

        assertThat(script.drawn()).isEqualTo("0 0, 4 0, 4 3");
        assertThat(((Draw) script.tool).places()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "click 0 0; click 4 0; enter | 0 0, 4 0",
                "click 0 0; click 4 0; double 4 3 | 0 0, 4 0, 4 3",
                "click 0 0; click 4 0; click 4 3; click 0 0 | 0 0, 4 0, 4 3, 0 0",
                "click 0 0; move 1 0; type 12ft; enter; enter | 0 0, 3.658 0",
            })
    void aFenceIsDrawnPointByPoint(String steps, String drawn) {
        assertThat(with(ToolChoice.FENCE).run(steps).drawn()).isEqualTo(drawn);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "drag 1 1 5 4 | 1 1, 5 1, 5 4, 1 4",
                "drag 5 4 1 1 | 5 4, 1 4, 1 1, 5 1",
                "click 0 0; click 4 3; click -2 5 | 0 0, 4 3, 0.88 7.16, -3.12 4.16",
                "click 0 0; move 1 0; type 4; enter; move 9 -8; type 3; enter | 0 0, 4 0, 4 -3, 0 -3",
                "click 0 0; click 4 0; click 3 2 | 0 0, 4 0, 4 2, 0 2",
                "click 0 0; click 4 0; move 3 2; type 5 < 45; enter | 0 0, 4 0, 4 5, 0 5",
                // with Shift a dragged rectangle is a square
                "drag 1 1 4 4.5 +shift | 1 1, 4.25 1, 4.25 4.25, 1 4.25",
            })
    void aRectangleIsDraggedOrASideAndAWidth(String steps, String drawn) {
        ToolScript script = with(ToolChoice.BUILDING).run("type r").run(steps);

        assertThat(script.drawn()).isEqualTo(drawn);
        assertThat(script.edits).containsExactly("add building");
        assertThat(ToolChoice.Variant.of(script.tool)).contains(Variant.RECTANGLE);
    }

    @Test
    void aDragAlongASideIsNoRectangle() {
        ToolScript script = with(ToolChoice.BED).run("type r; drag 0 0 4 0");

        assertThat(script.yard).isEqualTo(EMPTY);
        assertThat(((Draw) script.tool).places()).containsExactly(new Point(0, 0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"drag 3 3 3 5", "click 3 3; click 1 3", "click 3 3; move 9 9; type 2; enter", "drag 3 3 5.04 3"})
    void aCircleBecomesAnOutlineOfItsArea(String steps) {
        ToolScript script = new ToolScript(ToolChoice.TROUBLE.tool(Variant.CIRCLE), EMPTY).run(steps);

        double radiusM = steps.contains("5.04") ? 2.04 : 2;
        Region ground = Region.of((Outline) script.last().shape().orElseThrow());
        assertThat(ground.areaM2()).isCloseTo(Math.PI * radiusM * radiusM, within(1e-9));
        assertThat(ground.centroid().orElseThrow().distanceTo(new Point(3, 3))).isLessThan(1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "drag 3 3 3 5 | 2",
                "click 3 3; click 5 3 | 2",
                "click 3 3; move 4 3; type 12 ft; enter | 3.6576",
                "click 3 3; enter |",
                "double 3 3 |",
                // a slip of 5 pixels is no drag
                "drag 3 3 3.05 3; enter |",
            })
    void aTreeTakesItsCrownFromADragOrATypedSize(String steps, Double crownM) {
        Tree tree = (Tree) with(ToolChoice.TREE).run(steps).last();

        assertThat(tree.at()).isEqualTo(new Point(3, 3));
        assertThat(tree.crownRadiusM().isPresent()).isEqualTo(crownM != null);
        tree.crownRadiusM().ifPresent(m -> assertThat(m).isCloseTo(crownM, within(1e-12)));
        assertThat(tree.trunkRadiusM()).isEqualTo(Tree.DEFAULT_TRUNK_RADIUS_M);
    }

    @Test
    void aKeepAwaySpotHasAMetreUnlessTold() {
        ToolScript script = with(ToolChoice.KEEPAWAY_SPOT).run("click 3 3; enter; drag 8 8 8 10.5");

        assertThat(script.yard.all(KeepAway.class).map(KeepAway::radiusM)).containsExactly(1.0, 2.5);
        assertThat(script.edits).containsExactly("add keep-away spot", "add keep-away spot");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "open",
            value = {
                "click 1 1; enter | open | 0 | 360",
                "click 1 1; click 1 6; enter | 5 | 0 | 360",
                "click 1 1; click 1 6; click 9 1 | 5 | 0 | 90",
                "click 1 1; click 1 6; click 9 1.05 | 5 | 0 | 90",
                "click 1 1; click 6 1; click 1 9 | 5 | 90 | 270",
                "drag 1 1 6 1; click 1 -4 | 5 | 90 | 90",
                "click 1 1; click 6 1; click 6 1 | 5 | 90 | 360",
                "click 1 1; type 5 < 90; enter; type 120; enter | 5 | 90 | 120",
                "click 1 1; type 5 < 90; enter; type 360; enter | 5 | 90 | 360",
                "click 1 1; type 15 ft < 0; enter; enter | 4.572 | 0 | 360",
            })
    void aHeadTakesItsArcAndRadiusByTwoEdges(String steps, Double radiusM, double startDeg, double sweepDeg) {
        Head head = (Head) with(ToolChoice.HEAD).run(steps).last();

        assertThat(head.at()).isEqualTo(new Point(1, 1));
        assertThat(head.radiusM().isPresent()).isEqualTo(radiusM != null);
        head.radiusM().ifPresent(m -> assertThat(m).isCloseTo(radiusM, within(1e-12)));
        assertThat(head.arcStartDeg()).isCloseTo(startDeg, within(1e-9));
        assertThat(head.arcSweepDeg()).isCloseTo(sweepDeg, within(1e-9));
    }

    @Test
    void aGateIsOneClick() {
        assertThat(with(ToolChoice.GATE).run("click 2 3").drawn()).isEqualTo("2 3");
    }

    @Test
    void thePendingSideSaysItsLengthAndTheOutlineItsArea() {
        ToolScript script = with(ToolChoice.TURF).run("click 0 0; move 4 0");
        assertThat(script.words()).containsExactly("4.00 m");

        script.run("click 4 0; move 4 3");
        assertThat(script.words()).containsExactly("6.0 m²", "3.00 m");
        script.units = UnitSystem.US;
        assertThat(script.words()).containsExactly("65 ft²", "9.8 ft");
        script.run("type 12' 6");
        assertThat(script.words()).containsExactly("82 ft²", "12' 6▏");
    }

    @Test
    void wordsFollowWhatIsDrawn() {
        assertThat(with(ToolChoice.BED)
                        .run("type r; click 0 0; click 4 0; move 4 3")
                        .words())
                .containsExactly("12.0 m²", "4.00 m × 3.00 m");
        assertThat(with(ToolChoice.HEAD).run("click 0 0; click 0 4; move 7 0").words())
                .containsExactly("90°");
        assertThat(with(ToolChoice.TREE).run("click 0 0; move 0 4").words()).containsExactly("4.00 m");
        assertThat(with(ToolChoice.TREE).run("click 0 0; type 5").words()).containsExactly("5▏");
    }

    @Test
    void whatIsDraggedIsShownAsItWillBe() {
        ToolScript script = with(ToolChoice.BED).run("type r");
        Tool pressed = script.tool
                .on(new Input.Press(new Point(0, 0), 1, Input.Held.NONE), script.around())
                .next();
        Tool dragged = pressed.on(new Input.Drag(new Point(4, 3), Input.Held.NONE), script.around())
                .next();

        assertThat(dragged.guides(script.around()))
                .contains(new Guide.Line(
                        List.of(new Point(0, 0), new Point(4, 0), new Point(4, 3), new Point(0, 3)),
                        true,
                        Guide.Style.DRAWN));
    }

    @Test
    void theFirstCornerGlowsWhenTheNextClickCloses() {
        ToolScript script = with(ToolChoice.BED).run("click 0 0; click 4 0; click 4 3; move 0.05 0");

        assertThat(script.tool.guides(script.around()))
                .contains(new Guide.Grip(new Point(0, 0), false, true), new Guide.Snap(new Point(0, 0), "close"));
    }

    @ParameterizedTest
    @EnumSource(ToolChoice.class)
    void everyToolSaysWhatToDoNext(ToolChoice choice) {
        ToolScript script = with(choice);
        assertThat(script.tool.hint()).isNotBlank();
        String first = script.tool.hint();
        script.run("click 0 0");
        assertThat(script.tool.hint()).isNotBlank();
        assertThat(script.tool.hint().equals(first)).isEqualTo(choice == ToolChoice.GATE);
    }

    @Test
    void aYardThatChangesWhileDrawingIsTheOneDrawnOn() {
        ToolScript script = with(ToolChoice.BED).run("click 0 0; click 4 0");
        script.yard = new ToolScript(ToolChoice.BUILDING.tool(Variant.RECTANGLE), EMPTY).run("drag 4 3 9 9").yard;
        script.run("click 4.05 3.05; enter");

        assertThat(script.yard.all(Building.class)).hasSize(1);
        assertThat(script.last().shape().orElseThrow()).isEqualTo(Outline.of(0, 0, 4, 0, 4, 3));
    }
}
