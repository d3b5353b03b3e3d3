package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CellMosaicTest {
    @Test
    void neighboursShareTheirSmoothedBorder() {
        int[] cells = IntStream.range(0, 40 * 40).toArray();
        int[] labels = Arrays.stream(cells)
                .map(c -> (c % 40) + (c / 40) / 3 < 26 ? 0 : 1)
                .toArray();
        List<Region> regions = new CellMosaic(100, 200, 0.25, 40).regions(cells, labels, 2);
        assertThat(regions.get(0).areaM2() + regions.get(1).areaM2()).isCloseTo(100, within(1e-9));
        assertThat(regions.get(0).intersection(regions.get(1)).isEmpty()).isTrue();
        assertThat(regions.get(0).outline().vertices().count()).isLessThan(8);
    }

    @Test
    void aLabelWithoutCellsIsEmptyGround() {
        assertThat(new CellMosaic(0, 0, 1, 2).regions(new int[] {0, 1}, new int[] {1, 1}, 3))
                .extracting(Region::isEmpty)
                .containsExactly(true, false, true);
    }
}
