package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ConvexPartsTest {
    private static List<List<Point>> parts(Outline outline) {
        return Region.of(outline).convexParts();
    }

    private static double areaM2(List<List<Point>> rings) {
        return Region.union(
                        rings.stream().map(ring -> Region.of(Outline.of(ring))).toList())
                .areaM2();
    }

    @Test
    void aConvexRegionStaysWhole() {
        assertThat(parts(Outline.of(0, 0, 4, 0, 4, 2, 4, 3, 0, 3))).hasSize(1).allMatch(ring -> ring.size() == 5);
    }

    @Test
    void anLAndAYardWithAHoleAreCutWithoutGap() {
        assertThat(areaM2(parts(Outline.of(0, 0, 4, 0, 4, 2, 2, 2, 2, 4, 0, 4))))
                .isCloseTo(12, within(1e-9));
        Outline ring = new Outline(List.of(new Outline.Part(
                List.of(new Point(0, 0), new Point(9, 0), new Point(9, 9), new Point(0, 9)),
                List.of(List.of(new Point(3, 3), new Point(6, 3), new Point(6, 6), new Point(3, 6))))));
        assertThat(areaM2(parts(ring))).isCloseTo(72, within(1e-9));
        assertThat(parts(ring)).allMatch(part -> part.size() == 3);
    }

    @Test
    void noGroundHasNoParts() {
        assertThat(Region.EMPTY.convexParts()).isEmpty();
    }
}
