package loamline.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.place.Frame;
import loamline.sampling.CorePlan;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class LegendTest {
    private static final SceneOptions OPTIONS = SceneOptions.usual(View.of(new Box(0, 0, 30, 45), 200), new EvenText());

    private static List<String> words(Yard yard, Optional<CorePlan> plan, SceneOptions options) {
        return Legend.of(yard, plan, options).stream().map(Legend.Entry::words).toList();
    }

    @Test
    void bagsComeFirstThenTheWalkThenTheGround() {
        assertThat(words(SampleYard.yard(), Optional.of(SamplePlan.twoBags()), OPTIONS))
                .containsExactly(
                        "bag A",
                        "bag B",
                        "spare",
                        "walk",
                        "one core’s ground",
                        "bed",
                        "paving",
                        "gravel",
                        "water",
                        "deck",
                        "fence",
                        "wall",
                        "tree",
                        "head, valve",
                        "keep away",
                        "trouble spot");
    }

    @Test
    void whatIsNotThereIsNotExplained() {
        assertThat(words(Yard.empty("", Frame.local()), Optional.empty(), OPTIONS))
                .isEmpty();
        assertThat(words(Yard.empty("", Frame.local()), Optional.of(SamplePlan.oneCore()), OPTIONS))
                .containsExactly("bag A", "walk", "one core’s ground");
    }

    @Test
    void whatIsNotDrawnIsNotExplained() {
        SceneOptions trees = OPTIONS.with(java.util.Set.of(Layer.TREES));
        assertThat(words(SampleYard.yard(), Optional.of(SamplePlan.twoBags()), trees))
                .containsExactly("tree");
    }
}
