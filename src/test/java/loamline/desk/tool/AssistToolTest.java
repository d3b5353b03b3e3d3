package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.desk.session.Selection;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.Cover;
import loamline.yard.Extras;
import loamline.yard.Kind;
import loamline.yard.Turf;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

/** The assisted tool with a tracer that is told what to answer. */
class AssistToolTest {
    private static final AssistTracer.Found SQUARE = new AssistTracer.Found(
            Outline.of(0, 0, 10, 0, 10, 10, 0, 10), 100, List.of("The north side is not clear."));

    private final List<AssistTracer.Asked> questions = new ArrayList<>();
    private final List<Effect.Later> waiting = new ArrayList<>();
    private final List<String> labels = new ArrayList<>();
    private AssistTracer.Found answer = SQUARE;
    private Yard yard = Yard.empty("", Frame.local())
            .withBackdrop(Optional.of(new Backdrop(
                    "a.png", 400, 200, new Backdrop.Placement(0.1, 0, 0, 0, -0.1, 20), 0, 1, List.of(), Extras.NONE)));
    private String said = "";
    private boolean done;
    private Tool tool = AssistTool.of(
            asked -> {
                questions.add(asked);
                return answer;
            },
            AssistTool.Settings.USUAL);

    private boolean send(Input input) {
        Tool.Step step = tool.on(input, around());
        tool = step.next();
        for (Effect effect : step.effects()) {
            if (effect instanceof Effect.Edit edit) {
                labels.add(edit.label());
                yard = edit.after();
            } else if (effect instanceof Effect.Say say) {
                said = say.words();
            } else if (effect instanceof Effect.Later later) {
                waiting.add(later);
            } else if (effect instanceof Effect.Done) {
                done = true;
            }
        }
        return step.used();
    }

    private Surroundings around() {
        return new Surroundings(yard, Selection.NOTHING, UnitSystem.US, 0.05);
    }

    private void click(double x, double y, boolean alt) {
        send(new Input.Press(new Point(x, y), 1, new Input.Held(false, false, alt)));
    }

    /** Lets the tracer answer what it was asked last. */
    private void answerArrives() throws Exception {
        send(waiting.get(waiting.size() - 1).task().call());
    }

    private void key(Input.KeyName key) {
        send(new Input.Key(key, Input.Held.NONE));
    }

    private AssistTool assist() {
        return (AssistTool) tool;
    }

    @Test
    void aClickAnAnswerAndEnterMakeTurf() throws Exception {
        click(3, 3, false);
        answerArrives();
        assertThat(said).contains("north side");
        assertThat(tool.guides(around())).anyMatch(Guide.Line.class::isInstance);
        key(Input.KeyName.ENTER);
        assertThat(labels).containsExactly("trace turf");
        assertThat(yard.all(Turf.class).findFirst().orElseThrow().outline()).isEqualTo(SQUARE.outline());
        assertThat(assist().clicks()).isEmpty();
    }

    @Test
    void clicksAddAndAltTakesAway() throws Exception {
        click(3, 3, false);
        click(5, 5, false);
        click(7, 7, true);
        answerArrives();
        assertThat(questions).singleElement().satisfies(asked -> {
            assertThat(asked.inside()).containsExactly(new Point(3, 3), new Point(5, 5));
            assertThat(asked.outside()).containsExactly(new Point(7, 7));
        });
    }

    @Test
    void nothingIsTakenAwayBeforeSomethingIsThere() {
        click(3, 3, true);
        assertThat(waiting).isEmpty();
        assertThat(said).contains("Click inside");
    }

    @Test
    void bracketsMoveTheSliderAndAskAgain() throws Exception {
        click(3, 3, false);
        send(new Input.Typed(']'));
        answerArrives();
        assertThat(questions.get(0).tolerance()).isEqualTo(0.55);
        for (int i = 0; i < 30; i++) {
            send(new Input.Typed('['));
        }
        assertThat(assist().settings().tolerance()).isZero();
    }

    @Test
    void aLetterOrTheSheetChangesWhatItBecomes() throws Exception {
        assertThat(send(new Input.Typed('p'))).isFalse();
        click(3, 3, false);
        assertThat(send(new Input.Typed('p'))).isTrue();
        answerArrives();
        key(Input.KeyName.ENTER);
        assertThat(yard.all(Cover.class).findFirst().orElseThrow().cover()).isEqualTo(Kind.PAVING);
        send(new AssistTool.Settings(Kind.BED, 0.5));
        assertThat(assist().settings().kind()).isEqualTo(Kind.BED);
        click(3, 3, false);
        assertThat(send(new Input.Typed('n'))).isFalse();
    }

    @Test
    void anAnswerToAnEarlierQuestionIsPassedOver() throws Exception {
        click(3, 3, false);
        click(5, 5, false);
        send(waiting.get(0).task().call());
        assertThat(assist().found()).isEmpty();
        key(Input.KeyName.ENTER);
        assertThat(said).contains("Still looking");
        assertThat(labels).isEmpty();
    }

    @Test
    void whereNothingIsFoundNothingIsAdded() throws Exception {
        answer = new AssistTracer.Found(new Outline(List.of()), 0, List.of("This ground is already traced."));
        click(3, 3, false);
        answerArrives();
        assertThat(said).contains("already traced");
        key(Input.KeyName.ENTER);
        assertThat(labels).isEmpty();
    }

    @Test
    void backspaceTakesTheLastClickBackAndEscapeAll() {
        click(3, 3, false);
        click(5, 5, false);
        key(Input.KeyName.BACKSPACE);
        assertThat(assist().clicks()).hasSize(1);
        key(Input.KeyName.ESCAPE);
        assertThat(assist().clicks()).isEmpty();
        assertThat(done).isFalse();
        key(Input.KeyName.ESCAPE);
        assertThat(done).isTrue();
    }

    @Test
    void withoutAnImageItSaysWhatIsMissing() {
        yard = Yard.empty("", Frame.local());
        click(3, 3, false);
        assertThat(said).contains("no image");
        assertThat(waiting).isEmpty();
    }
}
