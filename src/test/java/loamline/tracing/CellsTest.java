package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import loamline.Laws;
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

    @Property(seed = Laws.SEED, tries = 60)
    void growingAndShrinkingLookAtTheNeighbourhoodThatExists(
            @ForAll @IntRange(min = 1, max = 12) int width,
            @ForAll @IntRange(min = 1, max = 12) int height,
            @ForAll @IntRange(min = 1, max = 4) int radius,
            @ForAll long seed) {
        Cells cells = random(width, height, seed, 0.4);
        Cells grown = cells.grown(radius);
        Cells shrunk = cells.shrunk(radius);
        for (int y = 0; y < cells.height(); y++) {
            for (int x = 0; x < cells.width(); x++) {
                List<Boolean> round = round(cells, x, y, radius);
                assertThat(grown.has(x, y)).isEqualTo(round.contains(true));
                assertThat(shrunk.has(x, y)).isEqualTo(!round.contains(false));
            }
        }
    }

    /** The slow twin: all cells of a neighbourhood. */
    private static List<Boolean> round(Cells cells, int x, int y, int radius) {
        List<Boolean> round = new ArrayList<>();
        for (int row = Math.max(0, y - radius); row <= Math.min(cells.height() - 1, y + radius); row++) {
            for (int column = Math.max(0, x - radius); column <= Math.min(cells.width() - 1, x + radius); column++) {
                round.add(cells.has(column, row));
            }
        }
        return round;
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
        Cells few = Cells.of(7, 2, 7, i -> i == 3);
        assertThat(text(few.andNear(new int[] {7}, 1, all))).containsExactly("##.#...", "##.....");
    }
}
