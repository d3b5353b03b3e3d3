package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CornerTest {
    private static final List<Point> SHELL =
            Outline.of(0, 0, 9, 0, 9, 9).vertices().toList();
    private static final List<Point> HOLE =
            Outline.of(5, 1, 8, 1, 8, 4).vertices().toList();
    private static final Outline TWO_PARTS = new Outline(List.of(
            new Outline.Part(SHELL, List.of(HOLE)),
            new Outline.Part(Outline.of(20, 0, 21, 0, 21, 1, 20, 1).vertices().toList(), List.of())));

    @Test
    void countsTheRingsOfAllPartsAndHoles() {
        assertThat(Corner.rings(TWO_PARTS)).hasSize(3);
        assertThat(new Corner(1, 2).at(TWO_PARTS)).isEqualTo(new Point(8, 4));
        assertThat(new Corner(2, 3).at(TWO_PARTS)).isEqualTo(new Point(20, 1));
    }

    @Test
    void movesACornerOfAHoleAndLeavesAllElse() {
        Outline moved = (Outline) new Corner(1, 0).moved(TWO_PARTS, new Point(6, 2));
        assertThat(moved.parts().get(0).shell()).isEqualTo(SHELL);
        assertThat(moved.parts().get(0).holes().get(0).get(0)).isEqualTo(new Point(6, 2));
        assertThat(moved.parts().get(1)).isEqualTo(TWO_PARTS.parts().get(1));
    }

    @Test
    void theLastSideOfARingLeadsBackToTheFirstCorner() {
        assertThat(new Corner(0, 2).middle(TWO_PARTS)).isEqualTo(new Point(4.5, 4.5));
        assertThat(Corner.sides(TWO_PARTS, 0)).isEqualTo(3);
    }

    @Test
    void keepsThreeCornersOfARingAndTwoOfALine() {
        Polyline line = new Polyline(List.of(new Point(0, 0), new Point(1, 0), new Point(2, 0)));
        assertThat(new Corner(1, 0).removed(TWO_PARTS)).isEmpty();
        assertThat(new Corner(2, 0).removed(TWO_PARTS)).isPresent();
        Shape shorter = new Corner(0, 1).removed(line).orElseThrow();
        assertThat(shorter.vertices()).hasSize(2);
        assertThat(new Corner(0, 1).removed(shorter)).isEmpty();
        assertThat(new Corner(0, 0).removed(new Point(0, 0))).isEmpty();
    }
}
