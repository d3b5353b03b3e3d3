package loamline.tracing;

/**
 * From sRGB to OKLab.
 *
 * <p>What: L is lightness, 0 black to 1 white; a is green (negative) to red, b is blue (negative) to yellow,
 * both about -0.3 to 0.3. Equal distances look about equally different. All three are homogeneous: light dimmed
 * to a share s, as in shadow, scales each by the cube root of s.
 *
 * <p>Units and shape: red, green and blue as shares of full light, linear, 0 to 1. NaN: comes out as NaN.
 *
 * <p>Accuracy: {@link #ACCURACY}, from a cube root by one step of Halley's method.
 *
 * <p>Cost: about 60 operations a colour.
 *
 * <p>Reference: Ottosson 2020, A perceptual color space for image processing,
 * bottosson.github.io/posts/oklab; sRGB curve of IEC 61966-2-1.
 */
final class Oklab {
    /** The most that a coordinate can be off, from the cube root. */
    static final double ACCURACY = 1e-4;

    private static final int BYTE_VALUES = 256;
    private static final float[] LINEAR = new float[BYTE_VALUES];

    static {
        for (int i = 0; i < BYTE_VALUES; i++) {
            double c = i / 255.0;
            LINEAR[i] = (float) (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
    }

    private Oklab() {}

    /** The light of one byte of an sRGB pixel, 0 to 1. */
    static float linear(int value) {
        return LINEAR[value & 255];
    }

    /** Writes L, a, b of one colour to {@code lab[0..2]}. */
    static void of(float red, float green, float blue, float[] lab) {
        float l = cubeRoot(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
        float m = cubeRoot(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
        float s = cubeRoot(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
        lab[0] = (float) (0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s);
        lab[1] = (float) (1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s);
        lab[2] = (float) (0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
    }

    /** A third of the exponent, then one step of Halley's method. */
    private static float cubeRoot(double light) {
        float x = (float) light;
        float y = Float.intBitsToFloat(Float.floatToRawIntBits(x) / 3 + 709_921_077);
        float cube = y * y * y;
        return x == 0 ? 0 : y * (cube + 2 * x) / (2 * cube + x);
    }
}
