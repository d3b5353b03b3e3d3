package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class RepairTest {
    @Test
    void bothLobesOfABowTieCount() {
        Repair.Result result = Repair.of(Outline.of(0, 0, 1, 1, 1, 0, 0, 1));
        assertThat(result.region().areaM2()).isCloseTo(0.5, within(1e-12));
        assertThat(result.notes()).containsExactly(new Repair.Note(Repair.Kind.SELF_CROSSING, new Point(0.5, 0.5), 1));
    }

    @Test
    void aRepeatedPointIsNotedWhereItIs() {
        assertThat(Repair.of(Outline.of(0, 0, 4, 0, 4, 3, 4, 3, 4, 3)).notes())
                .containsExactly(new Repair.Note(Repair.Kind.POINT_REPEATED, new Point(4, 3), 2));
    }

    @Test
    void aTangleIsLeftOutBeforeItTakesForever() {
        Random random = new Random(7);
        Outline tangle = Outline.of(Stream.generate(() -> new Point(random.nextDouble(), random.nextDouble()))
                .limit(100_000)
                .toList());
        Outline.Part square = Outline.of(5, 5, 6, 5, 6, 6, 5, 6).parts().get(0);
        Outline both = new Outline(List.of(tangle.parts().get(0), square));
        Repair.Result result = Assertions.assertTimeout(Duration.ofSeconds(10), () -> Repair.of(both));
        assertThat(result.notes()).singleElement().returns(Repair.Kind.TANGLED, Repair.Note::kind);
        assertThat(result.region().areaM2()).isEqualTo(1);
    }

    @Test
    void aStarIsMendedHoweverOftenItCrosses() {
        // the {41/20} star: 41 · 19 = 779 crossings, each side with 38 others, under the limit
        double[] xy = new double[82];
        for (int i = 0; i < 41; i++) {
            xy[2 * i] = Math.cos(2 * Math.PI * 20 * i / 41);
            xy[2 * i + 1] = Math.sin(2 * Math.PI * 20 * i / 41);
        }
        Repair.Result result = Repair.of(Outline.of(xy));
        assertThat(result.notes()).singleElement().returns(Repair.Kind.SELF_CROSSING, Repair.Note::kind);
        assertThat(result.region().isEmpty()).isFalse();
    }

    @Test
    void distancesToTheEdgeAreThoseOfTheNearestSide() {
        Region ring = Region.of(new Outline(List.of(new Outline.Part(
                Outline.of(0, 0, 10, 0, 10, 10, 0, 10).parts().get(0).shell(),
                List.of(Outline.of(4, 4, 6, 4, 6, 6, 4, 6).parts().get(0).shell())))));
        EdgeDistance edge = new EdgeDistance(ring);
        assertThat(edge.to(new Point(5, 5))).isEqualTo(1);
        assertThat(edge.to(new Point(1, 5))).isEqualTo(1);
        assertThat(edge.to(new Point(13, 14))).isEqualTo(5);
        assertThat(edge.to(new Point(10, 3))).isZero();
        assertThat(new EdgeDistance(Region.EMPTY).to(new Point(0, 0))).isInfinite();
    }
}
