package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.Edge;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;

class MeetingTest {
    private static final double REACH_M = 0.05;
    private static final Region SQUARE = Yards.solid(0, 0, 4, 0, 4, 4, 0, 4);

    private static Edge link(double x0, double y0, double x1, double y1) {
        return new Edge(new Point(x0, y0), new Point(x1, y1), true, true);
    }

    @Test
    void cornersOfObstaclesAreJoinedToWallsNearThem() {
        Region beside = Yards.solid(4.03, 1, 6, 0, 6, 2);
        assertThat(Meeting.links(List.of(SQUARE, beside), List.of(), REACH_M)).containsExactly(link(4.03, 1, 4, 1));
    }

    @Test
    void whatTouchesOrIsTooFarAwayNeedsNoLink() {
        Region touching = Yards.solid(4, 1, 6, 0, 6, 2);
        Region apart = Yards.solid(-0.06, 1, -2, 2, -2, 0);
        assertThat(Meeting.links(List.of(SQUARE, touching, apart), List.of(), REACH_M))
                .isEmpty();
    }

    @Test
    void aCornerOfAFenceIsJoinedLikeAnEnd() {
        assertThat(Meeting.links(List.of(SQUARE), List.of(Yards.fence(6, 0, 4.02, 2, 6, 4)), REACH_M))
                .containsExactly(link(4.02, 2, 4, 2));
    }

    @Test
    void anEndNearManyShortEdgesIsJoinedToTheNearestOnly() {
        Polyline fine = new Polyline(IntStream.rangeClosed(0, 200)
                .mapToObj(i -> new Point(0.01 * i, 0))
                .toList());
        List<Edge> links = Meeting.links(List.of(), List.of(fine, Yards.fence(1.0025, 0.03, 1, 5)), REACH_M);
        assertThat(links).filteredOn(e -> e.from().y() > 0).containsExactly(link(1.0025, 0.03, 1.0025, 0));
    }

    @Test
    void aFenceIsNotJoinedToItselfWhereItBegins() {
        assertThat(Meeting.links(List.of(), List.of(Yards.fence(0, 0, 0.02, 0, 0.04, 0, 3, 0)), REACH_M))
                .isEmpty();
    }
}
