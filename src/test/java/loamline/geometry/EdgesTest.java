package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class EdgesTest {
    private static final Point ORIGIN = new Point(0, 0);

    private static Edge fence(double x0, double y0, double x1, double y1) {
        return new Edge(new Point(x0, y0), new Point(x1, y1), true, true);
    }

    @Test
    void aRegionIsClosedOnItsInsideOrOnItsOutside() {
        Region square = Region.of(Outline.of(0, 0, 4, 0, 4, 4, 0, 4));
        Region ring = square.minus(Region.of(Outline.of(1, 1, 3, 1, 3, 3, 1, 3)));
        for (boolean openInside : new boolean[] {false, true}) {
            List<Edge> edges = Edges.around(ring, openInside);
            assertThat(edges).hasSize(8);
            assertThat(edges).allSatisfy(edge -> {
                Point middle = edge.from().towards(edge.to(), 0.5);
                double dx = (edge.to().x() - edge.from().x()) / 100;
                double dy = (edge.to().y() - edge.from().y()) / 100;
                assertThat(edge.openLeft()).isEqualTo(ring.covers(middle.plus(-dy, dx)) == openInside);
                assertThat(edge.openRight()).isEqualTo(ring.covers(middle.plus(dy, -dx)) == openInside);
            });
        }
    }

    @Test
    void aLineIsOpenOnBothSidesAndLosesItsRepeatedPoints() {
        Point end = new Point(2, 0);
        assertThat(Edges.along(new Polyline(List.of(ORIGIN, ORIGIN, end))))
                .containsExactly(new Edge(ORIGIN, end, true, true));
        assertThat(Edges.along(new Polyline(List.of(end)))).isEmpty();
    }

    @Test
    void edgesThatCrossAreCutWhereTheyCross() {
        assertThat(Edges.noded(List.of(fence(0, 0, 2, 2), fence(2, 0, 0, 2))))
                .containsExactlyInAnyOrder(fence(0, 0, 1, 1), fence(1, 1, 2, 2), fence(1, 1, 2, 0), fence(0, 2, 1, 1));
    }

    @Test
    void anEdgeIsCutWhereAnotherEnds() {
        assertThat(Edges.noded(List.of(fence(0, 0, 2, 0), fence(1, 0, 1, 5))))
                .containsExactlyInAnyOrder(fence(0, 0, 1, 0), fence(1, 0, 2, 0), fence(1, 0, 1, 5));
    }

    @Test
    void anEndThatMissesAnEdgeByRoundingMeetsIt() {
        List<Edge> noded =
                Edges.noded(List.of(fence(0, 0, 30, 10), fence(3, 1 + 1e-15, 3, 9), fence(9, 3 - 1e-12, 9, 0)));
        assertThat(noded).hasSize(5);
    }

    @Test
    void whereEdgesCoincideASideIsOpenIfItIsForAll() {
        for (boolean north : new boolean[] {true, false}) {
            Edge wall = new Edge(new Point(4, 0), ORIGIN, !north, north); // runs west: north is on its right
            assertThat(Edges.noded(List.of(fence(1, 0, 3, 0), wall)))
                    .containsExactlyInAnyOrder(
                            new Edge(ORIGIN, new Point(1, 0), north, !north),
                            new Edge(new Point(1, 0), new Point(3, 0), north, !north),
                            new Edge(new Point(3, 0), new Point(4, 0), north, !north));
        }
    }

    @Test
    void edgesWithoutLengthVanish() {
        assertThat(Edges.noded(List.of(fence(5, 5, 5, 5), fence(0, 0, 1, 0)))).containsExactly(fence(0, 0, 1, 0));
        assertThat(Edges.noded(List.of(fence(0, 0, 0, 0)))).isEmpty();
        assertThat(Edges.noded(List.of())).isEmpty();
    }

    /** Snapping alone leaves about one heap in thirty crossed: for those there is the grid. */
    @Test
    void heapsOfAlmostCoincidingEdgesNeverCrossOnceNoded() {
        Random random = new Random(1);
        for (int heap = 0; heap < 120; heap++) {
            assertThat(firstCrossing(Edges.noded(heap(random))))
                    .as("heap %d", heap)
                    .isEmpty();
        }
    }

    private static List<Edge> heap(Random random) {
        List<Point> pool = new ArrayList<>();
        List<Edge> edges = new ArrayList<>();
        double jitterM = Math.pow(10, -8 - 6 * random.nextDouble());
        for (int i = 5 + random.nextInt(30); i > 0; i--) {
            Edge edge = new Edge(pick(random, pool, jitterM), pick(random, pool, jitterM), true, true);
            pool.addAll(List.of(edge.from(), edge.to(), edge.from().towards(edge.to(), random.nextDouble())));
            edges.add(edge);
        }
        return edges;
    }

    private static Point pick(Random random, List<Point> pool, double jitterM) {
        return pool.isEmpty() || random.nextInt(3) == 0
                ? new Point(100 * random.nextDouble(), 100 * random.nextDouble())
                : pool.get(random.nextInt(pool.size()))
                        .plus(jitterM * (random.nextDouble() - 0.5), jitterM * (random.nextDouble() - 0.5));
    }

    private static List<Edge> firstCrossing(List<Edge> edges) {
        for (Edge e : edges) {
            for (Edge f : edges) {
                if (Turn.of(e.from(), e.to(), f.from()) * Turn.of(e.from(), e.to(), f.to()) < 0
                        && Turn.of(f.from(), f.to(), e.from()) * Turn.of(f.from(), f.to(), e.to()) < 0) {
                    return List.of(e, f);
                }
            }
        }
        return List.of();
    }
}
