package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OutlineTest {
    @Test
    void thinningKeepsCornersThatAreAStepApart() {
        Outline drawn = Outline.of(0, 0, 0.01, 0, 5, 0, 5, 0.02, 5, 5);
        assertThat(drawn.thinned(0.1)).isEqualTo(Outline.of(0, 0, 5, 0, 5, 5));
        assertThat(drawn.thinned(0)).isEqualTo(drawn);
    }

    @Test
    void thinningAnEmptyOutlineLeavesItEmpty() {
        assertThat(new Outline(java.util.List.of()).thinned(1).parts()).isEmpty();
    }
}
