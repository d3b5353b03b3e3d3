package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CellsTest {
    /** Cells drawn row by row, # in and . out, in a window of just that size. */
    private static Cells drawn(String... rows) {
        int width = rows[0].length();
        return Cells.of(width, rows.length, width, i -> rows[i / width].charAt(i % width) == '#');
    }

    private static String[] text(Cells cells) {
        return IntStream.range(0, cells.height())
                .mapToObj(y -> IntStream.range(0, cells.width())
                        .mapToObj(x -> cells.has(x, y) ? "#" : ".")
                        .reduce("", String::concat))
                .toArray(String[]::new);
    }

    private static Cells random(int width, int height, long seed, double share) {
        return Cells.of(width, height, width + height, i -> Canvas.noise(i % width, i / width, seed) < share);
    }

    @Property(tries = 60)
    void aFilterCountsTheNeighbourhoodThatExists(
            @ForAll @IntRange(min = 1, max = 12) int width,
            @ForAll @IntRange(min = 1, max = 12) int height,
            @ForAll @IntRange(min = 1, max = 4) int radius,
            @ForAll long seed) {
        Cells cells = random(width, height, seed, 0.2);
        for (double share : new double[] {Cells.ANY, Cells.HALF, Cells.ALL}) {
            Cells filtered = cells.filter(radius, share);
            for (int i = 0; i < cells.width() * cells.height(); i++) {
                int x = i % cells.width();
                int y = i / cells.width();
                assertThat(filtered.has(x, y)).isEqualTo(isFull(cells, x, y, radius, share));
            }
        }
    }

    /** The slow twin. */
    private static boolean isFull(Cells cells, int x, int y, int radius, double share) {
        int in = 0;
        int all = 0;
        for (int row = y - radius; row <= y + radius; row++) {
            for (int column = x - radius; column <= x + radius; column++) {
                all += row >= 0 && row < cells.height() && column >= 0 && column < cells.width() ? 1 : 0;
                in += cells.has(column, row) ? 1 : 0;
            }
        }
        return in > 0 && in >= share * all;
    }

    @Test
    void smallHolesAreFilledAndLargeOnesAndBaysAreKept() {
        Cells cells = drawn(
                "########", //
                "#.##..##",
                "####..#.",
                "########");
        assertThat(text(cells.withoutHolesBelow(4)))
                .containsExactly(
                        "########", //
                        "####..##",
                        "####..#.",
                        "########");
        assertThat(text(cells.withoutHolesBelow(5)))
                .containsExactly(
                        "########", //
                        "########",
                        "#######.",
                        "########");
    }

    @Test
    void piecesThatTouchByACornerAreNotConnected() {
        Cells cells = drawn(
                "##..", //
                "##..", "..##");
        assertThat(text(cells.connectedTo(new int[] {0})))
                .containsExactly(
                        "##..", //
                        "##..", "....");
    }

    @Test
    void aRectangleHasRoomAsFarAsTheWindowReaches() {
        IntPredicate one = i -> i == 21; // column 1, row 2
        Cells cells = Cells.of(10, 10, 3, one);
        assertThat(List.of(cells.left(), cells.top(), cells.width(), cells.height()))
                .containsExactly(0, 0, 5, 6);
        assertThat(cells.has(1, 2)).isTrue();
        assertThat(cells.count()).isEqualTo(1);
        assertThat(Cells.of(10, 10, 3, i -> false).count()).isZero();
    }

    @Test
    void cellsNearAPlaceAreAddedFromAnotherSet() {
        Cells all = drawn("#######", "#######");
        Cells few = all.filter(1, Cells.ALL).where(i -> i == 3);
        assertThat(text(few.andNear(new int[] {7}, 1, all))).containsExactly("##.#...", "##.....");
    }
}
