package loamline.scene;

/** How much room words take; whoever has the fonts implements it. Lengths are millimetres on paper. */
public interface TextMeasure {
    /** Width of words set on one line, 0 for none. */
    double widthMm(String words, Type type);

    /** Height of capitals and figures over the baseline. */
    double capHeightMm(Type type);

    /** Room under the baseline for the tails of letters. */
    double depthMm(Type type);
}
