package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loamline.Laws;
import loamline.geometry.Point;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RingTest {
    private static final int SIDE = 12;

    private static Cells drawn(String... rows) {
        int width = rows[0].length();
        return Cells.of(width, rows.length, 1, i -> rows[i / width].charAt(i % width) == '#');
    }

    @Test
    void aShellRunsClockwiseAndItsHoleTheOtherWay() {
        List<Ring> rings = Ring.around(drawn("###", "#.#", "###"));
        assertThat(rings).extracting(Ring::area).containsExactly(9, -1);
        assertThat(rings).extracting(Ring::isHole).containsExactly(false, true);
        assertThat(rings.get(0).corners())
                .containsExactly(new Point(0, 0), new Point(3, 0), new Point(3, 3), new Point(0, 3));
        assertThat(rings.get(0).encloses(1, 1)).isTrue();
        assertThat(rings.get(0).encloses(3, 1)).isFalse();
    }

    @Test
    void cellsThatTouchByACornerHaveRingsOfTheirOwn() {
        assertThat(Ring.around(drawn("#.", ".#"))).extracting(Ring::area).containsExactly(1, 1);
    }

    @Test
    void everySideKnowsItsCellAndWhichWayIsOut() {
        Ring ring = Ring.around(Cells.of(9, 9, 2, i -> i == 40)).get(0); // column 4, row 4
        assertThat(ring.length()).isEqualTo(4);
        for (int i = 0; i < 4; i++) {
            assertThat(List.of(ring.cellX(i), ring.cellY(i))).containsExactly(4, 4);
            assertThat(ring.middleX(i)).isEqualTo(4.5 + 0.5 * ring.outX(i));
            assertThat(ring.middleY(i)).isEqualTo(4.5 + 0.5 * ring.outY(i));
        }
    }

    @Property(seed = Laws.SEED, tries = 200)
    void ringsEncloseAllCellsAndNothingElse(@ForAll long seed, @ForAll @IntRange(min = -9, max = 9) int share) {
        Cells cells = Cells.of(SIDE, SIDE, SIDE, i -> Canvas.noise(i % SIDE, i / SIDE, seed) < share / 10.0);
        List<Ring> rings = Ring.around(cells);
        assertThat(rings.stream().mapToInt(Ring::area).sum()).isEqualTo(cells.count());
        for (int i = 0; i < cells.width() * cells.height(); i++) {
            int x = i % cells.width();
            int y = i / cells.width();
            long round = rings.stream().filter(ring -> ring.encloses(x, y)).count();
            assertThat(round % 2 == 1).isEqualTo(cells.has(x, y));
        }
    }
}
