package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import loamline.geometry.Edge;
import loamline.geometry.Edges;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import org.junit.jupiter.api.Test;

class SleeveTest {
    private static final double TOLERANCE_M = 0.1;

    private static List<Point> circle(int vertices, double noiseM) {
        Random random = new Random(1);
        return IntStream.rangeClosed(0, vertices)
                .mapToObj(i -> {
                    double radiusM = 20 + noiseM * (random.nextDouble() - 0.5);
                    double angle = 2 * Math.PI * i / vertices;
                    return new Point(radiusM * Math.cos(angle), radiusM * Math.sin(angle));
                })
                .toList();
    }

    private static void assertWithinTolerance(List<Point> line, List<Point> thin) {
        List<Edge> edges = Edges.along(new Polyline(thin));
        assertThat(line)
                .allSatisfy(p -> assertThat(edges.stream()
                                .mapToDouble(e -> e.distanceTo(p))
                                .min()
                                .orElseThrow())
                        .isLessThanOrEqualTo(TOLERANCE_M + 1e-12));
        assertThat(line).containsAll(thin);
        assertThat(thin.get(0)).isEqualTo(line.get(0));
        assertThat(thin.get(thin.size() - 1)).isEqualTo(line.get(line.size() - 1));
    }

    @Test
    void aSmoothLineKeepsFewVerticesAndMovesByNoMoreThanTheTolerance() {
        List<Point> line = circle(5000, 0);
        List<Point> thin = Sleeve.thinned(line, TOLERANCE_M);
        assertThat(thin).hasSizeLessThan(60);
        assertWithinTolerance(line, thin);
    }

    @Test
    void noiseBelowTheToleranceIsSmoothed() {
        List<Point> line = circle(5000, TOLERANCE_M / 2);
        List<Point> thin = Sleeve.thinned(line, TOLERANCE_M);
        assertThat(thin).hasSizeLessThan(200);
        assertWithinTolerance(line, thin);
    }

    @Test
    void aWanderingLineMovesByNoMoreThanTheTolerance() {
        Random random = new Random(2);
        List<Point> line = new ArrayList<>(List.of(new Point(0, 0)));
        for (int i = 0; i < 3000; i++) {
            line.add(line.get(i).plus(0.2 * random.nextGaussian(), 0.2 * random.nextGaussian()));
        }
        assertWithinTolerance(line, Sleeve.thinned(line, TOLERANCE_M));
    }

    @Test
    void aLineThatTurnsBackKeepsItsFarEnd() {
        List<Point> line = Yards.points(0, 0, 5, 0, 9, 0, 4, 0, 1, 0);
        assertThat(Sleeve.thinned(line, TOLERANCE_M)).isEqualTo(Yards.points(0, 0, 9, 0, 1, 0));
    }
}
