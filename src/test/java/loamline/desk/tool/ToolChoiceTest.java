package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.desk.tool.ToolChoice.Variant;
import loamline.place.Frame;
import loamline.yard.Kind;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ToolChoiceTest {
    /** The key that fits the map to the window. */
    private static final char FIT = 'F';

    private static ToolScript with(Tool tool) {
        return new ToolScript(tool, Yard.empty("", Frame.local()));
    }

    @Test
    void noTwoKeysClash() {
        Stream<Character> keys = Stream.of(
                        Arrays.stream(ToolChoice.values()).map(ToolChoice::key),
                        Arrays.stream(Variant.values()).map(Variant::key),
                        Stream.of(FIT))
                .flatMap(some -> some);
        assertThat(keys)
                .doesNotHaveDuplicates()
                .allSatisfy(key -> assertThat(key).isBetween('A', 'Z'));
    }

    @ParameterizedTest
    @EnumSource(ToolChoice.class)
    void aKeyInEitherCaseGivesItsTool(ToolChoice choice) {
        assertThat(ToolChoice.of(choice.key())).contains(choice);
        assertThat(ToolChoice.of(Character.toLowerCase(choice.key()))).contains(choice);
        assertThat(ToolChoice.of(choice.tool())).contains(choice);
    }

    @ParameterizedTest
    @EnumSource(ToolChoice.class)
    void aToolAddsItsKindUnderItsLabelInEveryVariant(ToolChoice choice) {
        Stream<Tool> tools = choice.variants().isEmpty()
                ? Stream.of(choice.tool())
                : choice.variants().stream().map(choice::tool);
        tools.forEach(tool -> {
            ToolScript script = with(tool).run("drag 0 0 4 3; click 5 0; click 5 8; enter");
            assertThat(script.yard.features().get(0).kind()).contains(choice.kind());
            assertThat(script.edits.get(0)).isEqualTo("add " + choice.label().toLowerCase(Locale.ROOT));
        });
    }

    @Test
    void everythingThatIsDrawnByHandHasATool() {
        assertThat(Arrays.stream(ToolChoice.values()).map(ToolChoice::kind).distinct())
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(Kind.values())
                        .filter(kind -> kind != Kind.CORE)
                        .toList());
    }

    @Test
    void aLetterChangesHowAnOutlineIsDrawnWhileNothingIs() {
        ToolScript script = with(ToolChoice.BED.tool()).run("type R");
        assertThat(Variant.of(script.tool)).contains(Variant.RECTANGLE);
        assertThat(Variant.of(script.run("type c").tool)).contains(Variant.CIRCLE);
        assertThat(Variant.of(script.run("type o").tool)).contains(Variant.OUTLINE);
        script.run("click 0 0; type r");
        assertThat(script.wasUsed).isFalse();
        assertThat(Variant.of(script.tool)).contains(Variant.OUTLINE);
    }

    @Test
    void whatIsNoGroundHasNoVariants() {
        assertThat(ToolChoice.FENCE.variants()).isEmpty();
        assertThat(Variant.of(ToolChoice.FENCE.tool())).isEmpty();
        assertThat(with(ToolChoice.FENCE.tool()).run("type r").wasUsed).isFalse();
    }

    @Test
    void otherToolsAreNoneOfThese() {
        Tool other = new Tool() {
            @Override
            public Step on(Input input, Surroundings around) {
                return Step.pass(this);
            }

            @Override
            public List<Guide> guides(Surroundings around) {
                return List.of();
            }

            @Override
            public String hint() {
                return "";
            }
        };
        assertThat(ToolChoice.of(other)).isEqualTo(Optional.empty());
        assertThat(Variant.of(other)).isEmpty();
        assertThat(ToolChoice.of('x')).isEmpty();
    }
}
