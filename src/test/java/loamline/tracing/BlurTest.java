package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class BlurTest {
    private static final int[] BINOMIAL = {1, 4, 6, 4, 1};

    private static float[] random(int width, int height, long seed) {
        float[] plane = new float[width * height];
        for (int i = 0; i < plane.length; i++) {
            plane[i] = (float) Canvas.noise(i, 0, seed);
        }
        return plane;
    }

    @Property(seed = Laws.SEED, tries = 40)
    void theBinomialBlurIsItsSumWithZeroOutside(
            @ForAll @IntRange(min = 1, max = 9) int width,
            @ForAll @IntRange(min = 1, max = 9) int height,
            @ForAll long seed) {
        float[] plane = random(width, height, seed);
        float[] blurred = plane.clone();
        Blur.binomial(blurred, new float[plane.length], width, height);
        for (int i = 0; i < plane.length; i++) {
            double sum = 0;
            for (int k = 0; k < 25; k++) {
                int row = k / 5;
                double weight = BINOMIAL[k % 5] * BINOMIAL[row] / 256.0;
                sum += weight * at(plane, width, height, i % width + k % 5 - 2, i / width + row - 2);
            }
            assertThat((double) blurred[i]).isCloseTo(sum, within(Blur.ACCURACY));
        }
    }

    @Property(seed = Laws.SEED, tries = 40)
    void theBoxBlurIsItsSumWithZeroOutside(
            @ForAll @IntRange(min = 1, max = 9) int width,
            @ForAll @IntRange(min = 1, max = 9) int height,
            @ForAll @IntRange(min = 1, max = 4) int radius,
            @ForAll long seed) {
        float[] plane = random(width, height, seed);
        float[] blurred = plane.clone();
        Blur.box(blurred, new float[plane.length], width, height, radius);
        int side = 2 * radius + 1;
        for (int i = 0; i < plane.length; i++) {
            double sum = 0;
            for (int k = 0; k < side * side; k++) {
                sum += at(plane, width, height, i % width + k % side - radius, i / width + k / side - radius);
            }
            assertThat((double) blurred[i]).isCloseTo(sum / (side * side), within(Blur.ACCURACY));
        }
    }

    private static double at(float[] plane, int width, int height, int x, int y) {
        return x >= 0 && x < width && y >= 0 && y < height ? plane[y * width + x] : 0;
    }
}
