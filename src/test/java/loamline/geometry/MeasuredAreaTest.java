package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Areas as they are measured with a tape, beside those of an outline through the same points. An outline through the ends of
 * equally spaced offsets has the area of the trapezoid rule; Simpson's rule is (4 · fine − coarse) / 3 of two such outlines.
 * Lengths in ft as printed.
 */
class MeasuredAreaTest {
    private static double area(double... xy) {
        return Region.of(Outline.of(xy)).areaM2();
    }

    /** The outline between a base line and the ends of offsets, each step-th of them. */
    private static double offsets(double spacing, int step, double... lengths) {
        List<Double> xy = new ArrayList<>(List.of((lengths.length - 1) * spacing, 0.0, 0.0, 0.0));
        for (int i = 0; i < lengths.length; i += step) {
            if (lengths[i] > 0) {
                xy.add(i * spacing);
                xy.add(lengths[i]);
            }
        }
        return area(xy.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static double simpson(double spacing, double... lengths) {
        return (4 * offsets(spacing, 1, lengths) - offsets(spacing, 2, lengths)) / 3;
    }

    @Test
    void offsetsFromALineGiveTheTrapezoidRule() {
        // a worked reply (second-hand): 19.4 and 39.6 at 25
        assertThat(offsets(25, 1, 19.4, 39.6)).isCloseTo(737.5, within(1e-9));
        // derived: a third of 54.8; chords of a lawn 80 ft long, each 10 ft
        assertThat(offsets(25, 1, 19.4, 39.6, 54.8)).isCloseTo(1917.5, within(1e-9));
        assertThat(simpson(25, 19.4, 39.6, 54.8)).isCloseTo(1938.3, within(0.05));
        double[] lawn = {0, 18, 27, 33, 36, 34, 28, 16, 0};
        assertThat(offsets(10, 1, lawn)).isCloseTo(1920, within(1e-9));
        assertThat(simpson(10, lawn)).isCloseTo(1953.3, within(0.05));
    }

    @Test
    void chordsOfAnEllipseComeNearItTheCloserTheyLie() {
        // derived: 80 × 50, true 3,141.6: each 10 ft 2,995.7 and 3,083.6; each 5 ft 3,089.8 and 3,121.2
        double ten = offsets(10, 1, ellipse(8));
        double five = offsets(5, 1, ellipse(16));
        assertThat(Math.PI * 40 * 25).isCloseTo(3141.6, within(0.05));
        assertThat(ten).isCloseTo(2995.7, within(0.05));
        assertThat(simpson(10, ellipse(8))).isCloseTo(3083.6, within(0.05));
        assertThat(five).isCloseTo(3089.8, within(0.05));
        assertThat(simpson(5, ellipse(16))).isCloseTo(3121.2, within(0.05));
    }

    /** Chords across an ellipse of 80 × 50 at the ends of equal parts of its length. */
    private static double[] ellipse(int parts) {
        double[] chords = new double[parts + 1];
        for (int i = 0; i <= parts; i++) {
            double x = 2.0 * i / parts - 1;
            chords[i] = 50 * Math.sqrt(1 - x * x);
        }
        return chords;
    }

    @Test
    void plainShapesAddUp() {
        // derived: triangle 26 × 15 and rectangle 40 × 30; trapezoid of sides 10 and 6, 4 apart
        double triangle = area(0, 0, 26, 0, 7, 15);
        double rectangle = area(0, 0, 40, 0, 40, 30, 0, 30);
        assertThat(triangle).isCloseTo(195, within(1e-9));
        assertThat(rectangle).isCloseTo(1200, within(1e-9));
        assertThat(triangle + rectangle).isCloseTo(1395, within(1e-9));
        assertThat(area(0, 0, 10, 0, 8, 4, 2, 4)).isCloseTo(32, within(1e-9));
    }
}
