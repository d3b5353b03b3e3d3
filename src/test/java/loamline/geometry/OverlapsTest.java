package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OverlapsTest {
    private static Region box(double minX, double minY, double maxX, double maxY) {
        return Region.of(new Box(minX, minY, maxX, maxY).outline());
    }

    private static List<Double> areas(List<Region> regions) {
        return regions.stream().map(Region::areaM2).toList();
    }

    @Test
    void groundUnderNothingIsAllUnderNone() {
        assertThat(areas(Overlaps.depths(box(0, 0, 4, 3), List.of(), 2))).containsExactly(12.0, 0.0, 0.0);
        assertThat(areas(Overlaps.depths(Region.EMPTY, List.of(box(0, 0, 1, 1)), 1)))
                .containsExactly(0.0, 0.0);
        assertThat(areas(Overlaps.depths(box(0, 0, 4, 3), List.of(box(9, 9, 10, 10)), 1)))
                .containsExactly(12.0, 0.0);
    }

    /** Two squares that overlap by a third, one twice, on ground that cuts all of them. */
    @Test
    void facesCountEveryRegionOverThem() {
        List<Region> over = List.of(box(-1, 0, 2, 4), box(1, 0, 5, 4), box(1, 0, 5, 4));
        assertThat(areas(Overlaps.depths(box(0, 0, 6, 2), over, 3))).containsExactly(2.0, 2.0, 6.0, 2.0);
        assertThat(areas(Overlaps.depths(box(0, 0, 6, 2), over, 1))).containsExactly(2.0, 10.0);
    }

    @Test
    void holesOfTheGroundAndOfTheRegionsAreLeftOut() {
        Region ground = box(0, 0, 10, 10).minus(box(4, 4, 6, 6));
        Region ring = box(1, 1, 9, 9).minus(box(3, 3, 7, 7));
        assertThat(areas(Overlaps.depths(ground, List.of(ring), 1))).containsExactly(100 - 4 - 48.0, 48.0);
    }

    /** Set operations one region at a time say the same. */
    @Test
    void manyDiscsAgreeWithAddingThemOneByOne() {
        SplittableRandom random = new SplittableRandom(4);
        Region ground = box(0, 0, 30, 20);
        List<Region> discs = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            Point at = new Point(random.nextDouble(30), random.nextDouble(20));
            discs.add(Region.around(at, random.nextDouble(1, 7)));
        }
        Region once = Region.EMPTY;
        Region twice = Region.EMPTY;
        for (Region disc : discs) {
            twice = twice.union(once.intersection(disc));
            once = once.union(disc);
        }
        List<Region> depths = Overlaps.depths(ground, discs, 2);
        assertThat(depths.get(0).areaM2()).isCloseTo(ground.minus(once).areaM2(), within(1e-6));
        assertThat(depths.get(2).areaM2()).isCloseTo(ground.intersection(twice).areaM2(), within(1e-6));
        assertThat(areas(depths).stream().mapToDouble(a -> a).sum()).isCloseTo(600, within(1e-6));
    }
}
