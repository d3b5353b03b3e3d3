package loamline.scene;

/**
 * A colour.
 *
 * @param rgb red, green and blue in sRGB as 0xRRGGBB
 * @param opacity 0 (not seen) to 1
 */
public record Ink(int rgb, double opacity) {
    /** @throws IllegalArgumentException if a value is out of range */
    public Ink {
        if (rgb < 0 || rgb > 0xFFFFFF || !(opacity >= 0 && opacity <= 1)) {
            throw new IllegalArgumentException(
                    "rgb must be 0 to 0xFFFFFF and opacity 0 to 1, not " + rgb + " and " + opacity);
        }
    }

    /** An opaque colour. */
    public static Ink of(int rgb) {
        return new Ink(rgb, 1);
    }

    /** The same colour at another opacity. */
    public Ink at(double changed) {
        return new Ink(rgb, changed);
    }

    /** 0 to 255. */
    public int red() {
        return rgb >> 16;
    }

    /** 0 to 255. */
    public int green() {
        return rgb >> 8 & 0xFF;
    }

    /** 0 to 255. */
    public int blue() {
        return rgb & 0xFF;
    }

    /** What a grey printer makes of it: luma by ITU-R BT.601. */
    public Ink grey() {
        int luma = (int) Math.rint(0.299 * red() + 0.587 * green() + 0.114 * blue());
        return new Ink(luma << 16 | luma << 8 | luma, opacity);
    }
}
