package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.desk.session.Selection;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.Backdrop.Placement;
import loamline.yard.Extras;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

/** The tools for the image's scale and north, by lists of inputs. */
class ScaleToolTest {
    private static final double FOOT_M = 0.3048;
    private static final Backdrop IMAGE =
            new Backdrop("a.png", 400, 200, new Placement(0.1, 0, 0, 0, -0.1, 20), 1, 1, List.of(), Extras.NONE);

    private Yard yard = Yard.empty("", Frame.local()).withBackdrop(Optional.of(IMAGE));
    private Tool tool = ScaleTool.of(true);
    private final List<String> labels = new ArrayList<>();
    private String said = "";
    private boolean done;

    private boolean send(Input input) {
        Tool.Step step = tool.on(input, around());
        tool = step.next();
        for (Effect effect : step.effects()) {
            if (effect instanceof Effect.Edit edit) {
                labels.add(edit.label());
                yard = edit.after();
            } else if (effect instanceof Effect.Say say) {
                said = say.words();
            } else if (effect instanceof Effect.Done) {
                done = true;
            }
        }
        return step.used();
    }

    private Surroundings around() {
        return new Surroundings(yard, Selection.NOTHING, UnitSystem.US, 0.05);
    }

    private void click(double x, double y) {
        send(new Input.Press(new Point(x, y), 1, Input.Held.NONE));
    }

    private void type(String text) {
        text.chars().forEach(c -> send(new Input.Typed((char) c)));
    }

    private void key(Input.KeyName key) {
        send(new Input.Key(key, Input.Held.NONE));
    }

    private Backdrop image() {
        return yard.backdrop().orElseThrow();
    }

    @Test
    void twoClicksALengthAndEnterSetTheScale() {
        click(5, 10);
        click(15, 10);
        type("34.5 ft");
        key(Input.KeyName.ENTER);
        assertThat(labels).containsExactly("set scale");
        assertThat(image().placement().pixelM()).isCloseTo(34.5 * FOOT_M / 100, within(1e-12));
        assertThat(image().scaleErrorRel()).isCloseTo(Math.sqrt(2) / 100, within(1e-12));
        assertThat(tool).isEqualTo(ScaleTool.of(true));
    }

    @Test
    void theNextDistanceIsClickedOnTheImageAsItIsNow() {
        click(5, 10);
        click(15, 10);
        type("20 m");
        key(Input.KeyName.ENTER);
        Point first = image().placement().ground(new Point(0, 0));
        Point second = image().placement().ground(new Point(0, 200));
        click(first.x(), first.y());
        click(second.x(), second.y());
        type("40 m");
        key(Input.KeyName.ENTER);
        assertThat(image().knownDistances()).hasSize(2);
        assertThat(image().knownDistances().get(1).lengthPx()).isCloseTo(200, within(1e-9));
        assertThat(image().placement().pixelM()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void whatIsNoLengthIsSaidAndChangesNothing() {
        for (String wrong : List.of("", "abc", "0", "-5 ft", "20 km", "12 lb")) {
            tool = ScaleTool.of(true);
            said = "";
            click(5, 10);
            click(15, 10);
            type(wrong);
            key(Input.KeyName.ENTER);
            assertThat(said).as(wrong).isNotBlank();
        }
        assertThat(labels).isEmpty();
    }

    @Test
    void twoEndsAtOnePlaceAreNoDistance() {
        click(5, 10);
        click(5.01, 10);
        assertThat(said).contains("other end");
        assertThat(((ScaleTool) tool).ends()).hasSize(1);
    }

    @Test
    void escapeStepsBackOnceAndBackspaceTakesACharacterThenAnEnd() {
        click(5, 10);
        click(15, 10);
        type("34");
        key(Input.KeyName.BACKSPACE);
        assertThat(((ScaleTool) tool).typed()).isEqualTo("3");
        key(Input.KeyName.ESCAPE);
        assertThat(((ScaleTool) tool).typed()).isEmpty();
        key(Input.KeyName.BACKSPACE);
        assertThat(((ScaleTool) tool).ends()).hasSize(1);
        key(Input.KeyName.ESCAPE);
        assertThat(done).isFalse();
        key(Input.KeyName.ESCAPE);
        assertThat(done).isTrue();
    }

    @Test
    void lettersBeforeALengthIsDueAreLeftToOthers() {
        assertThat(send(new Input.Typed('t'))).isFalse();
        click(5, 10);
        assertThat(send(new Input.Typed('t'))).isFalse();
    }

    @Test
    void theLineAndWhatWasMeasuredBeforeAreDrawn() {
        click(5, 10);
        click(15, 10);
        type("20 m");
        key(Input.KeyName.ENTER);
        click(1, 1);
        send(new Input.Move(new Point(3, 1), Input.Held.NONE));
        assertThat(tool.guides(around()))
                .filteredOn(Guide.Line.class::isInstance)
                .hasSize(2);
    }

    @Test
    void aLineThatPointsNorthTurnsTheImage() {
        tool = NorthTool.of(true);
        click(20, 10);
        click(25, 10);
        key(Input.KeyName.ENTER);
        assertThat(labels).containsExactly("turn north");
        assertThat(done).isTrue();
        // what lay 5 m east of the middle lies 5 m north of it now
        Point east = image().placement().ground(IMAGE.placement().pixel(new Point(25, 10)));
        assertThat(east.distanceTo(new Point(20, 15))).isLessThan(1e-9);
    }

    @Test
    void aTypedBearingIsWhereTheLinePoints() {
        tool = NorthTool.of(true);
        click(20, 10);
        click(20, 15);
        type("90");
        key(Input.KeyName.ENTER);
        Point north = image().placement().ground(IMAGE.placement().pixel(new Point(20, 15)));
        assertThat(north.distanceTo(new Point(25, 10))).isLessThan(1e-9);
    }

    @Test
    void aBearingThatIsNoneIsSaid() {
        tool = NorthTool.of(true);
        click(20, 10);
        click(20, 15);
        type("400");
        key(Input.KeyName.ENTER);
        assertThat(said).contains("0° to 360°");
        assertThat(labels).isEmpty();
    }

    @Test
    void anImageThatBringsItsPlaceKnowsItsNorth() {
        yard = Yard.empty("", Frame.at(new LonLat(-89, 40)))
                .withBackdrop(Optional.of(IMAGE.withDistances(List.of(), 0)));
        tool = NorthTool.of(true);
        click(20, 10);
        assertThat(said).contains("north is known");
        tool = ScaleTool.of(true);
        click(5, 10);
        click(15, 10);
        type("10 m");
        key(Input.KeyName.ENTER);
        assertThat(labels).containsExactly("check scale");
    }
}
