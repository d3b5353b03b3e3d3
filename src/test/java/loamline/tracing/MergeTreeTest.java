package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class MergeTreeTest {
    private static final Picture NOISE = new Canvas(60, 50)
            .fill(Canvas.box(0, 0, 60, 50), 0x808060, Canvas.grain(0.5, 1))
            .picture();

    private final Features features = Features.of(NOISE);
    private final Patches patches = Patches.of(features);
    private final MergeTree tree = Merging.of(patches, Borders.of(features, patches));

    @Test
    void everyOpenCellBelongsToAPatchAndPatchesAreSmall() {
        assertThat(Arrays.stream(patches.labels())).allMatch(label -> label >= 0 && label < patches.count());
        assertThat(patches.count()).isBetween(50, 1500);
    }

    @Test
    void groundReachedLowerLiesWithinGroundReachedHigher() {
        for (int patch = 0; patch < patches.count(); patch++) {
            int below = patch;
            for (int node = tree.parent(patch); node >= 0; node = tree.parent(node)) {
                assertThat(tree.height(node)).isGreaterThanOrEqualTo(tree.height(below));
                assertThat(tree.size(node)).isGreaterThan(tree.size(below));
                assertThat(tree.holds(node, patch)).isTrue();
                assertThat(tree.holds(below, node)).isFalse();
                below = node;
            }
            assertThat(tree.size(below)).isEqualTo(60 * 50);
        }
    }

    @Test
    void aNodeHoldsAsManyCellsAsItSays() {
        int node = tree.ancestor(0, 0.02);
        long cells = Arrays.stream(patches.labels())
                .filter(label -> tree.holds(node, label))
                .count();
        assertThat(cells).isEqualTo(tree.size(node));
    }

    @Test
    void levelGroundIsJoinedBeforeAnyContrastIsSeen() {
        Features even = Features.of(new Canvas(30, 20)
                .fill(Canvas.box(0, 0, 30, 20), 0x406040, (x, y) -> 1)
                .picture());
        Patches level = Patches.of(even);
        MergeTree joined = Merging.of(level, Borders.of(even, level));
        assertThat(joined.size(joined.ancestor(0, 1e-6))).isEqualTo(30 * 20);
    }

    @Test
    void siblingsHaveTheSameParentAndMakeItUp() {
        for (int node = 0; tree.parent(node) >= 0; node = tree.parent(node)) {
            int other = tree.sibling(node);
            assertThat(tree.sibling(other)).isEqualTo(node);
            assertThat(tree.parent(other)).isEqualTo(tree.parent(node));
            assertThat(tree.size(node) + tree.size(other)).isEqualTo(tree.size(tree.parent(node)));
        }
    }
}
