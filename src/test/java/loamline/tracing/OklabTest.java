package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import loamline.Laws;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.FloatRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OklabTest {
    /** From memory of the samples of CSS Color 4; to five digits. */
    @ParameterizedTest
    @CsvSource({
        "1, 0, 0, 0.62796, 0.22486, 0.12585",
        "0, 1, 0, 0.86644, -0.23389, 0.17950",
        "0, 0, 1, 0.45201, -0.03246, -0.31153",
        "1, 1, 1, 1, 0, 0",
        "0, 0, 0, 0, 0, 0"
    })
    void agreesWithKnownColours(float red, float green, float blue, double l, double a, double b) {
        float[] lab = new float[3];
        Oklab.of(red, green, blue, lab);
        assertThat((double) lab[0]).isCloseTo(l, within(Oklab.ACCURACY));
        assertThat((double) lab[1]).isCloseTo(a, within(Oklab.ACCURACY));
        assertThat((double) lab[2]).isCloseTo(b, within(Oklab.ACCURACY));
    }

    @Property(seed = Laws.SEED, tries = 300)
    void shadeScalesAllCoordinatesByTheCubeRootOfTheLight(
            @ForAll @FloatRange(min = 0.01f, max = 1) float red,
            @ForAll @FloatRange(min = 0.01f, max = 1) float green,
            @ForAll @FloatRange(min = 0.01f, max = 1) float blue,
            @ForAll @FloatRange(min = 0.05f, max = 1) float light) {
        float[] sun = new float[3];
        float[] shade = new float[3];
        Oklab.of(red, green, blue, sun);
        Oklab.of(light * red, light * green, light * blue, shade);
        for (int i = 0; i < 3; i++) {
            assertThat((double) shade[i]).isCloseTo(Math.cbrt(light) * sun[i], within(2 * Oklab.ACCURACY));
        }
    }

    @Test
    void halfGreyIsAFifthOfTheLight() {
        assertThat((double) Oklab.linear(128)).isCloseTo(0.2159, within(1e-4)); // IEC 61966-2-1, by hand
    }
}
