package loamline.sampling.strata;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RepairTest {
    private interface Owner {
        int of(int column, int row);
    }

    private static Strata strata(Ground ground, int k, Owner owner) {
        int[] owners = new int[ground.size()];
        for (int i = 0; i < owners.length; i++) {
            owners[i] = owner.of(ground.column(i), ground.row(i));
        }
        return new Strata(ground, k, owners);
    }

    /** Two parts of 10 columns and 20 rows with a gap of 5 columns: four squares of 100 cells. */
    private static final Ground PARTS = Grounds.of(25, (column, row) -> (column < 10 || column >= 15) && row < 20);

    @Test
    void twoStrataThatSpanTheSameGapEachKeepToOneSide() {
        Strata spanning = strata(PARTS, 4, (column, row) -> {
            boolean west = column < 10;
            if (row >= 10) {
                return west ? 2 : 3;
            }
            return row < (west ? 6 : 4) ? 0 : 1;
        });
        assertThat(spanning.broken()).containsExactly(0, 1);
        Strata joined = Repair.join(spanning);
        assertThat(joined.broken()).isEmpty();
        assertThat(joined.areaCv()).isZero();
        assertThat(Repair.cost(joined)).isLessThan(Repair.cost(spanning));
    }

    @Test
    void oneStratumThatMustSpanTheGapStaysAsItIs() {
        Strata spanning = strata(PARTS, 1, (column, row) -> 0);
        assertThat(Repair.join(spanning)).isSameAs(spanning);
    }

    @Test
    void aStrayCellInsideAnotherStratumComesHome() {
        Ground ground = Grounds.of(20, (column, row) -> row < 10);
        Strata spotted = strata(ground, 2, (column, row) -> {
            boolean swapped = row == 4 && (column == 4 || column == 15);
            return column < 10 != swapped ? 0 : 1;
        });
        assertThat(spotted.broken()).containsExactly(0, 1);
        Strata joined = Repair.join(spotted);
        assertThat(joined.broken()).isEmpty();
        assertThat(ExactBalance.sizes(joined.owners(), 2)).containsExactly(100, 100);
    }

    @Test
    void joiningThatCostsTooMuchIsLeftUndone() {
        // two rows with a row between: joined strata would be a row each, twice as long
        Ground ground = Grounds.of(200, (column, row) -> row == 0 || row == 2);
        Strata across = strata(ground, 2, (column, row) -> column < 100 ? 0 : 1);
        assertThat(across.broken()).containsExactly(0, 1);
        assertThat(Repair.join(across)).isSameAs(across);
    }
}
