package loamline.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.sampling.CorePlan;
import loamline.yard.Core;
import loamline.yard.Extras;
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
    void aCoreThatIsLockedIsToldFromTheOthers() {
        Core free = new Core("a", "A1", "A", "Front", new Point(5, 5), false, Extras.NONE);
        Yard yard = Yard.empty("", Frame.local()).withFeatures(List.of(free));
        Yard locked = yard.withFeatures(List.of(free.withLocked(true)));
        assertThat(words(yard, Optional.empty(), OPTIONS)).containsExactly("bag A");
        assertThat(words(locked, Optional.empty(), OPTIONS)).containsExactly("bag A", "locked");
        assertThat(signs(locked)).isEqualTo(signs(yard) + 1);
    }

    /** How many signs the layer of cores has. */
    private static long signs(Yard yard) {
        return YardScene.of(yard, List.of(), Optional.empty(), OPTIONS)
                .layer(Layer.CORES)
                .size();
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
