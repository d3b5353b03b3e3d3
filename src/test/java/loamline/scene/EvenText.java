package loamline.scene;

/** Measures words as if every letter were half its size wide. */
final class EvenText implements TextMeasure {
    @Override
    public double widthMm(String words, Type type) {
        return 0.5 * type.sizeMm() * words.length();
    }

    @Override
    public double capHeightMm(Type type) {
        return 0.7 * type.sizeMm();
    }

    @Override
    public double depthMm(Type type) {
        return 0.2 * type.sizeMm();
    }
}
