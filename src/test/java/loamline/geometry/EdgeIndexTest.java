package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EdgeIndexTest {
    private static Edge edge(double x0, double y0, double x1, double y1) {
        return new Edge(new Point(x0, y0), new Point(x1, y1), true, true);
    }

    @Test
    void nothingIsNearWhereNothingIs() {
        assertThat(new EdgeIndex(List.of()).near(new Point(0, 0), 1e6, 5)).isEmpty();
    }

    @Test
    void whatIsJustWithinReachIsFoundNearestFirst() {
        Edge wall = edge(0, 2, 10, 2);
        Edge post = edge(5, 1, 5, 1);
        EdgeIndex index = new EdgeIndex(List.of(wall, post, edge(0, 2.001, 10, 2.001)));
        assertThat(index.near(new Point(5, 0), 2, 5)).containsExactly(post, wall);
        assertThat(index.near(new Point(5, 0), 2, 1)).containsExactly(post);
    }

    @Test
    void itFindsWhatLookingAtEveryEdgeFinds() {
        Random random = new Random(11);
        List<Edge> edges = IntStream.range(0, 500)
                .mapToObj(i -> {
                    Point from = new Point(100 * random.nextDouble(), 100 * random.nextDouble());
                    return edge(
                            from.x(),
                            from.y(),
                            from.x() + 10 * random.nextGaussian(),
                            from.y() + 10 * random.nextGaussian());
                })
                .toList();
        EdgeIndex index = new EdgeIndex(edges);
        for (int i = 0; i < 200; i++) {
            Point place = new Point(100 * random.nextDouble(), 100 * random.nextDouble());
            List<Edge> slowly = edges.stream()
                    .filter(edge -> edge.distanceTo(place) <= 8)
                    .sorted(Comparator.comparingDouble(edge -> edge.distanceTo(place)))
                    .limit(7)
                    .toList();
            assertThat(index.near(place, 8, 7)).isEqualTo(slowly);
        }
    }
}
