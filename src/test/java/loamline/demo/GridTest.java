package loamline.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.util.stream.Stream;
import loamline.geometry.Point;
import loamline.yard.Backdrop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class GridTest {
    /** The grid is straight over a yard to this, m. */
    private static final double TOLERANCE_M = 1e-4;

    static Stream<DemoYard> yards() {
        return DemoYards.all().stream();
    }

    /** Eastings and northings of the origins computed with PROJ (gdaltransform, EPSG:4326 to the zone). */
    @ParameterizedTest
    @CsvSource({"0, 32616, 325903.220288507, 4468621.95705112", "1, 32615, 552937.528321505, 4766572.22104737"})
    void theOriginLiesWhereTheUtmGridPutsIt(int index, int epsg, double eastM, double northM) {
        Grid grid = Grid.of(DemoYards.all().get(index));
        double[] pixel = {0, 0};
        grid.toPixel().transform(pixel, 0, pixel, 0, 1);
        assertThat(grid.epsg()).isEqualTo(epsg);
        assertThat(grid.eastM() + pixel[0] * grid.pixelM()).isCloseTo(eastM, within(TOLERANCE_M));
        assertThat(grid.northM() - pixel[1] * grid.pixelM()).isCloseTo(northM, within(TOLERANCE_M));
    }

    @ParameterizedTest
    @MethodSource("yards")
    void thePictureShowsAllThatItMust(DemoYard demo) {
        Grid grid = Grid.of(demo);
        Backdrop.Placement placement = grid.placement();
        double[] corners = {0, 0, grid.width(), 0, grid.width(), grid.height(), 0, grid.height()};
        var seen = new Path2D.Double();
        for (int i = 0; i < corners.length; i += 2) {
            Point p = place(placement, corners[i], corners[i + 1]);
            if (i == 0) {
                seen.moveTo(p.x(), p.y());
            } else {
                seen.lineTo(p.x(), p.y());
            }
        }
        var view = demo.scenery().view();
        assertThat(seen.contains(view.minX(), view.minY(), view.widthM(), view.heightM()))
                .isTrue();
    }

    private static Point place(Backdrop.Placement p, double column, double row) {
        return new Point(p.a() * column + p.b() * row + p.c(), p.d() * column + p.e() * row + p.f());
    }
}
