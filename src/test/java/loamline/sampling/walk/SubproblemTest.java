package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SubproblemTest {
    /** Corners of a unit square in order, and its centre. */
    private static final double HALF = Math.sqrt(0.5);

    private static final double DIAGONAL = Math.sqrt(2);
    private static final double[] D = {
        0, 1, DIAGONAL, 1, HALF, 1, 0, 1, DIAGONAL, HALF, DIAGONAL, 1, 0, 1, HALF, 1, DIAGONAL, 1, 0, HALF, HALF, HALF,
        HALF, HALF, 0
    };
    private static final double ROUND = 4;

    private final OneTree tree = new OneTree(5);

    @Test
    void aRequiredLegIsInTheTreeAtItsOwnCost() {
        grow(Subproblem.all(5).with(0, 2));
        assertThat(tree.joins(0, 2)).isTrue();
        // 0-2 and 0-4 at the start, 4-1, 4-2, 4-3 between the others
        assertThat(grow(Subproblem.all(5).with(0, 2))).isCloseTo(DIAGONAL + 4 * HALF, within(1e-14));
    }

    @Test
    void aLegLeftOutIsNotInTheTree() {
        assertThat(grow(Subproblem.all(5).without(0, 4))).isCloseTo(2 + 3 * HALF, within(1e-14));
        assertThat(tree.joins(0, 4)).isFalse();
    }

    @Test
    void aStopWithTwoRequiredLegsHasNoOthers() {
        Subproblem full = Subproblem.all(5).with(4, 1).with(4, 2);
        assertThat(full.isOpen(4, 0)).isFalse();
        assertThat(full.isOpen(4, 3)).isFalse();
        assertThat(full.isOpen(1, 0)).isTrue();
        grow(full);
        assertThat(tree.degree(4)).isEqualTo(2);
    }

    @Test
    void partsLeaveTheWholeAsItWas() {
        Subproblem whole = Subproblem.all(5);
        whole.with(0, 1);
        whole.without(2, 3);
        assertThat(whole.isOpen(0, 1)).isTrue();
        assertThat(whole.isOpen(2, 3)).isTrue();
    }

    /** The tree is 1 + 4 √½ long; a diagonal at the start takes the place of a side, one elsewhere that of a half. */
    @Test
    void leavesOutLegsThatMakeEveryRoundTooLong() {
        Subproblem all = Subproblem.all(5);
        double bound = grow(all);
        assertThat(bound).isCloseTo(1 + 4 * HALF, within(1e-14));
        all.leaveOutHopeless(tree, D, new double[25], 0.5);
        assertThat(all.isOpen(1, 3)).isFalse(); // adds √2 − √½ = 0.71
        assertThat(all.isOpen(0, 2)).isTrue(); // adds √2 − 1 = 0.41
        assertThat(all.isOpen(1, 2)).isTrue(); // adds 1 − √½ = 0.29
        assertThat(all.isOpen(1, 4)).isTrue(); // in the tree
    }

    private double grow(Subproblem part) {
        part.writeTo(tree, D, ROUND);
        return tree.grow();
    }
}
